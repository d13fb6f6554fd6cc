#include "scanner/reader/qr/qr_patch.h"

#include "scanner/reader/image/quad.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>

namespace scanner::reader {
namespace {

constexpr double leastAtStart = 0.15, leastFitted = 0.45; // correlations

struct TurnedStart {
    Homography toPatch;
    double correlation;
};

/// The best start of each turn that is worth a fit, best first: as the patch says, or with one corner where
/// the others make a parallelogram.
std::vector<TurnedStart> startsIn(const StraightPatch& patch, const GridPattern& pattern, const Quad& quad,
                                  const Quad& square) {
    std::vector<TurnedStart> starts;
    const auto straight = projectionThrough(quad, square);
    if (!straight) return starts;
    const auto outlines = withOneCornerMoved(quad);
    for (int turn = 0; turn < 4; ++turn) {
        Quad from = square;
        std::rotate(from.begin(), from.begin() + turn, from.end());
        TurnedStart best{{}, -1};
        for (const Quad& corners : outlines) {
            const auto toPicture = projectionThrough(from, corners);
            if (!toPicture) continue;
            const Homography toPatch = StraightPatch::fromModules() * *straight * *toPicture;
            GridFitter fitter(patch, pattern, toPatch);
            fitter.approach(-1, 0, 0);
            if (fitter.correlation() > best.correlation) best = {toPatch, fitter.correlation()};
        }
        if (best.correlation > leastAtStart) starts.push_back(best);
    }
    std::stable_sort(starts.begin(), starts.end(), [](const TurnedStart& a, const TurnedStart& b) {
        return a.correlation > b.correlation;
    });
    if (starts.size() > 2) starts.resize(2);
    return starts;
}

} // namespace

std::vector<GridFit> fitQrInPatch(const PictureLevels& picture, int version, const Quad& quad,
                                  bool negative) {
    std::vector<GridFit> fits;
    const GridPattern& pattern = qrPattern(version);
    const double size = pattern.columns;
    const Quad square{{{0, 0}, {size, 0}, {size, size}, {0, size}}};
    const auto guess = projectionThrough(square, quad);
    if (!guess) return fits;
    const StraightPatch patch(picture, *guess, pattern.columns, pattern.rows, negative);
    for (const TurnedStart& start : startsIn(patch, pattern, quad, square)) {
        GridFitter fitter(patch, pattern, start.toPatch);
        fitter.approach(leastAtStart, 4, 4);
        if (fitter.correlation() < 0.3) continue;
        fitter.refine();
        if (fitter.correlation() > leastFitted)
            fits.push_back({patch.toPicture() * fitter.toPatch(), fitter.correlation()});
    }
    return fits;
}

} // namespace scanner::reader
