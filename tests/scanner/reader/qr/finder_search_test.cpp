#include "scanner/reader/qr/finder_search.h"

#include "scanner/reader/image/quad.h"
#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace scanner::reader;

namespace {

ContrastMap mapOf(const scanner::GreyPicture& picture) {
    return contrastOf(smoothed(picture), 15);
}

bool isFoundAt(const std::vector<Finder>& finders, double x, double y) {
    return std::any_of(finders.begin(), finders.end(), [&](const Finder& finder) {
        return std::abs(finder.centre.x - x) < 1 && std::abs(finder.centre.y - y) < 1;
    });
}

} // namespace

// A tag of 21 modules of 4 pixels in the middle of 200 × 200: its finders' middles lie 3.5 modules from three
// corners.
TEST(FinderSearch, findsTheThreeFindersButForThoseInAPlaceThatIsKnown) {
    const auto picture =
        pictures::onGround(pictures::enlarged(pictures::qrModules(pictures::tagCode(7)), 4), 200, 200);
    const double near = 58 + 3.5 * 4, far = 58 + 17.5 * 4;
    const auto all = findFinders(mapOf(picture));
    EXPECT_TRUE(isFoundAt(all, near, near));
    EXPECT_TRUE(isFoundAt(all, far, near));
    EXPECT_TRUE(isFoundAt(all, near, far));

    FinderLimits limits;
    limits.leftOut = {{{{50, 50}, {150, 50}, {150, 100}, {50, 100}}}};
    const auto some = findFinders(mapOf(picture), limits);
    EXPECT_FALSE(isFoundAt(some, near, near));
    EXPECT_FALSE(isFoundAt(some, far, near));
    EXPECT_TRUE(isFoundAt(some, near, far));
}
