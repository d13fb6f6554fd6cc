#include "scanner/reader/data_matrix/data_matrix_step.h"

#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/text_proof.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

constexpr double leastSolidity = 0.2;
constexpr int patchModules = 18; ///< modules a side of the patch in which all sizes are tried

double patchAt(const StraightPatch& patch, double x, double y) {
    const int ix = std::clamp(static_cast<int>(x), 0, patch.width() - 1);
    const int iy = std::clamp(static_cast<int>(y), 0, patch.height() - 1);
    return patch.row(iy)[ix];
}

/// How dark a side of the patch is all along, 1 to -1: the best of some lines parallel to it, just inside.
double solidity(const StraightPatch& patch, int side) {
    constexpr double p = StraightPatch::pixelsPerModule, from = StraightPatch::margin * p,
                     length = patchModules * p;
    double best = -1;
    for (double inset : {-1.0, 1.0, 3.0, 5.0}) {
        double sum = 0;
        constexpr int steps = 30;
        for (int i = 0; i < steps; ++i) {
            const double along = from + length * (0.06 + 0.88 * i / (steps - 1));
            const double low = from + inset, high = from + length - inset;
            switch (side) {
            case 0:
                sum += patchAt(patch, along, low);
                break;
            case 1:
                sum += patchAt(patch, high, along);
                break;
            case 2:
                sum += patchAt(patch, along, high);
                break;
            default:
                sum += patchAt(patch, low, along);
                break;
            }
        }
        best = std::max(best, -sum / steps);
    }
    return best;
}

/// Turns the symbol by quarters: the corner that was at `turns` comes to the top left.
Homography quarterTurns(int turns, double size) {
    Homography turn;
    for (int i = 0; i < turns; ++i)
        turn = Homography{{0, -1, size, 1, 0, 0, 0, 0, 1}} * turn;
    return turn;
}

/// Correlation of the alternating edges alone: whole-pattern correlation likes wrong sizes.
double alternation(const StraightPatch& patch, const Homography& toPatch, int n) {
    Correlation<float> correlation;
    const auto add = [&](int column, int row, float target) {
        const Point p = toPatch.map(column + 0.5, row + 0.5);
        correlation.add(slopeAt(patch, static_cast<float>(p.x), static_cast<float>(p.y)).value, target);
    };
    for (int i = 1; i + 1 < n; ++i) {
        add(i, 0, i % 2 ? 1.0f : -1.0f);
        add(n - 1, i, i % 2 ? -1.0f : 1.0f);
    }
    return correlation.value(1e-3f);
}

struct Candidate {
    Homography toPatch;
    const MatrixSize* size = nullptr;
    double alternation = -1;
};

std::optional<SeenCode> decode(const PictureLevels& picture, const Homography& toPicture,
                               const MatrixSize& size, bool negative, const TagTest& isTag,
                               const TimeBudget& budget) {
    const int n = size.modules;
    const auto mapping = [&](double u, double v) { return toPicture.map(u, v); };
    const GridSamples samples =
        sampleGrid(picture, mapping, modulePixelsAt(toPicture, {n / 2.0, n / 2.0}), n, n, negative);
    for (const Threshold& threshold : {Threshold{7, 0}, Threshold{7, 0.7f}, Threshold{0, 0},
                                       Threshold{5, 0.7f}, Threshold{11, 0.7f}, Threshold{0, 0.7f}}) {
        if (budget.isSpent()) return std::nullopt;
        const GridSamples soft = softModules(samples, threshold);
        for (int erased = 0; erased <= size.checks - 3; erased += 2) {
            const auto reading = mendMatrix(soft, size, erased, erased);
            if (!reading) continue;
            auto code = decodeCleanGrid(reading->modules, Symbology::DataMatrix);
            if (!code) continue;
            const bool proved = provesItself(code->text, code->gs1, isTag);
            if (!proved && reading->erased + 2 * reading->errors > size.checks - 4) continue;
            code->howRead = reading->needsGuesswork() ? HowRead::Guessed : HowRead::Fitted;
            code->corners = cornersOf(toPicture, n, n);
            return code;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<SeenCode> readDataMatrix(const PictureLevels& picture, const Quad& quad, bool negative,
                                       const TagTest& isTag, const TimeBudget& budget) {
    const auto guess = projectionThrough(
        {Point{0, 0}, Point{patchModules, 0}, Point{patchModules, patchModules}, Point{0, patchModules}},
        quad);
    if (!guess) return std::nullopt;
    const StraightPatch patch(picture, *guess, patchModules, patchModules, negative);
    std::array<double, 4> solid{};
    for (int side = 0; side < 4; ++side)
        solid[side] = solidity(patch, side);
    // Turned by t, the solid sides are those that were left (3) and below (2).
    std::array<int, 4> turns{0, 1, 2, 3};
    const auto score = [&](int t) { return std::min(solid[(3 + t) % 4], solid[(2 + t) % 4]); };
    std::stable_sort(turns.begin(), turns.end(), [&](int a, int b) { return score(a) > score(b); });
    std::vector<Candidate> candidates;
    for (int k = 0; k < 2; ++k) {
        if (score(turns[k]) < leastSolidity) break;
        for (const MatrixSize& size : matrixSizes()) {
            if (budget.isSpent()) return std::nullopt;
            const double scale = static_cast<double>(patchModules) / size.modules;
            const Homography start = StraightPatch::fromModules() * quarterTurns(turns[k], patchModules) *
                                     Homography{{scale, 0, 0, 0, scale, 0, 0, 0, 1}};
            GridFitter fitter(patch, matrixPattern(size.modules), start);
            if (!fitter.approach(0.2, 3, 3) || fitter.correlation() < 0.4) continue;
            const double regular = alternation(patch, fitter.toPatch(), size.modules);
            if (regular > 0.4) candidates.push_back({fitter.toPatch(), &size, regular});
        }
    }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.alternation > b.alternation; });
    for (std::size_t i = 0; i < std::min<std::size_t>(2, candidates.size()); ++i) {
        const MatrixSize& size = *candidates[i].size;
        GridFitter fitter(patch, matrixPattern(size.modules), candidates[i].toPatch);
        fitter.approach(-1, 0, 0);
        fitter.refine();
        if (auto code = decode(picture, patch.toPicture() * fitter.toPatch(), size, negative, isTag, budget))
            return code;
    }
    return std::nullopt;
}

} // namespace scanner::reader
