#include "scanner/reader/data_matrix/straight_region.h"

#include "scanner/reader/image/raster.h"

namespace scanner::reader {

StraightRegion::StraightRegion(const Homography& toPicture)
    : m_toPicture(toPicture)
    , m_values(static_cast<std::size_t>(side) * side) {}

std::optional<StraightRegion> StraightRegion::of(const PictureLevels& picture, const Quad& region,
                                                 bool negative) {
    constexpr double first = margin, last = margin + across;
    const auto toPicture = projectionThrough(
        {Point{first, first}, Point{last, first}, Point{last, last}, Point{first, last}}, region);
    if (!toPicture) return std::nullopt;
    StraightRegion straight(*toPicture);
    sampleRaster(picture, *toPicture, side, side, straight.m_values.data());
    if (negative)
        for (float& value : straight.m_values)
            value = 255 - value;
    return straight;
}

StraightRegion StraightRegion::transposed() const {
    StraightRegion turned(m_toPicture * Homography{{0, 1, 0, 1, 0, 0, 0, 0, 1}});
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            turned.m_values[x * side + y] = row(y)[x];
    return turned;
}

} // namespace scanner::reader
