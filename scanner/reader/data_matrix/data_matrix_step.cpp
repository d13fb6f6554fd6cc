#include "scanner/reader/data_matrix/data_matrix_step.h"

#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/dissent.h"
#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/bent_fit.h"
#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/text_proof.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

constexpr double leastSolidity = 0.2;
constexpr double bendable = 0.5; ///< correlation of a flat fit that bending may improve
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

Dissent dissentFrom(const GridSamples& soft, const GridSamples& drawn) {
    Dissent dissent;
    for (int row = 1; row + 1 < soft.rows; ++row)
        for (int column = 1; column + 1 < soft.columns; ++column)
            dissent.add(soft.at(column, row), drawn.at(column, row) < 0, column, row);
    return dissent;
}

/// `mapping`: modules to the picture, flat or bent.
template <class Mapping>
std::optional<SeenCode> decode(const PictureLevels& picture, const Mapping& mapping, double modulePixels,
                               const MatrixSize& size, bool negative, const TagTest& isTag,
                               const TimeBudget& budget) {
    const int n = size.modules;
    const GridSamples samples = sampleGrid(picture, mapping, modulePixels, n, n, negative);
    for (const Threshold& threshold : {Threshold{7, 0}, Threshold{7, 0.7f}, Threshold{0, 0},
                                       Threshold{5, 0.7f}, Threshold{11, 0.7f}, Threshold{0, 0.7f}}) {
        if (budget.isSpent()) return std::nullopt;
        const GridSamples soft = softModules(samples, threshold);
        for (int erased = 0; erased <= size.checks - 3; erased += 2) {
            const auto reading = mendMatrix(soft, size, erased, erased);
            if (!reading) continue;
            auto code = decodeCleanGrid(reading->modules, Symbology::DataMatrix);
            if (!code) continue;
            if (isMuchMended(reading->changed, size.checks) && dissentFrom(soft, reading->modules).refuses())
                return std::nullopt;
            const bool proved = provesItself(code->text, code->gs1, isTag);
            if (!proved && reading->erased + 2 * reading->errors > size.checks - 4) continue;
            code->howRead = reading->needsGuesswork() ? HowRead::Guessed : HowRead::Fitted;
            code->corners = {mapping(0, 0), mapping(n, 0), mapping(n, n), mapping(0, n)};
            return code;
        }
    }
    return std::nullopt;
}

const MatrixSize& sizeOf(int modules) {
    const auto sizes = matrixSizes();
    return *std::find_if(sizes.begin(), sizes.end(),
                         [&](const MatrixSize& each) { return each.modules == modules; });
}

/// Quarter turns that bring two solid sides to the left and below, likeliest first, two at most.
std::vector<int> likelyTurns(const StraightPatch& patch) {
    std::array<double, 4> solid{};
    for (int side = 0; side < 4; ++side)
        solid[side] = solidity(patch, side);
    // Turned by t, the solid sides are those that were left (3) and below (2).
    const auto score = [&](int t) { return std::min(solid[(3 + t) % 4], solid[(2 + t) % 4]); };
    std::vector<int> turns{0, 1, 2, 3};
    std::erase_if(turns, [&](int t) { return score(t) < leastSolidity; });
    std::stable_sort(turns.begin(), turns.end(), [&](int a, int b) { return score(a) > score(b); });
    if (turns.size() > 2) turns.resize(2);
    return turns;
}

/// Fits of all sizes in a straightened patch, by the turns of its solid sides; best first.
std::vector<Candidate> candidatesIn(const StraightPatch& patch, const TimeBudget& budget) {
    std::vector<Candidate> candidates;
    for (const int turns : likelyTurns(patch))
        for (const MatrixSize& size : matrixSizes()) {
            if (budget.isSpent()) return {};
            const double scale = static_cast<double>(patchModules) / size.modules;
            const Homography start = StraightPatch::fromModules() * quarterTurns(turns, patchModules) *
                                     Homography{{scale, 0, 0, 0, scale, 0, 0, 0, 1}};
            GridFitter fitter(patch, matrixPattern(size.modules), start);
            if (!fitter.approach(0.2, 3, 3) || fitter.correlation() < 0.4) continue;
            const double regular = alternation(patch, fitter.toPatch(), size.modules);
            if (regular > 0.4) candidates.push_back({fitter.toPatch(), &size, regular});
        }
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.alternation > b.alternation; });
    if (candidates.size() > 2) candidates.resize(2);
    return candidates;
}

std::optional<SeenCode> readCandidate(const PictureLevels& picture, const StraightPatch& patch,
                                      const Candidate& candidate, bool negative, const TagTest& isTag,
                                      const TimeBudget& budget, std::vector<UnreadMatrix>* unread) {
    const MatrixSize& size = *candidate.size;
    GridFitter fitter(patch, matrixPattern(size.modules), candidate.toPatch);
    fitter.approach(-1, 0, 0);
    fitter.refine();
    const UnreadMatrix found{{patch.toPicture() * fitter.toPatch(), fitter.correlation()},
                             size.modules,
                             negative};
    auto code = readMatrixAt(picture, found, isTag, budget);
    if (!code && unread && found.fit.correlation > bendable) unread->push_back(found);
    return code;
}

} // namespace

std::optional<SeenCode> readDataMatrix(const PictureLevels& picture, const Quad& quad, bool negative,
                                       const TagTest& isTag, const TimeBudget& budget,
                                       std::vector<UnreadMatrix>* unread) {
    const auto guess = projectionThrough(
        {Point{0, 0}, Point{patchModules, 0}, Point{patchModules, patchModules}, Point{0, patchModules}},
        quad);
    if (!guess) return std::nullopt;
    const StraightPatch patch(picture, *guess, patchModules, patchModules, negative);
    for (const Candidate& candidate : candidatesIn(patch, budget))
        if (auto code = readCandidate(picture, patch, candidate, negative, isTag, budget, unread))
            return code;
    return std::nullopt;
}

std::optional<SeenCode> readMatrixAt(const PictureLevels& picture, const UnreadMatrix& found,
                                     const TagTest& isTag, const TimeBudget& budget) {
    const Homography& toPicture = found.fit.toPicture;
    const auto mapping = [&](double u, double v) { return toPicture.map(u, v); };
    const double middle = found.modules / 2.0;
    return decode(picture, mapping, modulePixelsAt(toPicture, {middle, middle}), sizeOf(found.modules),
                  found.negative, isTag, budget);
}

std::optional<SeenCode> readBentDataMatrix(const PictureLevels& picture, const UnreadMatrix& unread,
                                           const TagTest& isTag, const TimeBudget& budget) {
    const GridFit& flat = unread.fit;
    const BentFit fit = fitBentGrid(picture, matrixPattern(unread.modules), flat, unread.negative);
    if (fit.correlation < flat.correlation + 0.01) return std::nullopt;
    const auto mapping = [&](double u, double v) { return fit.map(u, v); };
    const double middle = unread.modules / 2.0;
    return decode(picture, mapping, modulePixelsAt(flat.toPicture, {middle, middle}), sizeOf(unread.modules),
                  unread.negative, isTag, budget);
}

} // namespace scanner::reader
