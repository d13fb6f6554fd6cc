#include "scanner/reader/data_matrix/data_matrix_step.h"

#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/data_matrix/matrix_agreement.h"
#include "scanner/reader/dissent.h"
#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/bent_fit.h"
#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/text_proof.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace scanner::reader {
namespace {

/// How clearly the sides must show themselves.
struct Limits {
    double solidity;        ///< of the two solid sides
    std::size_t turns;      ///< tried at most
    double alternation;     ///< correlation of the alternating edges
    std::size_t candidates; ///< read at most
    bool oneCornerLost;     ///< also look where the patch would lie with one of its corners elsewhere
};

constexpr Limits limitsFor(PatchTrust trust) {
    switch (trust) {
    case PatchTrust::OneCornerLost:
        return {0.25, 2, 0.4, 2, true};
    case PatchTrust::OnLabel:
        return {0.0, 4, 0.25, 4, false};
    default:
        return {0.2, 2, 0.4, 2, false};
    }
}

constexpr double bendable = 0.5; ///< correlation of a flat fit that bending may improve
constexpr int patchModules = 18; ///< modules a side of the patch in which all sizes are tried

double patchAt(const StraightPatch& patch, double x, double y) {
    const int ix = std::clamp(static_cast<int>(x), 0, patch.width() - 1);
    const int iy = std::clamp(static_cast<int>(y), 0, patch.height() - 1);
    return patch.row(iy)[ix];
}

/// How dark a side of a quadrilateral is all along, 1 to -1: the best of some lines parallel to it, just
/// inside. `toPatch` takes the square of `patchModules` to the patch.
double solidity(const StraightPatch& patch, const Homography& toPatch, int side) {
    constexpr double length = patchModules;
    double best = -1;
    for (double inset : {-0.25, 0.25, 0.75, 1.25}) {
        double sum = 0;
        constexpr int steps = 30;
        for (int i = 0; i < steps; ++i) {
            const double along = length * (0.06 + 0.88 * i / (steps - 1)), off = length - inset;
            const std::array<Point, 4> places{Point{along, inset}, Point{off, along}, Point{along, off},
                                              Point{inset, along}};
            const Point p = toPatch.map(places[static_cast<std::size_t>(side)]);
            sum += patchAt(patch, p.x, p.y);
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

HowRead howReadOf(const MatrixReading& reading) {
    return reading.needsGuesswork() ? HowRead::Guessed : HowRead::Fitted;
}

/// A tag of which more is wrong than the Reed-Solomon code mends.
std::optional<SeenCode> decodeByAgreement(const GridSamples& samples, const MatrixSize& size,
                                          const TagTest& isTag) {
    for (const Threshold& threshold : {Threshold{7, 0.7f}, Threshold{0, 0.7f}}) {
        const GridSamples soft = softModules(samples, threshold);
        const auto reading = mendByAgreement(soft, size);
        auto code = reading ? decodeCleanGrid(reading->modules, Symbology::DataMatrix) : std::nullopt;
        if (!code || !isTag(code->text) || dissentFrom(soft, reading->modules).refuses()) continue;
        code->howRead = howReadOf(*reading);
        return code;
    }
    return std::nullopt;
}

/// `mapping`: modules to the picture, flat or bent. `correlation`: of its fit.
template <class Mapping>
std::optional<SeenCode> decode(const PictureLevels& picture, const Mapping& mapping, double correlation,
                               double modulePixels, const MatrixSize& size, bool negative,
                               const TagTest& isTag, const TimeBudget& budget) {
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
            code->howRead = howReadOf(*reading);
            code->corners = {mapping(0, 0), mapping(n, 0), mapping(n, n), mapping(0, n)};
            return code;
        }
    }
    constexpr double leastCorrelation = 0.62; // of what is read by agreement, which takes time
    if (!isTag || correlation < leastCorrelation || budget.isSpent()) return std::nullopt;
    auto code = decodeByAgreement(samples, size, isTag);
    if (code) code->corners = {mapping(0, 0), mapping(n, 0), mapping(n, n), mapping(0, n)};
    return code;
}

const MatrixSize& sizeOf(int modules) {
    const auto sizes = matrixSizes();
    return *std::find_if(sizes.begin(), sizes.end(),
                         [&](const MatrixSize& each) { return each.modules == modules; });
}

/// A square of `patchModules` laid into the patch so that its left and lower sides are solid.
struct Turned {
    Homography toPatch;
    double solidity;
};

/// Where the quadrilateral, or with leave one with a corner elsewhere, may show two solid sides, likeliest
/// first.
std::vector<Turned> likelyTurns(const StraightPatch& patch, const Quad& quad, const Limits& limits) {
    constexpr double size = patchModules;
    constexpr Quad square{{{0, 0}, {size, 0}, {size, size}, {0, size}}};
    std::vector<Turned> turned;
    const auto look = [&](const Homography& toPatch) {
        std::array<double, 4> solid{};
        for (int side = 0; side < 4; ++side)
            solid[side] = solidity(patch, toPatch, side);
        for (int t = 0; t < 4; ++t) {
            // Turned by t, the solid sides are those that were left (3) and below (2).
            const double least = std::min(solid[(3 + t) % 4], solid[(2 + t) % 4]);
            if (least >= limits.solidity) turned.push_back({toPatch * quarterTurns(t, size), least});
        }
    };
    if (!limits.oneCornerLost)
        look(StraightPatch::fromModules());
    else if (const auto straight = projectionThrough(quad, square))
        for (const Quad& corners : withOneCornerMoved(quad))
            if (const auto toPicture = projectionThrough(square, corners))
                look(StraightPatch::fromModules() * *straight * *toPicture);
    std::stable_sort(turned.begin(), turned.end(),
                     [](const Turned& a, const Turned& b) { return a.solidity > b.solidity; });
    if (turned.size() > limits.turns) turned.resize(limits.turns);
    return turned;
}

/// A fit of one size, if it shows the symbol's borders at all. `toPatch`: from the square of `patchModules`.
std::optional<Candidate> candidateOf(const StraightPatch& patch, const Homography& toPatch,
                                     const MatrixSize& size) {
    const double scale = static_cast<double>(patchModules) / size.modules;
    GridFitter fitter(patch, matrixPattern(size.modules), toPatch * scaling(scale));
    if (!fitter.approach(0.2, 3, 3) || fitter.correlation() < 0.4) return std::nullopt;
    return Candidate{fitter.toPatch(), &size, alternation(patch, fitter.toPatch(), size.modules)};
}

void keepBest(std::vector<Candidate>& candidates, std::size_t most) {
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.alternation > b.alternation; });
    if (candidates.size() > most) candidates.resize(most);
}

