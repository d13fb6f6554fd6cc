#include "scanner/reader/linear/bar_misfit.h"

#include "scanner/reader/linear/code128.h"
#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/scene_label.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace scanner::reader;
using scanner::GreyPicture;

namespace {

/// How a row is seen: values a module, a box of so many modules that blurs it, how much wider the modules are
/// at its end, and how much darker it is there.
struct Seeing {
    double module = 4, blur = 0.6, growth = 0, shade = 0;
};

std::vector<float> profileOfRow(const GreyPicture& row, const Seeing& seeing) {
    const auto lightAt = [&](double place) {
        const int i = static_cast<int>(std::floor(place));
        return i >= 0 && i < row.width && row.pixels[static_cast<std::size_t>(i)] == 0 ? 50.0 : 200.0;
    };
    std::vector<float> profile;
    for (double place = -12; place < row.width + 12;) {
        double sum = 0;
        for (int k = 0; k < 16; ++k)
            sum += lightAt(place + ((k + 0.5) / 16 - 0.5) * seeing.blur);
        profile.push_back(static_cast<float>(sum / 16 * (1 - seeing.shade * place / row.width)));
        place += 1 / (seeing.module * (1 + seeing.growth * place / row.width));
    }
    return profile;
}

/// What the decoder reads in the profile as that text.
BarReading readingOf(const std::vector<float>& profile, const std::string& text) {
    for (BarReading& reading : BarDecoder(profile).read(false)) {
        const auto read = code128TextOf(std::span(reading.characters).first(reading.characters.size() - 1));
        if (read && read->text == text) return std::move(reading);
    }
    return {};
}

double mostAgainst(const std::vector<float>& profile, const BarReading& reading, int quiet = 3) {
    const auto misfit = misfitOf(profile, reading, quiet);
    return misfit ? misfit->most : -1;
}

void turn(GreyPicture& row, int module) {
    auto& pixel = row.pixels[static_cast<std::size_t>(module)];
    pixel = static_cast<std::uint8_t>(255 - pixel);
}

/// The second row from that module on laid over the first.
GreyPicture joinedRows(scenes::Kind kind, unsigned first, unsigned second, int cut) {
    GreyPicture row = scenes::makeLabel(kind, first).modules;
    const GreyPicture other = scenes::makeLabel(kind, second).modules;
    std::copy(other.pixels.begin() + cut, other.pixels.end(), row.pixels.begin() + cut);
    return row;
}

std::vector<std::string> textsRead(const GreyPicture& row, const scanner::TagTest& isTag) {
    const GreyPicture bars = pictures::stretched(pictures::enlarged(row, 4), 80);
    scanner::ReadOptions options;
    options.budget = {};
    options.isTag = isTag;
    std::vector<std::string> texts;
    for (const auto& code :
         scanner::readSymbols(pictures::onGround(bars, bars.width + 120, 240).view(), options))
        texts.push_back(code.text);
    return texts;
}

using Texts = std::vector<std::string>;

} // namespace

TEST(BarMisfit, nothingSpeaksAgainstASoundRow) {
    for (unsigned number = 0; number < 20; ++number) {
        const std::string text = pictures::tagCode(number);
        const GreyPicture row = pictures::code128Modules(text);
        for (const Seeing& seeing :
             {Seeing{4, 0.6}, Seeing{6, 0.2}, Seeing{4, 1.6}, Seeing{5, 0.5, 0.25}, Seeing{4, 0.6, 0, 0.5}}) {
            const auto profile = profileOfRow(row, seeing);
            const BarReading reading = readingOf(profile, text);
            ASSERT_FALSE(reading.places.empty()) << text;
            EXPECT_GE(mostAgainst(profile, reading), 0) << text;
            EXPECT_LT(mostAgainst(profile, reading), 0.3) << text;
        }
    }
}

// Each module in turn, and each edge moved by one module.
TEST(BarMisfit, aModuleOfTheOtherColourSpeaksAgainstTheText) {
    const std::string text = pictures::tagCode(3);
    const GreyPicture sound = pictures::code128Modules(text);
    const BarReading reading = readingOf(profileOfRow(sound, {}), text);
    ASSERT_FALSE(reading.places.empty());
    for (int module = 0; module < sound.width; ++module) {
        GreyPicture wrong = sound;
        turn(wrong, module);
        EXPECT_GT(mostAgainst(profileOfRow(wrong, {}), reading), 0.6) << module;
        const auto other = static_cast<std::size_t>(module) + 1;
        if (module + 1 == sound.width || sound.pixels[other - 1] == sound.pixels[other]) continue;
        turn(wrong, module + 1);
        EXPECT_GT(mostAgainst(profileOfRow(wrong, {}), reading), 0.6) << module << " and the next";
    }
}

// A row of bars that goes on before what looks like its start.
TEST(BarMisfit, theQuietZoneSpeaksWhereItIsAskedFor) {
    const std::string text = pictures::tagCode(4);
    const GreyPicture sound = pictures::code128Modules(text);
    GreyPicture longer(sound.width + 2, 1, 255);
    std::copy(sound.pixels.begin(), sound.pixels.end(), longer.pixels.begin() + 2);
    const auto free = profileOfRow(longer, {});
    longer.pixels[0] = 0;
    const auto beset = profileOfRow(longer, {});
    const BarReading reading = readingOf(free, text);
    ASSERT_FALSE(reading.places.empty());
    EXPECT_LT(mostAgainst(free, reading, 3), 0.3);
    EXPECT_GT(mostAgainst(beset, reading, 3), 0.8);
    EXPECT_LT(mostAgainst(beset, reading, 0), 0.3);
}

// Where tags 3 and 5003 are joined at module 108, within a character, the symbol's check character agrees
// with a text that is on neither; of the GS1-128 of 53 and 5053, joined at 195, a tag's does, too.
TEST(Code128, aTextOfTwoJoinedLabelsIsNotToldEachAloneIs) {
    const auto plain = scenes::Kind::Code128, gs1 = scenes::Kind::Gs1Bars;
    const GreyPicture joined = joinedRows(plain, 3, 5003, 108), joinedTag = joinedRows(gs1, 53, 5053, 195);
    ASSERT_FALSE(readingOf(profileOfRow(joined, {}), "KKB7SPSFCS").places.empty());
    ASSERT_FALSE(readingOf(profileOfRow(joinedTag, {}), "010401234567890121K522KJP302").places.empty());
    ASSERT_TRUE(pictures::isTag("K522KJP302"));
    for (const scanner::TagTest& isTag : {scanner::TagTest{}, scanner::TagTest{pictures::isTag}}) {
        EXPECT_EQ(textsRead(joined, isTag), Texts{});
        EXPECT_EQ(textsRead(joinedTag, isTag), Texts{});
        for (const scenes::Label& label : {scenes::makeLabel(plain, 3), scenes::makeLabel(plain, 5003),
                                           scenes::makeLabel(gs1, 53), scenes::makeLabel(gs1, 5053)})
            EXPECT_EQ(textsRead(label.modules, isTag), Texts{label.text});
    }
}
