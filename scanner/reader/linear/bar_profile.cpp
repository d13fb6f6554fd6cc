#include "scanner/reader/linear/bar_profile.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

struct Cubic {
    int first;
    float weight[4];
};

/// Four weights of the Catmull-Rom cubic around a pixel coordinate; the first pixel may lie outside.
Cubic cubicAt(double x) {
    const double p = x - 0.5, whole = std::floor(p);
    const float t = static_cast<float>(p - whole);
    return {static_cast<int>(whole) - 1,
            {t * (-0.5f + t * (1 - 0.5f * t)), 1 + t * t * (-2.5f + 1.5f * t),
             t * (0.5f + t * (2 - 1.5f * t)), t * t * (-0.5f + 0.5f * t)}};
}

float cubicSample(const GreyPicture& picture, double x, double y) {
    const Cubic cx = cubicAt(std::clamp(x, -1e6, 1e6)), cy = cubicAt(std::clamp(y, -1e6, 1e6));
    float sum = 0;
    for (int j = 0; j < 4; ++j) {
        const std::uint8_t* row = picture.row(std::clamp(cy.first + j, 0, picture.height - 1));
        float line = 0;
        for (int i = 0; i < 4; ++i)
            line += cx.weight[i] * static_cast<float>(row[std::clamp(cx.first + i, 0, picture.width - 1)]);
        sum += cy.weight[j] * line;
    }
    return sum;
}

} // namespace

BarProfile profileOf(const GreyPicture& picture, const BarRegion& region, double offset, double height,
                     double beyond) {
    constexpr double step = 0.35;
    const int count = static_cast<int>((region.length + 2 * beyond) / step);
    const int lines = std::clamp(static_cast<int>(height), 1, 16);
    BarProfile profile;
    profile.step = step;
    profile.along = region.along;
    const double back = region.length / 2 + beyond;
    profile.start = {region.centre.x - back * region.along.x + offset * region.upright.x,
                     region.centre.y - back * region.along.y + offset * region.upright.y};
    profile.values.assign(static_cast<std::size_t>(std::max(0, count)), 0);
    for (int line = 0; line < lines; ++line) {
        const double up = height * ((line + 0.5) / lines - 0.5);
        const double x0 = profile.start.x + up * region.upright.x,
                     y0 = profile.start.y + up * region.upright.y;
        for (int i = 0; i < count; ++i)
            profile.values[i] +=
                cubicSample(picture, x0 + i * step * region.along.x, y0 + i * step * region.along.y);
    }
    for (float& value : profile.values)
        value /= static_cast<float>(lines);
    return profile;
}

} // namespace scanner::reader
