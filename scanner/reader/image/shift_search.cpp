#include "scanner/reader/image/shift_search.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace scanner::reader {
namespace {

constexpr int mostReach = 11;
constexpr int mostAcross = 24;

/// So many shifts of a row are summed at once: those of the reach, and more up to whole registers.
int acrossFor(int reach) {
    return (2 * reach + 1 + 7) / 8 * 8;
}
static_assert(2 * mostReach + 1 <= mostAcross);

/// Sums over what was looked at so far, for each shift of a row.
struct RowOfShifts {
    float sum[mostAcross]{}, squares[mostAcross]{}, products[mostAcross]{};
};

/// The pixels around a place, a row for each shift up or down and one more; clamped to the picture.
class Surroundings {
public:
    Surroundings(const GreyPicture& picture, int left, int top, int reach)
        : m_picture(picture)
        , m_left(left - reach)
        , m_top(top - reach)
        , m_count(acrossFor(reach) + 1)
        , m_isInside(m_left >= 0 && m_left + m_count <= picture.width) {}

    /// The row's pixels, one more than shifts; `room` is used where some of them lie outside.
    const std::uint8_t* row(int y, std::uint8_t* room) const {
        const std::uint8_t* pixels = m_picture.row(std::clamp(m_top + y, 0, m_picture.height - 1));
        if (m_isInside) return pixels + m_left;
        for (int i = 0; i < m_count; ++i)
            room[i] = pixels[std::clamp(m_left + i, 0, m_picture.width - 1)];
        return room;
    }

private:
    const GreyPicture& m_picture;
    int m_left, m_top, m_count;
    bool m_isInside;
};

SCANNER_VECTORISED void blendAlong(const std::uint8_t* pixels, float right, int count, float* out) {
    for (int i = 0; i < count; ++i)
        out[i] = static_cast<float>(pixels[i]) +
                 right * static_cast<float>(static_cast<int>(pixels[i + 1]) - static_cast<int>(pixels[i]));
}

SCANNER_VECTORISED void addValues(const float* upper, const float* lower, float down, float wanted, int count,
                                  RowOfShifts& sums) {
    for (int i = 0; i < count; ++i) {
        const float value = upper[i] + down * (lower[i] - upper[i]);
        sums.sum[i] += value;
        sums.squares[i] += value * value;
        sums.products[i] += value * wanted;
    }
}

void addPlace(const GreyPicture& picture, const WantedValue& place, int reach,
              std::vector<RowOfShifts>& rows) {
    const float left = std::floor(place.x - 0.5f), top = std::floor(place.y - 0.5f);
    const float right = place.x - 0.5f - left, down = place.y - 0.5f - top;
    const Surroundings around(picture, static_cast<int>(left), static_cast<int>(top), reach);
    const int count = acrossFor(reach);
    std::uint8_t room[mostAcross + 1];
    float values[2][mostAcross];
    blendAlong(around.row(0, room), right, count, values[0]);
    for (int y = 0; y <= 2 * reach; ++y) {
        const float* upper = values[y % 2];
        float* lower = values[(y + 1) % 2];
        blendAlong(around.row(y + 1, room), right, count, lower);
        addValues(upper, lower, down, place.value, count, rows[y]);
    }
}

} // namespace

LikelyShift likeliestShift(const GreyPicture& picture, const std::vector<WantedValue>& wanted, int reach) {
    reach = std::clamp(reach, 0, mostReach);
    std::vector<RowOfShifts> rows(2 * reach + 1);
    Correlation<float> all; // what all shifts share
    for (const WantedValue& place : wanted) {
        // Not-a-number and what lies far outside any picture would fit no pixel's number.
        constexpr float furthest = 1e6f;
        if (!(std::abs(place.x) < furthest && std::abs(place.y) < furthest)) continue;
        addPlace(picture, place, reach, rows);
        all.add(0, place.value);
    }
    const auto likenessAt = [&](int x, int y) {
        Correlation<float> here = all;
        here.sum = rows[y].sum[x];
        here.squares = rows[y].squares[x];
        here.products = rows[y].products[x];
        return here.value(1, 1e-6f);
    };
    LikelyShift best{0, 0, likenessAt(reach, reach)};
    for (int y = 0; y <= 2 * reach; ++y)
        for (int x = 0; x <= 2 * reach; ++x) {
            const float likeness = likenessAt(x, y);
            if (likeness > best.likeness) best = {x - reach, y - reach, likeness};
        }
    return best;
}

} // namespace scanner::reader
