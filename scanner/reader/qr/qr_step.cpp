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

} // namespace

std::optional<SeenCode> readPoorlyFittedTag(const PictureLevels& picture, const GridFit& fit, bool negative,
                                            const TagTest& isTag) {
    const int size = qrPattern(1).columns;
    const auto tag = decodeByAgreement(samplesAt(picture, fit.toPicture, size, negative), isTag);
    if (!tag) return std::nullopt;
    SeenCode code = seenCodeOf(*tag);
    code.corners = cornersOf(fit.toPicture, size, size);
    if (isContradicted(picture, code, negative)) return std::nullopt;
    return code;
}

std::optional<SeenCode> readFittedQr(const PictureLevels& picture, const GridFit& fit, int version,
                                     bool negative, const TagTest& isTag, Mending mending) {
    const GridPattern& pattern = qrPattern(version);
    const int size = pattern.columns;
    const GridSamples samples = samplesAt(picture, fit.toPicture, size, negative);
    const auto tag = version == 1 ? decodeQrTag(samples, isTag, mending) : std::nullopt;
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
    // A poor fit blurs what speaks against it: it is looked at once more in the best one.
    if (tag && tag->isMuchMended && isContradicted(picture, *code, negative)) return std::nullopt;
    return code;
}

bool isContradicted(const PictureLevels& picture, const SeenCode& code, bool negative) {
    constexpr double leastCorrelation = 0.6; // of a fit that can be judged by
    const GridPattern& pattern = qrPattern(1);
    const double side = pattern.columns;
    const auto guess =
        projectionThrough({Point{0, 0}, Point{side, 0}, Point{side, side}, Point{0, side}}, code.corners);
    if (!guess) return false;
    const GridFit fit = fitGrid(picture, pattern, *guess, negative);
    if (fit.correlation < leastCorrelation) return false;
    return contradictsTag(samplesAt(picture, fit.toPicture, pattern.columns, negative), code.text);
}

std::optional<SeenCode> readBentQrTag(const PictureLevels& picture, const GridFit& flat, bool negative,
                                      const TagTest& isTag, Mending mending) {
    const GridPattern& pattern = qrPattern(1);
    const double size = pattern.columns;
    const BentFit fit = fitBentGrid(picture, pattern, flat, negative);
    if (fit.correlation < flat.correlation + 0.01) return std::nullopt;
    const auto mapping = [&](double u, double v) { return fit.map(u, v); };
    const GridSamples samples =
        sampleGrid(picture, mapping, modulePixelsAt(flat.toPicture, {size / 2, size / 2}), pattern.columns,
                   pattern.rows, negative);
    const auto tag = decodeQrTag(samples, isTag, mending);
    if (!tag) return std::nullopt;
    SeenCode code = seenCodeOf(*tag);
    code.corners = {fit.map(0, 0), fit.map(size, 0), fit.map(size, size), fit.map(0, size)};
    if (tag->isMuchMended && isContradicted(picture, code, negative)) return std::nullopt;
    return code;
}

} // namespace scanner::reader
