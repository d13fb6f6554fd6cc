#include "scanner/files/small_jpeg.h"

#include "tests/support/scratch_folder.h"

#include <QBuffer>
#include <QColorSpace>
#include <QImage>
#include <QImageReader>
#include <QPainter>

#include <fstream>
#include <gtest/gtest.h>
#include <random>

namespace {

constexpr int most = 300'000;

QImage read(const QByteArray& jpeg) {
    return QImage::fromData(jpeg, "jpeg");
}

/// Of red above blue: which way is up can be seen.
QImage redAboveBlue(int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::blue);
    QPainter(&image).fillRect(0, 0, width, height / 2, Qt::red);
    return image;
}

/// An EXIF segment with an orientation and a GPS position (EXIF 2.3, tags 0x0112 and 0x8825), big-endian.
QByteArray exifSegment(int orientation) {
    QByteArray exif("Exif\0\0MM\0\x2a\0\0\0\x08\0\x02", 16);
    exif +=
        QByteArray("\x01\x12\0\x03\0\0\0\x01\0", 9) + static_cast<char>(orientation) + QByteArray(2, '\0');
    exif += QByteArray("\x88\x25\0\x04\0\0\0\x01\0\0\0\x26", 12) + QByteArray(4, '\0');
    exif += QByteArray("\0\x01\0\x01\0\x02\0\0\0\x02N\0\0\0", 14) + QByteArray(4, '\0');
    const int length = static_cast<int>(exif.size()) + 2;
    return QByteArray("\xff\xe1") + static_cast<char>(length / 256) + static_cast<char>(length % 256) + exif;
}

QByteArray jpegOfImage(const QImage& image) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "jpeg", 95);
    return buffer.data();
}

/// The markers of a JPEG's head (ITU-T T.81, annex B), up to the first scan.
std::vector<int> markersOf(const QByteArray& jpeg) {
    std::vector<int> markers;
    for (int at = 2; at + 4 <= jpeg.size();) {
        const int marker = static_cast<unsigned char>(jpeg[at + 1]);
        markers.push_back(marker);
        if (marker == 0xDA) break;
        at += 2 + static_cast<unsigned char>(jpeg[at + 2]) * 256 + static_cast<unsigned char>(jpeg[at + 3]);
    }
    return markers;
}

bool holdsNothingBesideThePicture(const QByteArray& jpeg) {
    for (const int marker : markersOf(jpeg))
        if ((marker > 0xE0 && marker <= 0xEF) || marker == 0xFE) return false; // APP1 to APP15, a comment
    return true;
}

TEST(SmallJpeg, isScaledByItsLongerSideAndASmallOneStays) {
    EXPECT_EQ(read(scanner::smallJpegOf(redAboveBlue(4000, 3000), 1280, most)).size(), QSize(1280, 960));
    EXPECT_EQ(read(scanner::smallJpegOf(redAboveBlue(300, 4000), 1280, most)).size(), QSize(96, 1280));
    EXPECT_EQ(read(scanner::smallJpegOf(redAboveBlue(64, 48), 1280, most)).size(), QSize(64, 48));
}

TEST(SmallJpeg, ofNoiseFitsByItsQuality) {
    QImage noise(1280, 1280, QImage::Format_RGB32);
    std::mt19937 random(7);
    for (int y = 0; y < noise.height(); ++y)
        for (int x = 0; x < noise.width(); ++x)
            noise.setPixel(x, y, static_cast<QRgb>(random()));
    ASSERT_GT(jpegOfImage(noise).size(), 2 * most);
    const QByteArray jpeg = scanner::smallJpegOf(noise, 1280, most);
    EXPECT_LE(jpeg.size(), most);
    EXPECT_GT(jpeg.size(), most / 10);
    EXPECT_FALSE(read(jpeg).isNull());
}

TEST(SmallJpeg, isUprightAndTellsNoPosition) {
    const support::ScratchFolder folder;
    QByteArray phone = jpegOfImage(redAboveBlue(400, 300));
    ASSERT_TRUE(holdsNothingBesideThePicture(phone));
    phone.insert(2, exifSegment(6)); // "the 0th row is the right-hand side": to be turned right by a quarter
    ASSERT_FALSE(holdsNothingBesideThePicture(phone));
    const std::filesystem::path file = folder / "phone.jpg";
    std::ofstream(file, std::ios::binary).write(phone.constData(), phone.size());
    const scanner::SmallJpeg kept = scanner::smallJpegOf(file, 1280, most);
    ASSERT_FALSE(kept.error);
    EXPECT_TRUE(holdsNothingBesideThePicture(kept.bytes));
    EXPECT_FALSE(kept.bytes.contains("Exif"));
    const QImage image = read(kept.bytes);
    EXPECT_EQ(image.size(), QSize(300, 400));
    EXPECT_GT(qRed(image.pixel(280, 200)), 200) << "what was above is at the right";
    EXPECT_GT(qBlue(image.pixel(20, 200)), 200);
}

TEST(SmallJpeg, leavesTextsAndProfilesBehindAndClearPixelsAreWhite) {
    QImage image(40, 30, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    image.setText("Comment", "taken at home");
    image.setColorSpace(QColorSpace::AdobeRgb);
    ASSERT_FALSE(holdsNothingBesideThePicture(jpegOfImage(image)));
    const QByteArray jpeg = scanner::smallJpegOf(image, 1280, most);
    EXPECT_TRUE(holdsNothingBesideThePicture(jpeg));
    EXPECT_GT(qRed(read(jpeg).pixel(20, 15)), 250);
}

TEST(SmallJpeg, ofWhatIsNoPictureThereIsNone) {
    const support::ScratchFolder folder;
    std::ofstream(folder / "note.txt") << "no picture";
    const scanner::SmallJpeg none = scanner::smallJpegOf(folder / "note.txt", 1280, most);
    ASSERT_TRUE(none.error);
    EXPECT_EQ(none.error->fault, scanner::FileFault::NotAPicture);
    EXPECT_TRUE(none.bytes.isEmpty());
}

} // namespace
