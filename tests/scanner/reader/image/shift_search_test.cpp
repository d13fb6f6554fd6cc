#include "scanner/reader/image/shift_search.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/sampling.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

using namespace scanner::reader;
using scanner::GreyPicture;

namespace {

/// What a picture shows at scattered places, and where these would lie if it were moved back by a shift.
std::vector<WantedValue> valuesOf(const GreyPicture& picture, float left, float top, float dx, float dy) {
    std::mt19937 random(5);
    std::uniform_real_distribution<float> within(0, 20);
    std::vector<WantedValue> wanted;
    for (int i = 0; i < 60; ++i) {
        const float x = left + within(random), y = top + within(random);
        wanted.push_back({x - dx, y - dy, sampleAt(picture, x, y)});
    }
    return wanted;
}

/// By the definition: one place and one shift at a time.
LikelyShift oneByOne(const GreyPicture& picture, const std::vector<WantedValue>& wanted, int reach) {
    LikelyShift best;
    for (int y = -reach; y <= reach; ++y)
        for (int x = -reach; x <= reach; ++x) {
            Correlation<double> correlation;
            for (const WantedValue& w : wanted)
                correlation.add(sampleAt(picture, w.x + static_cast<float>(x), w.y + static_cast<float>(y)),
                                w.value);
            const auto likeness = static_cast<float>(correlation.value(1, 1e-6));
            if (likeness > best.likeness) best = {x, y, likeness};
        }
    return best;
}

} // namespace

TEST(ShiftSearch, findsHowFarAPictureHasMoved) {
    const GreyPicture picture = pictures::noise(90, 70);
    const LikelyShift found = likeliestShift(picture, valuesOf(picture, 30, 25, 7, -9), 11);
    EXPECT_EQ(found.x, 7);
    EXPECT_EQ(found.y, -9);
    EXPECT_GT(found.likeness, 0.999f);
}

// In the middle, at each edge and beyond it; few shifts and many, which are summed in rows of different
// length.
TEST(ShiftSearch, tellsWhatEachShiftByItselfTells) {
    const GreyPicture picture = pictures::noise(61, 53);
    for (const auto& [left, top] :
         {std::pair{20.f, 15.f}, {-6.f, 15.f}, {50.f, 20.f}, {25.f, -8.f}, {30.f, 45.f}})
        for (const int reach : {0, 1, 3, 4, 11}) {
            const auto wanted = valuesOf(pictures::noise(61, 53), left, top, 0.4f, -0.7f);
            const LikelyShift quick = likeliestShift(picture, wanted, reach),
                              slow = oneByOne(picture, wanted, reach);
            EXPECT_EQ(quick.x, slow.x) << left << ',' << top << ' ' << reach;
            EXPECT_EQ(quick.y, slow.y) << left << ',' << top << ' ' << reach;
            EXPECT_NEAR(quick.likeness, slow.likeness, 1e-3) << left << ',' << top << ' ' << reach;
        }
}

TEST(ShiftSearch, whereNothingCanBeToldNoShiftIsLikelier) {
    constexpr float notANumber = std::numeric_limits<float>::quiet_NaN();
    const GreyPicture even(40, 40, 120);
    for (const auto& wanted :
         {std::vector<WantedValue>{}, {{notANumber, 3, 1}, {3, 1e30f, 2}}, {{9, 9, 1}, {12, 9, 2}}}) {
        const LikelyShift none = likeliestShift(even, wanted, 2);
        EXPECT_LE(none.likeness, 0);
        EXPECT_EQ(none.x, 0);
        EXPECT_EQ(none.y, 0);
    }
    EXPECT_EQ(likeliestShift(GreyPicture(1, 1, 9), {{0.5f, 0.5f, 1}}, 11).likeness, 0);
}
