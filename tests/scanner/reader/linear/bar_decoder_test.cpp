#include "scanner/reader/linear/bar_decoder.h"

#include "scanner/reader/linear/code128.h"
#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/scene_label.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

using namespace scanner::reader;

namespace {

/// The symbol with a quiet zone, `module` values a module, each the mean of what it covers and of `blur`
/// modules around.
std::vector<float> profileOf(const std::string& text, double module, double blur, double growth = 0) {
    const auto row = pictures::code128Modules(text);
    const auto lightAt = [&](double place) {
        const int i = static_cast<int>(std::floor(place));
        return i >= 0 && i < row.width ? (row.pixels[i] ? 200.0 : 50.0) : 200.0;
    };
    std::vector<float> profile;
    double place = -12;
    while (place < row.width + 12) {
        double sum = 0;
        for (int k = 0; k < 16; ++k)
            sum += lightAt(place + (k + 0.5) / 16 * std::max(blur, 1 / module));
        profile.push_back(static_cast<float>(sum / 16));
        place += 1 / (module * (1 + growth * place / row.width));
    }
    return profile;
}

std::set<std::string> textsOnBars(const std::vector<float>& profile) {
    std::set<std::string> texts;
    for (const BarReading& reading : BarDecoder(profile).read(false))
        if (const auto text =
                code128TextOf(std::span(reading.characters).first(reading.characters.size() - 1)))
            texts.insert(text->text);
    return texts;
}

scanner::GreyPicture onPaper(const scanner::GreyPicture& row) {
    return pictures::onGround(pictures::stretched(row, 80), row.width + 120, 240);
}

/// GS1-128 of a trade item and a tag as serial number; in the twentieth character one module has three fifths
/// of the other colour.
scanner::GreyPicture gs1Bars(bool spoilt) {
    scanner::GreyPicture row = pictures::enlarged(scenes::makeLabel(scenes::Kind::Gs1Bars, 5).modules, 4);
    constexpr int first = 19 * 11 * 4;
    for (int x = first + 12; spoilt && x < first + 16; ++x)
        row.row(0)[x] = row.row(0)[x] == 0 ? 153 : 102;
    row.height = 1;
    row.pixels.resize(static_cast<std::size_t>(row.width));
    return onPaper(row);
}

std::size_t countRead(const scanner::GreyPicture& picture, const scanner::TagTest& isTag) {
    scanner::ReadOptions options;
    options.budget = {};
    options.isTag = isTag;
    return scanner::readSymbols(picture.view(), options).size();
}

} // namespace

// A trade item's check digit says nothing of the serial number beside it: where one place is not like its
// bars, it may be the cut between two labels.
TEST(Code128, aNumberAloneDoesNotProveASpoiltSymbol) {
    EXPECT_EQ(countRead(gs1Bars(false), {}), 1u);
    EXPECT_EQ(countRead(gs1Bars(true), {}), 0u);
    EXPECT_EQ(countRead(gs1Bars(true), pictures::isTag), 1u); // the serial number is a tag
}

// Of stripes by chance one in a hundred has a check character that agrees.
TEST(Code128, twoDigitsAreNotToldSixAre) {
    const auto bars = [](const std::string& text) {
        return onPaper(pictures::enlarged(pictures::code128Modules(text), 4));
    };
    EXPECT_EQ(countRead(bars("41"), {}), 0u);
    EXPECT_EQ(countRead(bars("414243"), {}), 1u);
}

// The characters' shapes against ZXing's writer: together these texts use the sets B and C whole.
TEST(BarDecoder, readsEveryCharacterThatAnotherEncoderDraws) {
    for (int first = 32; first < 127; first += 5) {
        std::string text;
        for (int c = first; c < std::min(127, first + 5); ++c)
            text += static_cast<char>(c);
        EXPECT_EQ(textsOnBars(profileOf(text, 6, 0.3)).count(text), 1u) << text;
    }
    for (int first = 0; first < 100; first += 4) {
        std::string text;
        for (int pair = first; pair < first + 4; ++pair)
            text += std::to_string(pair / 10) + std::to_string(pair % 10);
        EXPECT_EQ(textsOnBars(profileOf(text, 6, 0.3)).count(text), 1u) << text;
    }
}

TEST(BarDecoder, readsBlurredTagsAndRowsThatGrow) {
    int sharp = 0, blurred = 0, growing = 0;
    for (unsigned number = 0; number < 20; ++number) {
        const std::string text = pictures::tagCode(number);
        sharp += static_cast<int>(textsOnBars(profileOf(text, 4, 0)).count(text));
        blurred += static_cast<int>(textsOnBars(profileOf(text, 4, 1.6)).count(text));
        growing += static_cast<int>(textsOnBars(profileOf(text, 5, 0.5, 0.25)).count(text));
    }
    EXPECT_EQ(sharp, 20);
    EXPECT_GE(blurred, 18);
    EXPECT_EQ(growing, 20);
}

TEST(BarDecoder, findsNothingInStripesOrFlatLight) {
    std::vector<float> stripes(1200), flat(1200, 128);
    for (std::size_t i = 0; i < stripes.size(); ++i)
        stripes[i] = i / 6 % 2 ? 200.0f : 40.0f;
    EXPECT_TRUE(textsOnBars(stripes).empty());
    EXPECT_TRUE(textsOnBars(flat).empty());
    EXPECT_TRUE(textsOnBars({}).empty());
}

// ISO/IEC 15417: every character is 11 modules wide, its bars together an even number; all differ.
TEST(Code128, tableHasTheStandardsProperties) {
    std::set<std::string> seen;
    for (const char* widths : code128Widths) {
        const std::string w = widths;
        ASSERT_EQ(w.size(), 6u);
        int sum = 0, bars = 0;
        for (std::size_t i = 0; i < 6; ++i) {
            sum += w[i] - '0';
            bars += i % 2 ? 0 : w[i] - '0';
        }
        EXPECT_EQ(sum, 11) << w;
        EXPECT_EQ(bars % 2, 0) << w;
        EXPECT_TRUE(seen.insert(w).second) << w;
    }
}

// The weighted sum of ISO/IEC 15417 with "PJJ123C" in set A (a widely printed example, from memory).
TEST(Code128, checkCharacterIsTheWeightedSum) {
    std::vector<int> characters{103, 48, 42, 42, 17, 18, 19, 35, 54};
    EXPECT_TRUE(code128CheckAgrees(characters));
    characters[3] = 41;
    EXPECT_FALSE(code128CheckAgrees(characters));
}

TEST(Code128, fnc1MakesItGs1) {
    const std::vector<int> gs1{105, 102, 1, 4, 1, 23}, plain{105, 1, 4, 1, 23}, broken{105, 96};
    ASSERT_TRUE(code128TextOf(gs1));
    EXPECT_TRUE(code128TextOf(gs1)->gs1);
    EXPECT_EQ(code128TextOf(gs1)->text, "01040123");
    EXPECT_FALSE(code128TextOf(plain)->gs1);
    EXPECT_TRUE(code128TextOf(broken));                     // the pair 96
    EXPECT_FALSE(code128TextOf(std::vector<int>{104, 96})); // FNC3
}