/// Fits of all sizes in a straightened patch, by the turns of its solid sides; best first.
std::vector<Candidate> candidatesIn(const StraightPatch& patch, const Quad& quad, const Limits& limits,
                                    const TimeBudget& budget) {
    std::vector<Candidate> candidates;
    for (const Turned& turned : likelyTurns(patch, quad, limits))
        for (const MatrixSize& size : matrixSizes()) {
            if (budget.isSpent()) return {};
            const auto fit = candidateOf(patch, turned.toPatch, size);
            if (fit && fit->alternation > limits.alternation) candidates.push_back(*fit);
        }
    keepBest(candidates, limits.candidates);
    return candidates;
}

/// The symbol that lies as the fit says.
std::optional<SeenCode> readMatrixAt(const PictureLevels& picture, const UnreadMatrix& found,
                                     const TagTest& isTag, const TimeBudget& budget) {
    const Homography& toPicture = found.fit.toPicture;
    const auto mapping = [&](double u, double v) { return toPicture.map(u, v); };
    const double middle = found.modules / 2.0;
    return decode(picture, mapping, found.fit.correlation, modulePixelsAt(toPicture, {middle, middle}),
                  sizeOf(found.modules), found.negative, isTag, budget);
}

std::optional<SeenCode> readCandidate(const PictureLevels& picture, const StraightPatch& patch,
                                      const Candidate& candidate, bool negative, const TagTest& isTag,
                                      const TimeBudget& budget, std::vector<UnreadMatrix>* unread) {
    const MatrixSize& size = *candidate.size;
    GridFitter fitter(patch, matrixPattern(size.modules), candidate.toPatch);
    fitter.approach(-1, 0, 0);
    fitter.refine();
    const UnreadMatrix found{
        {patch.toPicture() * fitter.toPatch(), fitter.correlation()}, size.modules, negative};
    auto code = readMatrixAt(picture, found, isTag, budget);
    if (!code && unread && found.fit.correlation > bendable) unread->push_back(found);
    return code;
}

std::optional<Homography> patchGuess(const Quad& quad) {
    constexpr double size = patchModules;
    return rectangleTo(quad, size, size);
}

} // namespace

std::optional<SeenCode> readDataMatrixAt(const PictureLevels& picture, const MatrixPlace& place,
                                         bool negative, const TagTest& isTag, const TimeBudget& budget,
                                         std::vector<UnreadMatrix>* unread) {
    const auto guess = patchGuess(place.corners);
    if (!guess) return std::nullopt;
    const StraightPatch patch(picture, *guess, patchModules, patchModules, negative);
    const Limits limits = limitsFor(PatchTrust::OnLabel); // dirt may have broken the sides
    std::vector<Candidate> candidates;
    for (const int modules : place.sizes) {
        if (budget.isSpent()) return std::nullopt;
        const auto fit = candidateOf(patch, StraightPatch::fromModules(), sizeOf(modules));
        if (fit && fit->alternation > limits.alternation) candidates.push_back(*fit);
    }
    keepBest(candidates, limits.candidates);
    for (const Candidate& candidate : candidates)
        if (auto code = readCandidate(picture, patch, candidate, negative, isTag, budget, unread))
            return code;
    return std::nullopt;
}

std::optional<SeenCode> readDataMatrix(const PictureLevels& picture, const Quad& quad, bool negative,
                                       const TagTest& isTag, const TimeBudget& budget,
                                       std::vector<UnreadMatrix>* unread, PatchTrust trust) {
    const auto guess = patchGuess(quad);
    if (!guess) return std::nullopt;
    const StraightPatch patch(picture, *guess, patchModules, patchModules, negative);
    for (const Candidate& candidate : candidatesIn(patch, quad, limitsFor(trust), budget))
        if (auto code = readCandidate(picture, patch, candidate, negative, isTag, budget, unread))
            return code;
    return std::nullopt;
}

std::optional<SeenCode> readBentDataMatrix(const PictureLevels& picture, const UnreadMatrix& unread,
                                           const TagTest& isTag, const TimeBudget& budget) {
    const GridFit& flat = unread.fit;
    const BentFit fit = fitBentGrid(picture, matrixPattern(unread.modules), flat, unread.negative);
    if (!isBetter(fit, flat)) return std::nullopt;
    const auto mapping = [&](double u, double v) { return fit.map(u, v); };
    const double middle = unread.modules / 2.0;
    return decode(picture, mapping, fit.correlation, modulePixelsAt(flat.toPicture, {middle, middle}),
                  sizeOf(unread.modules), unread.negative, isTag, budget);
}

} // namespace scanner::reader
