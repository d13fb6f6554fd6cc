#include "scanner/live/picture_advice.h"

#include "tests/scanner/reader/pictures.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

// Each fault is made to a rendered picture, and each has its twin without. The limits have no source but the
// reader itself: it reads the twin and, but for glare beside the tag, not the fault.

using scanner::adviseOn;
using scanner::GreyPicture;
using scanner::PictureAdvice;

namespace {

constexpr int width = 1280, height = 720;

/// A white label with a QR tag, module by module `size` pixels, on grey ground.
GreyPicture labelOf(int size) {
    const GreyPicture symbol = pictures::enlarged(pictures::qrModules(pictures::tagCode(3)), size);
    GreyPicture label(symbol.width + 10 * size, symbol.height + 10 * size, 225);
    pictures::paste(label, symbol, 5 * size, 5 * size);
    for (auto& pixel : label.pixels)
        pixel = std::clamp<std::uint8_t>(pixel, 30, 225);
    return pictures::onGround(label, width, height, 12, 120);
}

/// As if it were smaller by a factor: each pixel the mean of what it covers.
GreyPicture shrunk(const GreyPicture& picture, int factor) {
    GreyPicture result(width, height, 120);
    for (int y = 0; y < height / factor; ++y)
        for (int x = 0; x < width / factor; ++x) {
            int sum = 0;
            for (int i = 0; i < factor * factor; ++i)
                sum += picture.row(y * factor + i / factor)[x * factor + i % factor];
            const int left = (width - width / factor) / 2, top = (height - height / factor) / 2;
            result.row(top + y)[left + x] = static_cast<std::uint8_t>(sum / (factor * factor));
        }
    return result;
}

GreyPicture darkened(GreyPicture picture, double factor) {
    for (auto& pixel : picture.pixels)
        pixel = static_cast<std::uint8_t>(pixel * factor);
    return picture;
}

/// Means over squares, twice: about a Gaussian of sigma `reach`.
GreyPicture blurred(const GreyPicture& picture, int reach) {
    GreyPicture result = picture;
    for (int round = 0; round < 2; ++round) {
        const GreyPicture from = result;
        for (int y = reach; y < height - reach; ++y)
            for (int x = reach; x < width - reach; ++x) {
                int sum = 0;
                for (int v = -reach; v <= reach; ++v)
                    for (int u = -reach; u <= reach; ++u)
                        sum += from.row(y + v)[x + u];
                result.row(y)[x] = static_cast<std::uint8_t>(sum / ((2 * reach + 1) * (2 * reach + 1)));
            }
    }
    return result;
}

/// A lamp mirrored beside the middle: light is added that falls off from a white core.
GreyPicture withLamp(GreyPicture picture, double strength) {
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const double away = std::hypot(x - width / 2.0 - 20, y - height / 2.0 - 10) / 40;
            const double light = picture.row(y)[x] + strength * std::exp(-0.5 * away * away);
            picture.row(y)[x] = static_cast<std::uint8_t>(std::min(255.0, light));
        }
    return picture;
}

} // namespace

TEST(PictureAdvice, aGoodPictureNeedsNone) {
    for (const int size : {3, 4, 6, 9})
        EXPECT_EQ(adviseOn(labelOf(size).view()), PictureAdvice::None) << size;
}

TEST(PictureAdvice, asksForLightWhenAllIsDark) {
    EXPECT_EQ(adviseOn(darkened(labelOf(5), 0.2).view()), PictureAdvice::TooDark);
    EXPECT_EQ(adviseOn(darkened(labelOf(5), 0.5).view()), PictureAdvice::None);
    EXPECT_EQ(adviseOn(GreyPicture(width, height, 3).view()), PictureAdvice::TooDark);
}

TEST(PictureAdvice, tellsGlareOnALabelButNotAWhiteLabel) {
    EXPECT_EQ(adviseOn(withLamp(labelOf(6), 500).view()), PictureAdvice::Glare);
    EXPECT_EQ(adviseOn(withLamp(labelOf(6), 20).view()), PictureAdvice::None);
    GreyPicture overexposed = labelOf(6);
    for (auto& pixel : overexposed.pixels)
        pixel = pixel > 200 ? 255 : pixel;
    EXPECT_EQ(adviseOn(overexposed.view()), PictureAdvice::None);
}

TEST(PictureAdvice, tellsWhenNothingIsSharp) {
    EXPECT_EQ(adviseOn(blurred(labelOf(4), 4).view()), PictureAdvice::OutOfFocus);
    EXPECT_EQ(adviseOn(blurred(labelOf(6), 1).view()), PictureAdvice::None);
}

TEST(PictureAdvice, asksToComeNearerWhenModulesAreTooSmall) {
    EXPECT_EQ(adviseOn(shrunk(labelOf(5), 4).view()), PictureAdvice::TooFar); // 1.25 pixels a module
    EXPECT_EQ(adviseOn(shrunk(labelOf(10), 4).view()), PictureAdvice::None);  // 2.5
}

TEST(PictureAdvice, isSilentAboutWhatWasReadAllTheSame) {
    scanner::SeenCode middle;
    middle.corners = {{{width / 2.0 - 14, height / 2.0 - 14},
                       {width / 2.0 + 14, height / 2.0 - 14},
                       {width / 2.0 + 14, height / 2.0 + 14},
                       {width / 2.0 - 14, height / 2.0 + 14}}};
    EXPECT_EQ(adviseOn(shrunk(labelOf(5), 4).view(), {middle}), PictureAdvice::None);
    EXPECT_EQ(adviseOn(blurred(labelOf(4), 4).view(), {middle}), PictureAdvice::None);
    EXPECT_EQ(adviseOn(darkened(labelOf(5), 0.2).view(), {middle}), PictureAdvice::None);
    scanner::SeenCode elsewhere;
    elsewhere.corners = {{{10, 10}, {40, 10}, {40, 40}, {10, 40}}};
    EXPECT_EQ(adviseOn(shrunk(labelOf(5), 4).view(), {elsewhere}), PictureAdvice::TooFar);
}

TEST(PictureAdvice, bearsEmptyAndSmallPictures) {
    EXPECT_EQ(adviseOn({}), PictureAdvice::None);
    for (const int side : {1, 2, 7, 8, 15, 16, 17, 40})
        EXPECT_EQ(adviseOn(GreyPicture(side, side, 200).view()), PictureAdvice::None) << side;
}
