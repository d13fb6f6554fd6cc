#include "scanner/reader/qr/qr_step.h"

#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/bent_fit.h"
#include "scanner/reader/image/grid_sampling.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>

namespace scanner::reader {
namespace {

/// What is the same in every symbol of this size is drawn as it should be, which saves the general decoder's
/// doubts.
void repaint(GridSamples& soft, const GridPattern& pattern) {
    for (int row = 0; row < pattern.rows; ++row)
        for (int column = 0; column < pattern.columns; ++column)
            if (pattern.at(column, row) != 0)
                soft.values[row * soft.columns + column] = pattern.at(column, row);
}

SeenCode seenCodeOf(const TagReading& tag) {
    SeenCode code;
    code.text = tag.text;
    code.symbology = Symbology::Qr;
    code.howRead = tag.needsGuesswork() ? HowRead::Guessed : HowRead::Fitted;
    return code;
}

/// Of a symbol of `size` modules a side that lies as the mapping (modules to the picture) says.
GridSamples samplesAt(const PictureLevels& picture, const Homography& toPicture, int size, bool negative) {
    const auto mapping = [&](double u, double v) { return toPicture.map(u, v); };
    const double pixels = modulePixelsAt(toPicture, {size / 2.0, size / 2.0});
    return sampleGrid(picture, mapping, pixels, size, size, negative);
}

GridSamples samplesAt(const PictureLevels& picture, const BentFit& fit, const Homography& flat,
                      bool negative) {
    const GridPattern& pattern = qrPattern(1);
    const double middle = pattern.columns / 2.0;
    const auto mapping = [&](double u, double v) { return fit.map(u, v); };
    return sampleGrid(picture, mapping, modulePixelsAt(flat, {middle, middle}), pattern.columns, pattern.rows,
                      negative);
}

/// All modules of a symbol, and the quiet zone.
GridPattern patternOf(const PrintedSymbol& printed) {
    GridPattern pattern = qrPattern(1);
    pattern.middles.clear();
    pattern.quarters.clear();
    for (int row = 0; row < pattern.rows; ++row)
        for (int column = 0; column < pattern.columns; ++column)
            pattern.set(column, row, printed.modules.at(column, row) < 0 ? -1 : 1);
    pattern.listPoints();
    return pattern;
}

/// What is seen where the whole symbol of this text, not only its finders, lies best, bent if that is better;
/// where it lies nowhere well, the samples as they are. `flat`: where it was found, or about where it would
/// lie if it were flat.
GridSamples samplesWhereBest(const PictureLevels& picture, const GridSamples& samples,
                             const std::string& text, const Homography& flatStart, const BentFit* bentStart,
                             bool negative) {
    constexpr double sure = 0.9, least = 0.6, better = 0.01; // correlations
    const auto printed = printedTag(samples, text);
    if (!printed) return samples;
    const GridPattern pattern = patternOf(*printed);
    const GridFit flat = fitGrid(picture, pattern, flatStart, negative);
    if (flat.correlation < sure) {
        const BentFit bent = bentStart ? refitBentGrid(picture, pattern, *bentStart, flatStart, negative)
                                       : fitBentGrid(picture, pattern, flat, negative);
        if (bent.correlation > std::max(least, flat.correlation + better))
            return samplesAt(picture, bent, flat.toPicture, negative);
    }
    return flat.correlation < least ? samples : samplesAt(picture, flat.toPicture, pattern.columns, negative);
}

/// What becomes of a tag that was mended so much that it may be a part of another label: nothing if it is
/// contradicted where it lies best (in a poor fit a sound symbol objects, and a joined one may not), else
/// what is read there.
std::optional<TagReading> judged(const TagReading& tag, const PictureLevels& picture,
                                 const GridSamples& samples, const Homography& flatStart,
                                 const BentFit* bentStart, bool negative) {
    if (!tag.isMuchMended) return tag;
    const GridSamples best = samplesWhereBest(picture, samples, tag.text, flatStart, bentStart, negative);
    if (contradictsTag(best, tag.text)) return std::nullopt;
    const auto again = mendQrTag(
        best, [&](const std::string& text) { return text == tag.text; }, Mending::ByCode);
    return again ? again : tag;
}

} // namespace

std::optional<SeenCode> readPoorlyFittedTag(const PictureLevels& picture, const GridFit& fit, bool negative,
                                            const TagTest& isTag) {
    const int size = qrPattern(1).columns;
    const GridSamples samples = samplesAt(picture, fit.toPicture, size, negative);
    auto tag = decodeByAgreement(samples, isTag);
    if (tag) tag = judged(*tag, picture, samples, fit.toPicture, nullptr, negative);
    if (!tag) return std::nullopt;
    SeenCode code = seenCodeOf(*tag);
    code.corners = cornersOf(fit.toPicture, size, size);
    return code;
}

std::optional<SeenCode> readFittedQr(const PictureLevels& picture, const GridFit& fit, int version,
                                     bool negative, const TagTest& isTag, Mending mending) {
    const GridPattern& pattern = qrPattern(version);
    const int size = pattern.columns;
    const GridSamples samples = samplesAt(picture, fit.toPicture, size, negative);
    auto tag = version == 1 ? mendQrTag(samples, isTag, mending) : std::nullopt;
    if (tag) {
        tag = judged(*tag, picture, samples, fit.toPicture, nullptr, negative);
        if (!tag) return std::nullopt;
    }
    std::optional<SeenCode> code = tag ? std::optional(seenCodeOf(*tag)) : std::nullopt;
    for (const Threshold& threshold :
         {Threshold{7, 0}, Threshold{7, 0.7f}, Threshold{0, 0.7f}, Threshold{11, 0}}) {
        if (code) break;
        GridSamples soft = softModules(samples, threshold);
        repaint(soft, pattern);
        code = decodeCleanGrid(soft, Symbology::Qr);
        if (code && isTag && isTag(code->text) && version == 1)
            return std::nullopt; // the tag decoder had its reasons
    }
    if (code) code->corners = cornersOf(fit.toPicture, size, size);
    return code;
}

bool isContradicted(const PictureLevels& picture, const SeenCode& code, bool negative) {
    const double side = qrPattern(1).columns;
    const auto guess =
        projectionThrough({Point{0, 0}, Point{side, 0}, Point{side, side}, Point{0, side}}, code.corners);
    if (!guess) return false;
    const GridFit fit = fitGrid(picture, qrPattern(1), *guess, negative);
    const GridSamples samples = samplesAt(picture, fit.toPicture, qrPattern(1).columns, negative);
    return contradictsTag(samplesWhereBest(picture, samples, code.text, fit.toPicture, nullptr, negative),
                          code.text);
}

std::optional<SeenCode> readBentQrTag(const PictureLevels& picture, const GridFit& flat, bool negative,
                                      const TagTest& isTag, Mending mending) {
    const GridPattern& pattern = qrPattern(1);
    const double size = pattern.columns;
    const BentFit fit = fitBentGrid(picture, pattern, flat, negative);
    if (fit.correlation < flat.correlation + 0.01) return std::nullopt;
    const GridSamples samples = samplesAt(picture, fit, flat.toPicture, negative);
    auto tag = mendQrTag(samples, isTag, mending);
    if (tag) tag = judged(*tag, picture, samples, flat.toPicture, &fit, negative);
    if (!tag) return std::nullopt;
    SeenCode code = seenCodeOf(*tag);
    code.corners = {fit.map(0, 0), fit.map(size, 0), fit.map(size, size), fit.map(0, size)};
    return code;
}

} // namespace scanner::reader
