#include "scanner/reader/qr/qr_tag_decoder.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <random>

using namespace scanner::reader;

namespace {

GridSamples samplesOf(const scanner::GreyPicture& modules) {
    GridSamples samples{modules.width, modules.height, {}};
    for (const auto value : modules.pixels)
        samples.values.push_back(value ? 200.0f : 40.0f);
    return samples;
}

/// Where codewords lie: below and beside the upper finders.
int anyPlace(std::mt19937& random) {
    for (;;) {
        const int column = static_cast<int>(random() % 21), row = static_cast<int>(random() % 21);
        const bool finders = row < 9 && (column < 9 || column > 12);
        if (!finders && !(row > 12 && column < 9)) return row * 21 + column;
    }
}

void smear(GridSamples& samples, int place) {
    samples.values[place] = samples.values[place] > 120 ? 90.0f : 150.0f;
}

void flip(GridSamples& samples, int place) {
    samples.values[place] = 240 - samples.values[place];
}

/// As the reader tells it: not what was mended much and is contradicted.
std::optional<TagReading> toldOf(const GridSamples& samples, const scanner::TagTest& isTag) {
    auto reading = decodeQrTag(samples, isTag);
    if (reading && reading->isMuchMended && contradictsTag(samples, reading->text)) return std::nullopt;
    return reading;
}

} // namespace

TEST(QrTagDecoder, readsEveryCleanTag) {
    for (unsigned number = 0; number < 300; ++number) {
        const std::string text = pictures::tagCode(number);
        const auto reading = toldOf(samplesOf(pictures::qrModules(text)), pictures::isTag);
        ASSERT_TRUE(reading) << text;
        EXPECT_EQ(reading->text, text);
        EXPECT_EQ(reading->errors, 0);
        EXPECT_FALSE(reading->needsGuesswork());
    }
}

TEST(QrTagDecoder, bearsAnyOneModuleWrongAndAnyEightDark) {
    const std::string text = pictures::tagCode(7);
    const GridSamples clean = samplesOf(pictures::qrModules(text));
    for (int place = 0; place < 21 * 21; ++place) {
        GridSamples broken = clean;
        flip(broken, place);
        const auto reading = toldOf(broken, pictures::isTag);
        ASSERT_TRUE(reading && reading->text == text) << place;
    }
    // Eight modules are at most eight codewords, which the (26, 9) code mends; the format bits bear some of
    // them. Dark ones, as of dirt: dark and light ones without a doubt would be another label's.
    const float dark = *std::min_element(clean.values.begin(), clean.values.end());
    std::mt19937 random(1);
    for (int round = 0; round < 500; ++round) {
        GridSamples broken = clean;
        for (int i = 0; i < 8; ++i)
            broken.values[random() % (21 * 21)] = dark;
        const auto reading = toldOf(broken, pictures::isTag);
        ASSERT_TRUE(reading && reading->text == text);
    }
}

TEST(QrTagDecoder, readsUnderADarkBlotButNotASplice) {
    const std::string text = pictures::tagCode(11), other = pictures::tagCode(12);
    const GridSamples clean = samplesOf(pictures::qrModules(text)),
                      strange = samplesOf(pictures::qrModules(other));
    GridSamples blotted = clean, spliced = clean;
    for (int row = 9; row < 21; ++row)
        for (int column = 15; column < 21; ++column) {
            blotted.values[row * 21 + column] = 40;
            spliced.values[row * 21 + column] = strange.at(column, row);
        }
    const auto reading = toldOf(blotted, pictures::isTag);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->text, text);
    EXPECT_FALSE(toldOf(spliced, pictures::isTag));
}

// As a smeared label shows them: hit modules are on the wrong side, less surely than the others are right.
// They lie in far more codewords than Reed-Solomon mends or gives up.
TEST(QrTagDecoder, tellsByAgreementWhatIsSmearedBeyondTheCode) {
    int byAgreement = 0;
    for (unsigned number = 0; number < 40; ++number) {
        const std::string text = pictures::tagCode(number);
        std::mt19937 random(number);
        GridSamples smeared = samplesOf(pictures::qrModules(text)), turned = smeared;
        for (int hit = 0; hit < 34; ++hit) {
            const int place = anyPlace(random);
            smear(smeared, place);
            flip(turned, place);
        }
        const auto reading = toldOf(smeared, pictures::isTag);
        ASSERT_TRUE(reading) << text;
        EXPECT_EQ(reading->text, text);
        byAgreement += reading->byAgreement;
        EXPECT_TRUE(!reading->byAgreement || reading->needsGuesswork());
        const auto sure = toldOf(turned, pictures::isTag); // as surely wrong as the others are right
        EXPECT_FALSE(sure && sure->byAgreement) << text;
    }
    EXPECT_EQ(byAgreement, 40);
}

// Ten characters of which the last is no check character: the text that agrees best is no tag, and no other
// is told.
TEST(QrTagDecoder, tellsNoOtherTagThanTheTextThatAgreesBest) {
    std::mt19937 random(3);
    std::string text = pictures::tagCode(5);
    text.back() = text.back() == '7' ? '8' : '7';
    GridSamples smeared = samplesOf(pictures::qrModules(text));
    for (int hit = 0; hit < 25; ++hit)
        smear(smeared, anyPlace(random));
    EXPECT_FALSE(decodeByAgreement(smeared, pictures::isTag));
    const auto any = decodeByAgreement(smeared, [](const std::string&) { return true; });
    ASSERT_TRUE(any);
    EXPECT_EQ(any->text, text);
}

// The general decoder mends up to eight of the 26 codewords, so it may tell one of two joined labels.
TEST(QrTagDecoder, joinedLabelsContradictBothTexts) {
    for (unsigned number = 0; number < 40; number += 2) {
        const std::string text = pictures::tagCode(number), other = pictures::tagCode(number + 1000);
        ASSERT_NE(text, other);
        const GridSamples clean = samplesOf(pictures::qrModules(text)),
                          strange = samplesOf(pictures::qrModules(other));
        GridSamples joined = clean, blotted = clean;
        for (int row = 11; row < 21; ++row)
            for (int column = 9; column < 21; ++column) {
                joined.values[row * 21 + column] = strange.at(column, row);
                if (row > 14 && column > 14) blotted.values[row * 21 + column] = 40;
            }
        EXPECT_FALSE(contradictsTag(clean, text)) << text;
        EXPECT_FALSE(contradictsTag(blotted, text)) << text;
        EXPECT_TRUE(contradictsTag(joined, text)) << text;
    }
    EXPECT_FALSE(contradictsTag(samplesOf(pictures::qrModules("K234567890")), "no tag"));
}

TEST(QrTagDecoder, takesOnlyTags) {
    const GridSamples samples = samplesOf(pictures::qrModules(pictures::tagCode(3)));
    EXPECT_TRUE(toldOf(samples, pictures::isTag));
    EXPECT_FALSE(toldOf(samples, [](const std::string&) { return false; }));
    EXPECT_FALSE(toldOf(samples, {}));
    EXPECT_FALSE(
        toldOf(samplesOf(pictures::qrModules("K234567890")), pictures::isTag)); // wrong check character
}

TEST(QrTagDecoder, findsNothingInNoise) {
    std::mt19937 random(4);
    for (int round = 0; round < 2000; ++round) {
        GridSamples noise{21, 21, std::vector<float>(21 * 21)};
        for (float& value : noise.values)
            value = static_cast<float>(random() % 256);
        ASSERT_FALSE(toldOf(noise, pictures::isTag));
    }
}
