#include "tests/app/cli/small_club.h"

#include "tests/support/picture_bombs.h"
#include "tests/support/tag_picture.h"

#include <QImage>
#include <QImageWriter>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;

constexpr long mostKilobytes = 512L * 1000;

class PictureLimits : public testing::Test {
protected:
    std::string write(const std::string& name, const std::string& bytes) const {
        std::ofstream(m_folder / name, std::ios::binary) << bytes;
        return m_folder / name;
    }
    support::ScratchFolder m_folder;
};

TEST_F(PictureLimits, aSmallFileOfManyPixelsTakesNoMemoryAndSaysSo) {
    for (const auto& [name, bytes] : support::pictureBombs(40000, 40000)) {
        const Ran ran = ctl({"read", write("bomb." + name, bytes)});
        EXPECT_EQ(ran.exit, 2) << name;
        expectOneErrorLine(ran);
        const bool isTakenForDamage = name == "bmp" || name == "ppm"; // so wide a side, by Qt
        EXPECT_THAT(ran.err, HasSubstr(isTakenForDamage ? "damaged" : "larger than 64 million pixels"))
            << name;
        EXPECT_LT(ran.peakKilobytes, 150'000)
            << name; // of 6.4 GB; a sanitized program takes 105 MB for itself
    }
}

TEST_F(PictureLimits, aPictureOfAlmostAsManyPixelsIsReadWithinTheMemory) {
    QImage page(7990, 8000, QImage::Format_RGB32); // 63.9 million
    page.fill(Qt::lightGray);
    const QImage tag = support::qrSymbol(knife, 60);
    for (int y = 0; y < tag.height(); ++y)
        for (int x = 0; x < tag.width(); ++x)
            page.setPixel(3000 + x, 3000 + y, tag.pixel(x, y));
    for (const char* name : {"page.png", "page.jpg", "page.progressive.jpg"}) {
        const std::string path = m_folder / name;
        QImageWriter writer(QString::fromStdString(path));
        writer.setProgressiveScanWrite(path.find("progressive") != std::string::npos);
        ASSERT_TRUE(writer.write(page)) << name;
        const Ran ran = ctl({"read", path, "--json"});
        EXPECT_EQ(ran.exit, 0) << name << ran.err;
        EXPECT_THAT(ran.out, HasSubstr(knife)) << name;
        EXPECT_LT(ran.peakKilobytes, mostKilobytes) << name;
    }
}

// libpng, libtiff and FFmpeg write what they meet to standard error by themselves.
TEST_F(PictureLimits, aDamagedPictureGivesOneLineWhateverItsLibrarySays) {
    int damaged = 0;
    for (const auto& [name, bytes] : support::pictureBombs(32, 32))
        for (const std::size_t share : {1, 2, 3, 4, 5, 6, 7}) {
            std::string spoilt = bytes.substr(0, bytes.size() * share / 8);
            if (share % 2 == 0 && spoilt.size() > 40) spoilt[spoilt.size() / 2] ^= 0x55;
            const Ran ran = ctl({"read", write("spoilt." + name, spoilt)});
            EXPECT_TRUE(ran.exit == 1 || ran.exit == 2) << name << ran.exit;
            if (ran.exit != 2) continue;
            expectOneErrorLine(ran);
            ++damaged;
        }
    for (const char* head : {"\x1A\x45\xDF\xA3", "RIFF\x20\x20\x20\x20"
                                                 "AVI LIST"}) { // no whole video follows
        const Ran ran = ctl({"read", write("spoilt.video", head + std::string(3000, 'x'))});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    EXPECT_GT(damaged, 20);
}

TEST_F(PictureLimits, nothingIsLostOfWhatTheProgramSaysItself) {
    const Ran ran =
        ctl({"read", write("a.png", "\x89PNG\r\n\x1A\nnothing"), m_folder / "none.png", "--seconds", "1"});
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 2) << ran.err;
    EXPECT_THAT(ran.err, HasSubstr("a.png"));
    EXPECT_THAT(ran.err, HasSubstr("none.png"));
}

} // namespace
} // namespace small_club
