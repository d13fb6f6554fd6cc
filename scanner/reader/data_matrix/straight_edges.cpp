#include "scanner/reader/data_matrix/straight_edges.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace scanner::reader {
namespace {

constexpr int side = StraightRegion::side;
constexpr int mostLean = 10;                      // places over the whole
constexpr int widthOfSteps = side + 2 * mostLean; // of a row
constexpr float clearStep = 100, leastScore = 400;
constexpr std::size_t mostEdges = 4;

using Steps = std::vector<std::int16_t>;

/// Light on the left is positive; over four places, so that an edge between two places counts whole.
SCANNER_VECTORISED void stepsAlong(const float* values, float* steps, int count) {
    for (int x = 0; x < count; ++x)
        steps[x] = values[x] + values[x + 1] - values[x + 2] - values[x + 3];
}

SCANNER_VECTORISED float sumOfSizes(const float* steps, int count) {
    float sum = 0;
    for (int x = 0; x < count; ++x)
        sum += std::abs(steps[x]);
    return sum;
}

SCANNER_VECTORISED void scaleSteps(const float* steps, float scale, std::int16_t* out, int count) {
    for (int x = 0; x < count; ++x)
        out[x] = static_cast<std::int16_t>(std::min(clearStep, std::max(-clearStep, steps[x] * scale)));
}

/// At each place, in hundredths of a clear step.
Steps stepsOf(const StraightRegion& region) {
    constexpr int margin = StraightRegion::margin, across = StraightRegion::across;
    constexpr int every = 4; // rows that are counted
    std::vector<float> all(static_cast<std::size_t>(side) * side, 0);
    float sum = 0;
    for (int y = 0; y < side; ++y) {
        float* row = all.data() + y * side;
        stepsAlong(region.row(y), row + 2, side - 3);
        if (y >= margin && y < side - margin && y % every == 0) sum += sumOfSizes(row + margin, across);
    }
    constexpr float least = 8; // grey levels, of two places: less is grain
    const float clear = std::max(least, 1.7f * every * sum / (across * across));
    Steps steps(static_cast<std::size_t>(side) * widthOfSteps, 0);
    for (int y = 0; y < side; ++y)
        scaleSteps(all.data() + y * side, clearStep / clear, steps.data() + y * widthOfSteps + mostLean,
                   side);
    return steps;
}

/// Of each of some lines side by side the stretch that has the highest score, as far as the rows went.
struct Stretches {
    std::int16_t score[side]{}, from[side]{}, best[side]{}, bestFrom[side]{}, bestTo[side]{};
};

/// A place counts for an edge by its step and against it by a share of a clear one; where all before counts
/// against it, the stretch begins anew.
SCANNER_VECTORISED void addRow(const std::int16_t* steps, std::int16_t sign, std::int16_t y, Stretches& all) {
    constexpr std::int16_t cost = 40;
    const auto after = static_cast<std::int16_t>(y + 1);
    Stretches& __restrict s = all;
    for (int x = 0; x < side; ++x) {
        const std::int16_t before = s.score[x], best = s.best[x];
        s.from[x] = before <= 0 ? y : s.from[x];
        const auto now = static_cast<std::int16_t>((before <= 0 ? 0 : before) + (sign * steps[x] - cost));
        s.score[x] = now;
        s.bestFrom[x] = now > best ? s.from[x] : s.bestFrom[x];
        s.bestTo[x] = now > best ? after : s.bestTo[x];
        s.best[x] = now > best ? now : best;
    }
}

Stretches stretchesOf(const Steps& steps, int slope, int sign) {
    Stretches stretches;
    for (int y = 0; y < side; ++y) {
        const double lean = slope * (y + 0.5 - side / 2.0) / side;
        addRow(steps.data() + y * widthOfSteps + mostLean + std::lround(lean),
               static_cast<std::int16_t>(sign), static_cast<std::int16_t>(y), stretches);
    }
    return stretches;
}

bool isBeside(const StraightEdge& a, const StraightEdge& b) {
    const double middle = (a.from + a.to) / 2.0;
    return std::abs(a.placeAt(middle) - b.placeAt(middle)) < 4 && a.from < b.to && b.from < a.to;
}

std::vector<StraightEdge> edgesOf(const Steps& steps, int sign) {
    std::array<StraightEdge, side> best; // of each place, however it leans
    for (const int slope : {0, -mostLean / 2, mostLean / 2, -mostLean, mostLean}) {
        const Stretches found = stretchesOf(steps, slope, sign);
        for (int x = 0; x < side; ++x) {
            const auto score = static_cast<float>(found.best[x]);
            if (score > best[x].score && found.bestTo[x] - found.bestFrom[x] >= shortestEdge)
                best[x] = {score, static_cast<float>(x), static_cast<float>(slope), found.bestFrom[x],
                           found.bestTo[x]};
        }
    }
    std::sort(best.begin(), best.end(),
              [](const StraightEdge& a, const StraightEdge& b) { return a.score > b.score; });
    std::vector<StraightEdge> kept;
    for (const StraightEdge& edge : best) {
        if (edge.score < leastScore || kept.size() == mostEdges) break;
        if (std::none_of(kept.begin(), kept.end(), [&](const auto& other) { return isBeside(edge, other); }))
            kept.push_back(edge);
    }
    return kept;
}

} // namespace

StraightEdges straightEdgesIn(const StraightRegion& region) {
    const Steps steps = stepsOf(region);
    return {edgesOf(steps, 1), edgesOf(steps, -1)};
}

} // namespace scanner::reader
