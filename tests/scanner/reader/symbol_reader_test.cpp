#include "scanner/reader/symbol_reader.h"

#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/reading_score.h"
#include "tests/scanner/reader/scored_frames.h"

#include <QJsonObject>
#include <gtest/gtest.h>

#include <random>
#include <set>

using scanner::GreyPicture;

namespace {

scanner::ReadOptions allEffort() {
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    return options;
}

std::multiset<std::string> textsIn(const GreyPicture& picture, scanner::ReadOptions options = allEffort()) {
    std::multiset<std::string> texts;
    for (const auto& code : scanner::readSymbols(picture.view(), options))
        texts.insert(code.text);
    return texts;
}

GreyPicture code128(const std::string& text, int module, int height) {
    GreyPicture bars =
        pictures::stretched(pictures::enlarged(pictures::code128Modules(text), module), height);
    return pictures::onGround(bars, bars.width + 40 * module, height + 10 * module, 0, 255);
}

} // namespace

// The pictures on which the general decoder's default options end the process (found by trying), each to be
// read.
TEST(SymbolReader, readsALargeCode128CloseUp) {
    const std::string text = pictures::tagCode(1);
    EXPECT_EQ(textsIn(pictures::onGround(code128(text, 4, 300), 1280, 720)).count(text), 1u);
    EXPECT_EQ(textsIn(pictures::onGround(code128(text, 6, 500), 1280, 720)).count(text), 1u);
}

TEST(SymbolReader, readsTheSameCode128Twice) {
    const std::string text = pictures::tagCode(2);
    GreyPicture picture(1280, 720, 230);
    pictures::paste(picture, code128(text, 2, 80), 100, 100);
    pictures::paste(picture, code128(text, 2, 80), 700, 500);
    EXPECT_EQ(textsIn(picture).count(text), 2u);
}

TEST(SymbolReader, readsCode128AtEveryAngle) {
    const std::string text = pictures::tagCode(3);
    for (int degrees = 0; degrees < 360; degrees += 30)
        EXPECT_EQ(textsIn(pictures::onGround(code128(text, 3, 120), 1280, 720, degrees)).count(text), 1u)
            << degrees;
}

TEST(SymbolReader, readsQrAndDataMatrixAtEveryAngleAndNegative) {
    const std::string qr = pictures::tagCode(4), matrix = pictures::tagCode(5);
    for (const int module : {3, 5, 9, 20})
        for (int degrees = 0; degrees < 360; degrees += 60) {
            const auto drawn = [&](const GreyPicture& modules) {
                GreyPicture large = pictures::enlarged(modules, module);
                return pictures::onGround(large, 1000, 700, degrees);
            };
            EXPECT_EQ(textsIn(drawn(pictures::qrModules(qr))).count(qr), 1u) << module << " " << degrees;
            EXPECT_EQ(textsIn(drawn(pictures::dataMatrixModules(matrix))).count(matrix), 1u)
                << module << " " << degrees;
        }
    for (const GreyPicture& modules : {pictures::qrModules(qr), pictures::dataMatrixModules(matrix)}) {
        GreyPicture negative = pictures::onGround(pictures::enlarged(modules, 4), 640, 480, 10);
        for (auto& pixel : negative.pixels)
            pixel = static_cast<std::uint8_t>(255 - pixel);
        EXPECT_EQ(textsIn(negative).size(), 1u);
    }
}

TEST(SymbolReader, cornersAreWhereTheSymbolIs) {
    const GreyPicture picture =
        pictures::onGround(pictures::enlarged(pictures::qrModules(pictures::tagCode(6)), 6), 640, 480);
    const auto codes = scanner::readSymbols(picture.view(), allEffort());
    ASSERT_EQ(codes.size(), 1u);
    const double left = 320 - 63, top = 240 - 63;
    EXPECT_NEAR(codes[0].corners[0].x, left, 2);
    EXPECT_NEAR(codes[0].corners[0].y, top, 2);
    EXPECT_NEAR(codes[0].corners[1].x, left + 126, 2);
    EXPECT_NEAR(codes[0].corners[2].y, top + 126, 2);
    EXPECT_NEAR(codes[0].corners[3].x, left, 2);
}

