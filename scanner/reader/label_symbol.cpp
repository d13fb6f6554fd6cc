#include "scanner/reader/label_symbol.h"

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/raster.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <vector>

namespace scanner::reader {
namespace {

constexpr int across = 72; // places along the straightened label
constexpr int rim = 4;     // of these that are its edge

using Profile = std::array<float, across>;

/// From and to, in places.
struct Stretch {
    int from = 0, to = 0;
    int length() const { return to - from; }
};

/// How much changes at each place, bounded so that the rim of a drop does not outweigh print.
std::vector<float> changesOf(const std::vector<float>& values) {
    std::vector<float> changes(values.size(), 0);
    std::vector<float> sorted;
    for (int y = rim; y < across - rim; ++y)
        for (int x = rim; x < across - rim; ++x) {
            const float* here = values.data() + y * across + x;
            const float change = std::abs(here[1] - here[-1]) + std::abs(here[across] - here[-across]);
            changes[y * across + x] = change;
            sorted.push_back(change);
        }
    const auto upperQuarter = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() * 3 / 4);
    std::nth_element(sorted.begin(), upperQuarter, sorted.end());
    // Where much is blank the mean is the higher.
    const float mean =
        std::accumulate(sorted.begin(), sorted.end(), 0.0f) / static_cast<float>(sorted.size());
    const float most = std::max(mean, *upperQuarter);
    for (float& change : changes)
        change = std::min(change, most);
    return changes;
}

/// The longest stretch of the profile above a part of its height.
Stretch longestIn(const Profile& profile) {
    Profile sorted = profile;
    std::sort(sorted.begin(), sorted.end());
    const float high = sorted[across * 3 / 4], low = sorted[rim * 2 + 2];
    const float line = low + 0.5f * (high - low);
    Stretch best, now;
    for (int i = 0; i < across; ++i) {
        if (profile[i] > line) {
            if (now.length() == 0) now.from = i;
            now.to = i + 1;
        } else
            now = {};
        if (now.length() > best.length()) best = now;
    }
    return best;
}

bool isPlausible(const Quad& symbol) {
    constexpr double smallest = 18; // pixels; ten modules could not be told apart
    double shortest = 1e9, longest = 0;
    for (std::size_t i = 0; i < symbol.size(); ++i) {
        const Point a = symbol[i], b = symbol[(i + 1) % 4];
        shortest = std::min(shortest, std::hypot(b.x - a.x, b.y - a.y));
        longest = std::max(longest, std::hypot(b.x - a.x, b.y - a.y));
    }
    return shortest >= smallest && longest < 2.6 * shortest;
}

} // namespace

std::optional<Quad> symbolOnLabel(const PictureLevels& picture, const Quad& label) {
    constexpr double size = across;
    const auto toPicture = rectangleTo(label, size, size);
    if (!toPicture) return std::nullopt;
    std::vector<float> straightened(static_cast<std::size_t>(across) * across);
    sampleRaster(picture, *toPicture, across, across, straightened.data());
    const auto changes = changesOf(straightened);
    Stretch columns{0, across}, rows{0, across};
    for (int round = 0; round < 2; ++round) {
        Profile byRow{}, byColumn{};
        for (int y = 0; y < across; ++y)
            for (int x = columns.from; x < columns.to; ++x)
                byRow[y] += changes[y * across + x];
        rows = longestIn(byRow);
        for (int y = rows.from; y < rows.to; ++y)
            for (int x = 0; x < across; ++x)
                byColumn[x] += changes[y * across + x];
        columns = longestIn(byColumn);
    }
    if (rows.length() < across / 4 || columns.length() < across / 4) return std::nullopt;
    // The change at the symbol's edge reaches out by half a place's neighbours.
    const double left = columns.from + 0.5, right = columns.to - 0.5, top = rows.from + 0.5,
                 bottom = rows.to - 0.5;
    const Quad symbol{toPicture->map(left, top), toPicture->map(right, top), toPicture->map(right, bottom),
                      toPicture->map(left, bottom)};
    if (!isPlausible(symbol)) return std::nullopt;
    return symbol;
}

} // namespace scanner::reader
