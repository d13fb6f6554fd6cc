#include "scanner/grey_picture.h"
#include "tests/bench/library_readers.h"

#include <zbar.h>

namespace bench {

scored::Texts readByZbar(scanner::GreyView picture) {
    const scanner::GreyPicture packed = scanner::copyOf(picture); // it takes no stride
    zbar::ImageScanner decoder;
    decoder.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    decoder.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
    decoder.set_config(zbar::ZBAR_CODE128, zbar::ZBAR_CFG_ENABLE, 1);
    zbar::Image image(static_cast<unsigned>(packed.width), static_cast<unsigned>(packed.height), "Y800",
                      packed.pixels.data(), packed.pixels.size());
    decoder.scan(image);
    scored::Texts texts;
    for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol)
        texts.emplace(scored::bare(symbol->get_data()), scanner::HowRead::Plain);
    return texts;
}

} // namespace bench
