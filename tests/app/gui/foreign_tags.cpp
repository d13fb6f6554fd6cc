#include "tests/app/gui/foreign_tags.h"

#include <QDir>
#include <QImage>

#include "tests/app/gui/printed_text.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

namespace support {

std::set<std::string> tagsReadByOthers(const QString& pdf, const std::filesystem::path& scratch) {
    const QDir folder(QString::fromStdString(scratch.string()));
    outputOf("pdftoppm", {"-r", "200", "-gray", "-png", pdf, folder.filePath("page")});
    std::set<std::string> codes;
    for (const QString& page : folder.entryList({"page*.png"})) {
        const QImage image = QImage(folder.filePath(page)).convertToFormat(QImage::Format_Grayscale8);
        ZXing::DecodeHints hints;
        hints.setFormats(ZXing::BarcodeFormat::QRCode);
        const ZXing::ImageView view(image.constBits(), image.width(), image.height(), ZXing::ImageFormat::Lum,
                                    static_cast<int>(image.bytesPerLine()));
        for (const ZXing::Result& result : ZXing::ReadBarcodes(view, hints))
            if (result.isValid()) codes.insert(result.text());
    }
    return codes;
}

} // namespace support
