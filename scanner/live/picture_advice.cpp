#include "scanner/live/picture_advice.h"

#include "scanner/reader/picture_faults.h"

namespace scanner {

PictureAdvice adviseOn(GreyView picture, const std::vector<SeenCode>& seen) {
    if (picture.isEmpty()) return PictureAdvice::None;
    if (seen.empty() && reader::isTooDark(picture)) return PictureAdvice::TooDark;
    if (reader::showsGlare(picture, seen)) return PictureAdvice::Glare;
    if (seen.empty() && reader::isOutOfFocus(picture)) return PictureAdvice::OutOfFocus;
    return reader::showsSmallTag(picture, seen) ? PictureAdvice::TooFar : PictureAdvice::None;
}

} // namespace scanner
