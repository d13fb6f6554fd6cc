#include "tests/support/tag_picture.h"

#include <QPainter>

#include <algorithm>
#include <memory>
#include <qrencode.h>
#include <stdexcept>

namespace support {

QImage qrSymbol(const std::string& text, int module) {
    const std::unique_ptr<QRcode, void (*)(QRcode*)> code(
        QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_H, QR_MODE_8, 1), QRcode_free);
    if (!code) throw std::runtime_error("libqrencode cannot encode " + text);
    constexpr int quiet = 4;
    const int side = (code->width + 2 * quiet) * module;
    QImage symbol(side, side, QImage::Format_RGB32);
    symbol.fill(Qt::white);
    QPainter painter(&symbol);
    for (int y = 0; y < code->width; ++y)
        for (int x = 0; x < code->width; ++x)
            if (code->data[y * code->width + x] & 1)
                painter.fillRect((x + quiet) * module, (y + quiet) * module, module, module, Qt::black);
    return symbol;
}

QImage tagPicture(const std::vector<std::string>& texts, QSize size, QColor ground, int module) {
    QImage picture(size, QImage::Format_RGB32);
    picture.fill(ground);
    QPainter painter(&picture);
    const int slot = size.width() / static_cast<int>(std::max<std::size_t>(1, texts.size()));
    int left = 0;
    for (const std::string& text : texts) {
        const QImage symbol = qrSymbol(text, module);
        if (symbol.width() > slot || symbol.height() > size.height())
            throw std::runtime_error("the symbols do not fit");
        painter.drawImage(left + (slot - symbol.width()) / 2, (size.height() - symbol.height()) / 2, symbol);
        left += slot;
    }
    return picture;
}

} // namespace support
