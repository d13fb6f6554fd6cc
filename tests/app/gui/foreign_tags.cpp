#include "tests/app/gui/foreign_tags.h"

#include <QDir>
#include <QImage>

#include "tests/app/gui/printed_text.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

namespace support {

namespace {

void readInto(std::set<std::string>& codes, const QImage& image) {
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    const ZXing::ImageView view(image.constBits(), image.width(), image.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(image.bytesPerLine()));
    for (const ZXing::Result& result : ZXing::ReadBarcodes(view, hints))
        if (result.isValid()) codes.insert(result.text());
}

} // namespace

std::set<std::string> tagsReadByOthers(const QString& pdf, const std::filesystem::path& scratch) {
    const QDir folder(QString::fromStdString(scratch.string()));
    outputOf("pdftoppm", {"-r", "200", "-gray", "-png", pdf, folder.filePath("page")});
    std::set<std::string> codes;
    for (const QString& page : folder.entryList({"page*.png"})) {
        const QImage image = QImage(folder.filePath(page)).convertToFormat(QImage::Format_Grayscale8);
        // A general reader leaves some out where many stand together: it is shown a piece at a time, each tag
        // whole in one of them.
        constexpr int side = 800, step = 400; // pixels; a tag with its words has less than 400
        for (int top = 0; top < image.height(); top += step)
            for (int left = 0; left < image.width(); left += step)
                readInto(codes, image.copy(left, top, side, side));
    }
    return codes;
}

} // namespace support
