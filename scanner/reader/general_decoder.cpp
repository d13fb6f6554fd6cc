#include "scanner/reader/general_decoder.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

#include <exception>

namespace scanner::reader {
namespace {

using ZXing::BarcodeFormat;

Symbology symbologyOf(BarcodeFormat format) {
    switch (format) {
    case BarcodeFormat::QRCode:
        return Symbology::Qr;
    case BarcodeFormat::DataMatrix:
        return Symbology::DataMatrix;
    case BarcodeFormat::Code128:
        return Symbology::Code128;
    case BarcodeFormat::EAN13:
        return Symbology::Ean13;
    case BarcodeFormat::EAN8:
        return Symbology::Ean8;
    case BarcodeFormat::UPCA:
        return Symbology::UpcA;
    case BarcodeFormat::UPCE:
        return Symbology::UpcE;
    case BarcodeFormat::Code39:
        return Symbology::Code39;
    default:
        return Symbology::Other;
    }
}

SeenCode seenCodeOf(const ZXing::Result& result, HowRead howRead) {
    SeenCode code;
    code.text = result.text();
    code.symbology = symbologyOf(result.format());
    code.gs1 = result.contentType() == ZXing::ContentType::GS1;
    code.howRead = howRead;
    for (std::size_t i = 0; i < 4; ++i)
        code.corners[i] = {result.position()[static_cast<int>(i)].x + 0.5,
                           result.position()[static_cast<int>(i)].y + 0.5};
    return code;
}

/// ZXing reads through plain pointers and has no view without pixels or with a negative stride.
ZXing::ImageView imageOf(GreyView view) {
    return {view.data, view.width, view.height, ZXing::ImageFormat::Lum, view.stride, view.pixelStride};
}

/// In a GS1 QR symbol a per cent sign in a value is written twice (ISO/IEC 18004, FNC1 mode); ZXing 1.4 ends
/// the text at it. Better nothing than half a text.
bool isCutShort(const ZXing::Result& result) {
    return result.format() == BarcodeFormat::QRCode && result.contentType() == ZXing::ContentType::GS1 &&
           result.text().ends_with('%');
}

/// Not Interleaved 2 of 5: it has no check character of its own, and rows of stripes are full of it. GS1 uses
/// it for what is not sold by the piece (General Specifications 5.3): outer cartons, not loose kit.
const ZXing::BarcodeFormats linearFormats =
    BarcodeFormat::Codabar | BarcodeFormat::Code39 | BarcodeFormat::Code93 | BarcodeFormat::Code128 |
    BarcodeFormat::EAN8 | BarcodeFormat::EAN13 | BarcodeFormat::UPCA | BarcodeFormat::UPCE |
    BarcodeFormat::DataBar | BarcodeFormat::DataBarExpanded;

ZXing::Results readAll(GreyView picture, const ZXing::DecodeHints& hints) {
    if (picture.isEmpty() || picture.stride < 0) return {};
    try {
        ZXing::Results results = ZXing::ReadBarcodes(imageOf(picture), hints);
        std::erase_if(results, isCutShort);
        return results;
    } catch (const std::exception&) {
        return {}; // what it cannot read holds no symbol for us
    }
}

} // namespace

std::vector<SeenCode> decodeMatrixSymbols(GreyView picture, Effort effort) {
    const bool thorough = effort == Effort::Thorough;
    ZXing::DecodeHints hints;
    hints.setFormats(BarcodeFormat::QRCode | BarcodeFormat::DataMatrix);
    hints.setTryHarder(thorough).setTryRotate(thorough).setTryDownscale(thorough);
    std::vector<SeenCode> codes;
    for (const ZXing::Result& result : readAll(picture, hints))
        if (result.isValid()) codes.push_back(seenCodeOf(result, HowRead::Plain));
    return codes;
}

std::optional<SeenCode> decodeLinearStrip(GreyView strip) {
    ZXing::DecodeHints hints;
    hints.setFormats(linearFormats);
    hints.setTryHarder(true).setTryRotate(false).setTryDownscale(false);
    hints.setMaxNumberOfSymbols(1).setBinarizer(ZXing::Binarizer::FixedThreshold);
    for (const ZXing::Result& result : readAll(strip, hints))
        if (result.isValid()) return seenCodeOf(result, HowRead::Region);
    return std::nullopt;
}

std::optional<SeenCode> decodeCleanGrid(const GridSamples& modules, Symbology symbology) {
    constexpr int pixels = 3, quiet = 4;
    GreyPicture drawing((modules.columns + 2 * quiet) * pixels, (modules.rows + 2 * quiet) * pixels, 255);
    for (int r = 0; r < modules.rows * pixels; ++r)
        for (int c = 0; c < modules.columns * pixels; ++c)
            if (modules.at(c / pixels, r / pixels) < 0)
                drawing.row(r + quiet * pixels)[c + quiet * pixels] = 0;
    ZXing::DecodeHints hints;
    hints.setFormats(symbology == Symbology::Qr ? BarcodeFormat::QRCode : BarcodeFormat::DataMatrix);
    hints.setTryHarder(false).setTryRotate(false).setTryDownscale(false).setIsPure(true);
    hints.setMaxNumberOfSymbols(1).setBinarizer(ZXing::Binarizer::FixedThreshold);
    for (const ZXing::Result& result : readAll(drawing.view(), hints))
        if (result.isValid()) {
            SeenCode code = seenCodeOf(result, HowRead::Fitted);
            return code;
        }
    return std::nullopt;
}

} // namespace scanner::reader
