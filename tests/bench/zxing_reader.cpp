#include "scanner/grey_picture.h"
#include "tests/bench/library_readers.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

namespace bench {

scored::Texts readByZxing(scanner::GreyView picture) {
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode | ZXing::BarcodeFormat::DataMatrix |
                     ZXing::BarcodeFormat::Code128);
    const ZXing::ImageView image(picture.data, picture.width, picture.height, ZXing::ImageFormat::Lum,
                                 picture.stride, picture.pixelStride);
    scored::Texts texts;
    for (const ZXing::Result& result : ZXing::ReadBarcodes(image, hints))
        if (result.isValid()) texts.emplace(scored::bare(result.text()), scanner::HowRead::Plain);
    return texts;
}

} // namespace bench