TEST(SymbolReader, fastPassIsAPrefixOfTheWhole) {
    GreyPicture picture(1280, 720, 230);
    pictures::paste(
        picture,
        pictures::onGround(pictures::enlarged(pictures::qrModules(pictures::tagCode(7)), 4), 140, 140), 50,
        50);
    pictures::paste(picture,
                    pictures::onGround(
                        pictures::enlarged(pictures::dataMatrixModules(pictures::tagCode(8)), 4), 140, 140),
                    400, 300);
    auto options = allEffort();
    options.rescue = false;
    const auto fast = textsIn(picture, options), whole = textsIn(picture);
    EXPECT_EQ(fast.count(pictures::tagCode(7)), 1u);
    EXPECT_EQ(whole.count(pictures::tagCode(7)), 1u);
    EXPECT_EQ(whole.count(pictures::tagCode(8)), 1u);
}

TEST(SymbolReader, bearsPicturesOfAnySizeAndLayout) {
    EXPECT_TRUE(scanner::readSymbols({}, allEffort()).empty());
    std::mt19937 random(5);
    for (const auto& [w, h] :
         {std::pair{1, 1}, {1, 500}, {500, 1}, {2, 2}, {7, 9}, {15, 16}, {16, 16}, {31, 33}, {64, 3}})
        for (int round = 0; round < 4; ++round) {
            GreyPicture noise(w, h);
            for (auto& pixel : noise.pixels)
                pixel = static_cast<std::uint8_t>(random());
            EXPECT_TRUE(textsIn(noise).empty()) << w << "x" << h;
        }
    // The luma of YUYV: every second byte, rows padded.
    const std::string text = pictures::tagCode(9);
    const GreyPicture plain = pictures::onGround(pictures::enlarged(pictures::qrModules(text), 5), 320, 240);
    std::vector<std::uint8_t> packed(660 * 240, 77);
    for (int y = 0; y < 240; ++y)
        for (int x = 0; x < 320; ++x)
            packed[static_cast<std::size_t>(y) * 660 + 2 * x] = plain.row(y)[x];
    const auto codes = scanner::readSymbols({packed.data(), 320, 240, 660, 2}, allEffort());
    ASSERT_EQ(codes.size(), 1u);
    EXPECT_EQ(codes[0].text, text);
    const GreyPicture large =
        pictures::onGround(pictures::enlarged(pictures::qrModules(text), 40), 6000, 4000, 20);
    EXPECT_EQ(textsIn(large).count(text), 1u);
}

TEST(SymbolReader, tellsNoTagInPatternsWithoutOne) {
    std::mt19937 random(6);
    for (int kind = 0; kind < 40; ++kind) {
        GreyPicture picture(640, 480);
        const int pitch = 2 + static_cast<int>(random() % 14);
        for (int y = 0; y < picture.height; ++y)
            for (int x = 0; x < picture.width; ++x) {
                const bool stripe = (x + (kind % 4 == 1 ? y : 0)) / pitch % 2 == 0,
                           grid = (x / pitch + y / pitch) % 2 == 0;
                const bool light = kind % 4 == 2 ? grid : stripe;
                picture.row(y)[x] = kind % 4 == 3 ? static_cast<std::uint8_t>(random()) : (light ? 220 : 40);
            }
        for (const std::string& text : textsIn(picture))
            EXPECT_FALSE(pictures::isTag(text)) << text;
    }
}

TEST(SymbolReader, samplesAreReadAndNothingWrong) {
    const auto frames = scored::framesIn(READER_SAMPLES);
    ASSERT_TRUE(frames);
    scored::ReadingScore score;
    for (const QJsonValue& value : *frames) {
        const QImage image = scored::pictureOf(READER_SAMPLES, value.toObject());
        ASSERT_FALSE(image.isNull());
        score.add(value.toObject(),
                  scored::textsOf(scanner::readSymbols(scored::viewOf(image), allEffort())));
    }
    EXPECT_GE(score.strata().at("all").read, READER_SAMPLES_LEAST);
    EXPECT_EQ(score.wrong(), 0);
}
