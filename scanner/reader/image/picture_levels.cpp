#include "scanner/reader/image/picture_levels.h"

#include "scanner/reader/image/local_contrast.h"

namespace scanner::reader {

PictureLevels::PictureLevels(GreyPicture full) {
    levels.push_back(std::move(full));
    while (levels.size() < 5) {
        GreyPicture half = halved(levels.back());
        if (half.pixels.empty()) break;
        levels.push_back(std::move(half));
    }
}

int PictureLevels::levelFor(double pixels, double wanted) const {
    int level = 0;
    while (level + 1 < static_cast<int>(levels.size()) && pixels >= 2 * wanted) {
        pixels /= 2;
        ++level;
    }
    return level;
}

} // namespace scanner::reader
