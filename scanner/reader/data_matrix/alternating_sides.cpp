#include "scanner/reader/data_matrix/alternating_sides.h"

#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <numbers>
#include <utility>

namespace scanner::reader {
namespace {

constexpr int steps = 48; // places looked at along a side

/// A wave of as many periods a side as a size has pairs of modules.
struct Wave {
    float cosine[steps], sine[steps];
};

const std::array<Wave, matrixSizeCount>& waves() {
    static const auto all = [] {
        std::array<Wave, matrixSizeCount> waves;
        for (std::size_t size = 0; size < matrixSizeCount; ++size)
            for (int i = 0; i < steps; ++i) {
                const double angle = std::numbers::pi * matrixSizes()[size].modules * i / steps;
                waves[size].cosine[i] = static_cast<float>(std::cos(angle));
                waves[size].sine[i] = static_cast<float>(std::sin(angle));
            }
        return waves;
    }();
    return all;
}

using Profile = std::array<float, steps>;
using Shares = std::array<float, matrixSizeCount>; ///< by size

SCANNER_VECTORISED float product(const float* a, const float* b) {
    EightFloats sums{};
    for (int i = 0; i < steps; i += 8) {
        EightFloats some, others;
        std::memcpy(&some, a + i, sizeof some);
        std::memcpy(&others, b + i, sizeof others);
        sums += some * others;
    }
    return sums[0] + sums[1] + sums[2] + sums[3] + sums[4] + sums[5] + sums[6] + sums[7];
}

/// The share of each rhythm in the change along a line; the larger is kept.
void addShares(Profile line, Shares& shares) {
    float mean = 0;
    for (const float value : line)
        mean += value / steps;
    for (float& value : line)
        value -= mean;
    const float change = product(line.data(), line.data());
    constexpr float grain = 4; // grey levels, squared
    if (change < grain * steps) return;
    for (std::size_t size = 0; size < matrixSizeCount; ++size) {
        const float even = product(line.data(), waves()[size].cosine),
                    odd = product(line.data(), waves()[size].sine);
        shares[size] = std::max(shares[size], 2 * (even * even + odd * odd) / (steps * change));
    }
}

Shares sharesOf(const StraightRegion& region, Point a, Point b, Point middle) {
    const double outX = (a.x + b.x) / 2 - middle.x, outY = (a.y + b.y) / 2 - middle.y;
    const double length = std::max(1.0, std::hypot(outX, outY));
    Shares shares{};
    for (const double inset : {-0.5, 0.75, 2.0, 3.25, 4.5}) { // places; a module has three to five
        Profile line;
        const double x = a.x - inset * outX / length, y = a.y - inset * outY / length;
        for (int i = 0; i < steps; ++i) {
            const double along = (i + 0.5) / steps;
            line[i] = region.at(x + along * (b.x - a.x), y + along * (b.y - a.y));
        }
        addShares(line, shares);
    }
    return shares;
}

/// Sizes that explain nearly as much as the likeliest, likeliest first.
std::vector<int> likelyOf(const Shares& shares) {
    constexpr float part = 0.4f;
    const float least = part * *std::max_element(shares.begin(), shares.end());
    std::vector<std::pair<float, int>> likely;
    for (std::size_t size = 0; size < matrixSizeCount; ++size)
        if (shares[size] >= least) likely.emplace_back(-shares[size], matrixSizes()[size].modules);
    std::sort(likely.begin(), likely.end());
    std::vector<int> sizes;
    for (const auto& [share, modules] : likely)
        sizes.push_back(modules);
    return sizes;
}

} // namespace

AlternatingSides alternatingSides(const StraightRegion& region, const Quad& corners) {
    std::array<Shares, 4> shares;
    for (std::size_t k = 0; k < 4; ++k)
        shares[k] = sharesOf(region, corners[k], corners[(k + 1) % 4], middleOf(corners));
    AlternatingSides best;
    Shares bestShares{};
    for (std::size_t k = 0; k < 4; ++k) {
        Shares both;
        for (std::size_t size = 0; size < matrixSizeCount; ++size)
            both[size] = (shares[k][size] + shares[(k + 1) % 4][size]) / 2;
        const double share = *std::max_element(both.begin(), both.end());
        if (share <= best.share) continue;
        best = {static_cast<int>(k), share, {}};
        bestShares = both;
    }
    best.sizes = likelyOf(bestShares);
    return best;
}

} // namespace scanner::reader
