#include "scanner/live/camera_format.h"

#include <QVideoFrameFormat>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace scanner {
namespace {

/// Smaller is better. Sizes are compared by their ratio: half is as far from the mark as double.
auto distanceOf(const QCameraFormat& format) {
    const double pixels = std::max(1, format.resolution().width() * format.resolution().height());
    const bool compressed = format.pixelFormat() == QVideoFrameFormat::Format_Jpeg;
    return std::tuple(std::abs(std::log(pixels / (1280.0 * 720.0))), std::abs(format.maxFrameRate() - 30.0F),
                      compressed);
}

} // namespace

QCameraFormat chooseFormat(const QList<QCameraFormat>& formats) {
    const auto best = std::min_element(formats.begin(), formats.end(), [](const auto& a, const auto& b) {
        return distanceOf(a) < distanceOf(b);
    });
    return best == formats.end() ? QCameraFormat() : *best;
}

} // namespace scanner
