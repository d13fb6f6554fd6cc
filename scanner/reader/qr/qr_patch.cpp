#include "scanner/reader/qr/qr_patch.h"

#include "scanner/reader/image/quad.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>
#include <array>

namespace scanner::reader {
namespace {

constexpr double tagSide = 21;
constexpr double leastAtStart = 0.15, leastFitted = 0.45; // correlations

constexpr Quad symbolCorners{{{0, 0}, {tagSide, 0}, {tagSide, tagSide}, {0, tagSide}}};

} // namespace

std::vector<GridFit> fitQrInPatch(const PictureLevels& picture, const Quad& quad, bool negative) {
    std::vector<GridFit> fits;
    const GridPattern& pattern = qrPattern(1);
    const auto guess = projectionThrough(symbolCorners, quad);
    if (!guess) return fits;
    const StraightPatch patch(picture, *guess, pattern.columns, pattern.rows, negative);
    struct Start {
        Homography toPatch;
        double correlation;
    };
    std::vector<Start> best;
    for (int turn = 0; turn < 4; ++turn) {
        Start turned{{}, -1};
        for (const Quad& corners : withOneCornerMoved(quad)) {
            Quad from = symbolCorners;
            std::rotate(from.begin(), from.begin() + turn, from.end());
            const auto toPicture = projectionThrough(from, corners);
            const auto inverse = projectionThrough(quad, symbolCorners);
            if (!toPicture || !inverse) continue;
            const Homography start = StraightPatch::fromModules() * *inverse * *toPicture;
            GridFitter fitter(patch, pattern, start);
            fitter.approach(-1, 0, 0);
            if (fitter.correlation() > turned.correlation) turned = {start, fitter.correlation()};
        }
        if (turned.correlation > leastAtStart) best.push_back(turned);
    }
    std::stable_sort(best.begin(), best.end(),
                     [](const Start& a, const Start& b) { return a.correlation > b.correlation; });
    if (best.size() > 2) best.resize(2);
    for (const Start& start : best) {
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
