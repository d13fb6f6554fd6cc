#include "scanner/reader/live_reader.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>

#include <set>

using scanner::GreyPicture;

namespace {

/// A QR and a Data Matrix tag, moved by some pixels.
GreyPicture frameWith(const std::string& qr, const std::string& matrix, int shift) {
    GreyPicture frame(640, 480, 225);
    if (!qr.empty()) pictures::paste(frame, pictures::enlarged(pictures::qrModules(qr), 4), 60 + shift, 80);
    if (!matrix.empty())
        pictures::paste(frame, pictures::enlarged(pictures::dataMatrixModules(matrix), 5), 400 + shift,
                        200 + shift);
    return frame;
}

std::set<std::string> textsOf(const std::vector<scanner::SeenCode>& codes) {
    std::set<std::string> texts;
    for (const auto& code : codes)
        texts.insert(code.text);
    return texts;
}

// Processor time: the test machine may be busy.
scanner::LiveReader liveReader(std::chrono::milliseconds budget = pictures::frameBudget) {
    return scanner::LiveReader(pictures::isTag, budget, scanner::LiveReader::Clock::Thread);
}

} // namespace

TEST(LiveReader, readsWithinSomeFramesAndFollows) {
    const std::string qr = pictures::tagCode(1), matrix = pictures::tagCode(2);
    auto live = liveReader();
    std::vector<scanner::SeenCode> codes;
    for (int frame = 0; frame < 12; ++frame)
        codes = live.read(frameWith(qr, matrix, 3 * frame).view());
    EXPECT_EQ(textsOf(codes), (std::set<std::string>{qr, matrix}));
    for (const auto& code : codes) {
        const bool isQr = code.text == qr;
        EXPECT_NEAR(code.corners[0].x, (isQr ? 60 : 400) + 33, 3);
        EXPECT_NEAR(code.corners[0].y, isQr ? 80 : 233, 3);
    }
}

TEST(LiveReader, tellsEachCodeOnceAFrame) {
    auto live = liveReader();
    for (int frame = 0; frame < 40; ++frame) {
        const auto codes = live.read(frameWith(pictures::tagCode(3), "", frame % 5).view());
        EXPECT_EQ(codes.size(), textsOf(codes).size()) << frame;
        EXPECT_LE(codes.size(), 1u) << frame;
    }
}

// Told by guesswork in each frame that reads it, by itself from the second on, and no more when something
// else lies there.
TEST(LiveReader, aGuessIsToldOnFromItsSecondSightWhileItIsThere) {
    const std::string text = pictures::tagCode(71);
    const GreyPicture smeared = pictures::smeared(pictures::qrModules(text));
    const auto frame = [&](const GreyPicture& modules, int shift) {
        GreyPicture picture(640, 480, 200);
        pictures::paste(picture, pictures::enlarged(modules, 5), 200 + shift, 100 + shift);
        return picture;
    };
    auto live = liveReader();
    int first = 0;
    while (first < 30 && live.read(frame(smeared, first).view()).empty())
        ++first;
    ASSERT_LT(first, 30);
    for (int next = first + 1; next < first + 8; ++next) {
        const auto codes = live.read(frame(smeared, next).view());
        ASSERT_EQ(codes.size(), 1u) << next - first;
        EXPECT_EQ(codes[0].text, text);
        EXPECT_EQ(codes[0].howRead, scanner::HowRead::Guessed);
        EXPECT_NEAR(codes[0].corners[0].x, 200 + next, 3);
    }
    const GreyPicture other = pictures::shuffled(smeared);
    for (int next = first + 8; next < first + 12; ++next)
        EXPECT_TRUE(live.read(frame(other, next).view()).empty()) << next - first;
}

TEST(LiveReader, forgetsWhatHasLeft) {
    auto live = liveReader();
    for (int frame = 0; frame < 6; ++frame)
        live.read(frameWith(pictures::tagCode(4), "", 0).view());
    EXPECT_EQ(textsOf(live.read(frameWith(pictures::tagCode(4), "", 1).view())).size(), 1u);
    for (int frame = 0; frame < 4; ++frame)
        EXPECT_TRUE(live.read(frameWith("", "", 0).view()).empty()) << frame;
}

TEST(LiveReader, anotherTagInTheSamePlaceIsNotTheOldOne) {
    auto live = liveReader();
    for (int frame = 0; frame < 6; ++frame)
        live.read(frameWith(pictures::tagCode(5), "", 0).view());
    std::set<std::string> later;
    for (int frame = 0; frame < 12; ++frame) {
        later = textsOf(live.read(frameWith(pictures::tagCode(6), "", 0).view()));
        EXPECT_EQ(later.count(pictures::tagCode(5)), 0u) << frame;
    }
    EXPECT_EQ(later, (std::set<std::string>{pictures::tagCode(6)}));
}

// Only the last character and the symbol's check character differ.
TEST(LiveReader, barsThatDifferByOneCharacterAreNotTheOldOnes) {
    const auto frameOf = [](const std::string& text) {
        GreyPicture frame(800, 480, 225);
        const auto bars = pictures::stretched(pictures::enlarged(pictures::code128Modules(text), 2), 70);
        pictures::paste(frame, bars, 60, 200);
        return frame;
    };
    const std::string before = "MAKER LJ150 LOT 7A SERIAL 1", after = "MAKER LJ150 LOT 7A SERIAL 4";
    auto live = liveReader();
    std::set<std::string> texts;
    for (int frame = 0; frame < 12; ++frame)
        texts = textsOf(live.read(frameOf(before).view()));
    EXPECT_EQ(texts, (std::set<std::string>{before}));
    for (int frame = 0; frame < 12; ++frame) {
        texts = textsOf(live.read(frameOf(after).view()));
        EXPECT_EQ(texts.count(before), 0u) << frame;
    }
    EXPECT_EQ(texts, (std::set<std::string>{after}));
}

TEST(LiveReader, bearsEmptyFramesAndFramesOfOtherSizes) {
    auto live = liveReader();
    EXPECT_TRUE(live.read({}).empty());
    live.read(frameWith(pictures::tagCode(7), "", 0).view());
    const GreyPicture small(20, 10, 128);
    EXPECT_TRUE(live.read(small.view()).empty());
    std::vector<scanner::SeenCode> codes;
    for (int frame = 0; frame < 8; ++frame)
        codes = live.read(frameWith(pictures::tagCode(7), "", 0).view());
    EXPECT_EQ(textsOf(codes).size(), 1u);
}
