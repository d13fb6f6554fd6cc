#include "scanner/reader/added_frames.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using scanner::GreyPicture;

namespace {

/// A tag under one lamp, `shift` pixels to the right, ink at 10 and paper at 45 grey levels.
GreyPicture darkTag(unsigned number, int shift) {
    GreyPicture picture(640, 480, 30);
    GreyPicture tag = pictures::onGround(
        pictures::enlarged(pictures::qrModules(pictures::tagCode(number)), 5), 150, 150, 0, 255);
    for (auto& pixel : tag.pixels)
        pixel = static_cast<std::uint8_t>(10 + pixel * 35 / 255);
    pictures::paste(picture, tag, 200 + shift, 150);
    return picture;
}

GreyPicture grained(GreyPicture picture, double sigma, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> grain(0, sigma);
    for (auto& pixel : picture.pixels)
        pixel = static_cast<std::uint8_t>(std::clamp(pixel + grain(random) + 0.5, 0.0, 255.0));
    return picture;
}

/// Root of the mean square difference within the tag of the frame that was not shifted.
double differenceOnTag(const GreyPicture& a, const GreyPicture& b) {
    double sum = 0;
    for (int y = 155; y < 295; ++y)
        for (int x = 205; x < 345; ++x)
            sum += std::pow(a.row(y)[x] - b.row(y)[x], 2);
    return std::sqrt(sum / (140 * 140));
}

} // namespace

TEST(AddedFrames, grainCountsBesideTheLight) {
    const GreyPicture dark = darkTag(1, 0);
    EXPECT_TRUE(scanner::reader::isNoisy(grained(dark, 8, 1)));
    EXPECT_FALSE(scanner::reader::isNoisy(dark));
    EXPECT_FALSE(scanner::reader::isNoisy(grained(GreyPicture(640, 480, 150), 8, 1)));
    EXPECT_FALSE(scanner::reader::isNoisy({}));
    EXPECT_FALSE(scanner::reader::isNoisy(GreyPicture(3, 2)));
}

TEST(AddedFrames, grainGoesAndPrintStaysWhileTheCameraMoves) {
    scanner::reader::AddedFrames added;
    const GreyPicture clean = darkTag(1, 0);
    for (int frame = 0; frame < 6; ++frame)
        added.add(grained(darkTag(1, 3 * frame), 8, static_cast<unsigned>(frame)));
    EXPECT_LT(differenceOnTag(added.picture(), clean), 0.6 * differenceOnTag(grained(clean, 8, 9), clean));
    EXPECT_NEAR(added.shiftAt({275, 225}).x, 15, 1);
    EXPECT_NEAR(added.shiftAt({275, 225}).y, 0, 1);
}

TEST(AddedFrames, whatStaysIsItsOwnMeanToTheLastPixel) {
    // Neither side is a whole number of blocks.
    const GreyPicture still = grained(GreyPicture(643, 487, 40), 8, 1);
    GreyPicture lighter = still;
    for (auto& pixel : lighter.pixels)
        pixel = static_cast<std::uint8_t>(pixel + 10);
    scanner::reader::AddedFrames same, both;
    same.add(still);
    same.add(still);
    both.add(still);
    both.add(lighter);
    for (std::size_t i = 0; i < still.pixels.size(); ++i)
        ASSERT_NEAR(same.picture().pixels[i], still.pixels[i], 1) << "pixel " << i;
    // The twin: two frames count alike.
    for (int x = 64; x < 576; ++x)
        ASSERT_NEAR(both.picture().row(240)[x], still.row(240)[x] + 5, 1) << "pixel " << x;
}

TEST(AddedFrames, partsOfAPixelAreLaidOverEachOtherToTheEdge) {
    // Waves that become shorter and shorter: their values between pixels are known, and they fit in one
    // place.
    const auto wave = [](double at) { return 40 * std::sin(at / 30 + at * at / 5000); };
    const auto waves = [&](double right, double down) {
        GreyPicture picture(643, 487);
        for (int y = 0; y < picture.height; ++y)
            for (int x = 0; x < picture.width; ++x)
                picture.pixels[static_cast<std::size_t>(y) * picture.width + x] =
                    static_cast<std::uint8_t>(100.5 + wave(x - right) + wave(y - down));
        return picture;
    };
    for (const auto& [right, down] : {std::pair{2.5, -1.25}, std::pair{-6.75, 4.5}, std::pair{21.25, 16.0}}) {
        scanner::reader::AddedFrames added;
        added.add(waves(0, 0));
        added.add(waves(right, down));
        const GreyPicture expected = waves(0, 0);
        for (int y = 4; y < 460; ++y)
            for (int x = 8; x < 610; ++x)
                ASSERT_NEAR(added.picture().row(y)[x], expected.row(y)[x], 4)
                    << x << ',' << y << ", " << right;
        EXPECT_NEAR(added.shiftAt({300, 200}).x, right, 0.2);
        EXPECT_NEAR(added.shiftAt({300, 200}).y, down, 0.2);
    }
}

TEST(AddedFrames, whatIsExchangedBeginsAnew) {
    scanner::reader::AddedFrames added;
    for (int frame = 0; frame < 6; ++frame)
        added.add(grained(darkTag(1, 0), 3, static_cast<unsigned>(frame)));
    added.add(grained(darkTag(2, 0), 3, 7));
    EXPECT_LT(differenceOnTag(added.picture(), darkTag(2, 0)), 6);
    EXPECT_GT(differenceOnTag(added.picture(), darkTag(1, 0)), 9);
}

TEST(AddedFrames, bearsFramesOfOtherSizes) {
    scanner::reader::AddedFrames added;
    for (const auto& [w, h] : {std::pair{640, 480}, {20, 10}, {1, 1}, {320, 240}, {640, 480}}) {
        added.add(GreyPicture(w, h, 20));
        EXPECT_EQ(added.picture().width, w);
        EXPECT_EQ(added.picture().height, h);
    }
}
