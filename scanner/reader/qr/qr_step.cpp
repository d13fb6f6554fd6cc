#include "scanner/reader/qr/qr_step.h"

#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/bent_fit.h"
#include "scanner/reader/image/grid_sampling.h"
#include "scanner/reader/qr/qr_pattern.h"

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
    for (int row = 0; row < pattern.rows; ++row)
        for (int column = 0; column < pattern.columns; ++column)
            pattern.set(column, row, printed.modules.at(column, row) < 0 ? -1 : 1);
    pattern.listPoints();
    return pattern;
}

/// What is seen of a symbol, and where it lies.
struct SeenPlace {
    GridSamples samples;
    Quad corners;
};

SeenPlace placeOf(const PictureLevels& picture, const BentFit& fit, const Homography& flat, bool negative) {
    const double size = qrPattern(1).columns;
    return {samplesAt(picture, fit, flat, negative),
            {fit.map(0, 0), fit.map(size, 0), fit.map(size, size), fit.map(0, size)}};
}

SeenPlace placeOf(const PictureLevels& picture, const Homography& flat, bool negative) {
    const int size = qrPattern(1).columns;
    return {samplesAt(picture, flat, size, negative), cornersOf(flat, size, size)};
}

/// Where the whole symbol of this text, not only its finders, lies best, bent if that is better; nullopt
/// where it lies nowhere well. `samples`: what was seen at the first place. `flatStart`: where to look for it
/// flat. `bentStart`: bent; without it both directions are tried.
std::optional<SeenPlace> bestPlaceOf(const std::string& text, const PictureLevels& picture,
                                     const GridSamples& samples, const Homography& flatStart,
                                     const BentFit* bentStart, bool negative) {
    constexpr double sure = 0.9, least = 0.55; // correlations
    const auto printed = printedTag(samples, text);
    if (!printed) return std::nullopt;
    const GridPattern pattern = patternOf(*printed);
    const GridFit flat = fitGrid(picture, pattern, flatStart, negative);
    if (flat.correlation < sure) {
        const BentFit bent = bentStart ? refitBentGrid(picture, pattern, *bentStart, flatStart, negative)
                                       : fitBentGrid(picture, pattern, flat, negative);
        if (bent.correlation > least && isBetter(bent, flat))
            return placeOf(picture, bent, flat.toPicture, negative);
    }
    if (flat.correlation < least) return std::nullopt;
    return placeOf(picture, flat.toPicture, negative);
}

/// A tag as it is told. One that was mended so much that it may be a part of another label is looked at where
/// it lies best, since in a poor fit a sound symbol objects, and a joined one may not: nothing if it lies
/// nowhere well or is contradicted there, else what is read there.
std::optional<SeenCode> judged(const TagReading& tag, const PictureLevels& picture, const SeenPlace& seen,
                               const Homography& flatStart, const BentFit* bentStart, bool negative) {
    SeenCode code = seenCodeOf(tag);
    code.corners = seen.corners;
    if (!tag.isMuchMended) return code;
    const auto best = bestPlaceOf(tag.text, picture, seen.samples, flatStart, bentStart, negative);
    if (!best || contradictsTag(best->samples, tag.text)) return std::nullopt;
    const auto isThis = [&](const std::string& text) { return text == tag.text; };
    const auto again = decodeQrTag(best->samples, isThis, Mending::ByCode);
    code.howRead = again && !again->needsGuesswork() ? HowRead::Fitted : HowRead::Guessed;
    code.corners = best->corners;
    return code;
}

} // namespace

std::optional<SeenCode> readPoorlyFittedTag(const PictureLevels& picture, const GridFit& fit, bool negative,
                                            const TagTest& isTag) {
    const SeenPlace seen = placeOf(picture, fit.toPicture, negative);
    const auto tag = decodeByAgreement(seen.samples, isTag);
    if (!tag) return std::nullopt;
    return judged(*tag, picture, seen, fit.toPicture, nullptr, negative);
}

std::optional<SeenCode> readFittedQr(const PictureLevels& picture, const GridFit& fit, int version,
                                     bool negative, const TagTest& isTag, Mending mending) {
    const GridPattern& pattern = qrPattern(version);
    const int size = pattern.columns;
    const GridSamples samples = samplesAt(picture, fit.toPicture, size, negative);
    const Quad corners = cornersOf(fit.toPicture, size, size);
    if (version == 1)
        if (const auto tag = decodeQrTag(samples, isTag, mending))
            return judged(*tag, picture, {samples, corners}, fit.toPicture, nullptr, negative);
    for (const Threshold& threshold :
         {Threshold{7, 0}, Threshold{7, 0.7f}, Threshold{0, 0.7f}, Threshold{11, 0}}) {
        GridSamples soft = softModules(samples, threshold);
        repaint(soft, pattern);
        auto code = decodeCleanGrid(soft, Symbology::Qr);
        if (!code) continue;
        if (isTag && isTag(code->text) && version == 1)
            return std::nullopt; // the tag decoder had its reasons
        code->corners = corners;
        return code;
    }
    return std::nullopt;
}

bool isContradicted(const PictureLevels& picture, const SeenCode& code, bool negative) {
    const double side = qrPattern(1).columns;
    const auto guess = rectangleTo(code.corners, side, side);
    if (!guess) return false;
    const GridFit fit = fitGrid(picture, qrPattern(1), *guess, negative);
    const SeenPlace seen = placeOf(picture, fit.toPicture, negative);
    const auto best = bestPlaceOf(code.text, picture, seen.samples, fit.toPicture, nullptr, negative);
    return best && contradictsTag(best->samples, code.text);
}

std::optional<SeenCode> readBentQrTag(const PictureLevels& picture, const GridFit& flat, bool negative,
                                      const TagTest& isTag, Mending mending) {
    const BentFit fit = fitBentGrid(picture, qrPattern(1), flat, negative);
    if (!isBetter(fit, flat)) return std::nullopt;
    const SeenPlace seen = placeOf(picture, fit, flat.toPicture, negative);
    const auto tag = decodeQrTag(seen.samples, isTag, mending);
    if (!tag) return std::nullopt;
    return judged(*tag, picture, seen, flat.toPicture, &fit, negative);
}

} // namespace scanner::reader
