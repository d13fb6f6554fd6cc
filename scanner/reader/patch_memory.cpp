#include "scanner/reader/patch_memory.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/sampling.h"

#include <cmath>

namespace scanner::reader {

PatchMemory::PatchMemory(const PictureLevels& picture, const Quad& corners) {
    double sum = 0, power = 0;
    for (const Point& p : places(corners)) {
        m_look.push_back(sampleAt(picture.full(), p.x, p.y));
        sum += m_look.back();
    }
    const double mean = m_look.empty() ? 0 : sum / static_cast<double>(m_look.size());
    for (float& value : m_look) {
        value -= static_cast<float>(mean);
        power += value * value;
    }
    for (float& value : m_look)
        value /= static_cast<float>(std::sqrt(power + 1e-9));
}

/// A grid over the quadrilateral and a margin of an eighth, where the label ends and the likeness is
/// sharpest.
std::vector<Point> PatchMemory::places(const Quad& corners) {
    std::vector<Point> places;
    const auto mapping = projectionThrough({Point{0, 0}, Point{1, 0}, Point{1, 1}, Point{0, 1}}, corners);
    if (!mapping) return places;
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            places.push_back(mapping->map(1.25 * x / (side - 1) - 0.125, 1.25 * y / (side - 1) - 0.125));
    return places;
}

/// Correlation with the look when the places are shifted, over every n-th place.
double PatchMemory::likeness(const GreyPicture& picture, const std::vector<Point>& places, double scale,
                             Point shift, int every) const {
    Correlation<float> correlation;
    for (std::size_t i = 0; i < places.size(); i += static_cast<std::size_t>(every)) {
        const float value =
            sampleAt(picture, (places[i].x + shift.x) * scale, (places[i].y + shift.y) * scale);
        correlation.add(value, m_look[i]);
    }
    return correlation.value(1, 1e-6f);
}

std::optional<Point> PatchMemory::seek(const PictureLevels& picture, const Quad& corners) const {
    const auto where = places(corners);
    if (where.size() != m_look.size() || where.empty()) return std::nullopt;
    Point best;
    double most = -1;
    const auto look = [&](int level, double reach, double step, int every) {
        if (level >= static_cast<int>(picture.levels.size())) return;
        const Point from = best;
        most = -1;
        for (double y = -reach; y <= reach; y += step)
            for (double x = -reach; x <= reach; x += step) {
                const Point shift{from.x + x, from.y + y};
                const double like = likeness(picture.levels[level], where, 1.0 / (1 << level), shift, every);
                if (like > most) {
                    most = like;
                    best = shift;
                }
            }
    };
    look(2, 44, 4, 5);
    look(1, 4, 2, 3);
    look(0, 1.5, 0.75, 1);
    if (most < 0.65) return std::nullopt;
    return best;
}

} // namespace scanner::reader
