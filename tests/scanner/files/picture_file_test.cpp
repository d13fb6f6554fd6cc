#include "scanner/files/picture_file.h"

#include "tests/support/scratch_folder.h"
#include "tests/support/tag_picture.h"

#include <QFile>
#include <QImage>
#include <gtest/gtest.h>

#include <fstream>

#include <sys/stat.h>
#include <unistd.h>

namespace scanner {
namespace {

using support::ScratchFolder;

void save(const QImage& image, const std::filesystem::path& path, const char* format = nullptr) {
    ASSERT_TRUE(image.save(QString::fromStdString(path.string()), format)) << path;
}

QImage plain(QSize size, QRgb colour = qRgb(90, 90, 90)) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(colour);
    return image;
}

void write(const std::filesystem::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string bytesOf(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// An APP1 segment with one entry, the orientation, as Exif 2.3 (CIPA DC-008) lays it out: tag 0x0112, type
/// SHORT.
std::string exifSegment(char orientation) {
    std::string tiff("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0", 19);
    tiff += orientation;
    tiff.append(6, '\0');
    const std::string body = std::string("Exif\0\0", 6) + tiff;
    const auto length = static_cast<char>(body.size() + 2);
    return std::string("\xff\xe1\0", 3) + length + body;
}

TEST(PictureFile, readsEveryFormatThePhonesAndScannersGive) {
    const ScratchFolder folder;
    for (const char* format : {"png", "jpg", "webp", "bmp", "ppm"}) {
        SCOPED_TRACE(format);
        const auto path = folder / (std::string("p.") + format);
        save(plain({64, 48}), path);
        const LoadedPicture picture = loadPicture(path);
        ASSERT_FALSE(picture.error) << picture.error->detail;
        ASSERT_EQ(picture.width, 64);
        ASSERT_EQ(picture.height, 48);
        EXPECT_NEAR(picture.grey.row(20)[20], 90, 2);
    }
}

TEST(PictureFile, theContentCountsNotTheName) {
    const ScratchFolder folder;
    save(plain({20, 10}), folder / "really-a-png.jpg", "png");
    const LoadedPicture picture = loadPicture(folder / "really-a-png.jpg");
    EXPECT_FALSE(picture.error);
    EXPECT_EQ(picture.width, 20);
}

TEST(PictureFile, turnsAPictureUprightAsExifSays) {
    const ScratchFolder folder;
    QImage image = plain({80, 40}, qRgb(250, 250, 250));
    for (int y = 0; y < 40; ++y)
        for (int x = 0; x < 20; ++x)
            image.setPixel(x, y, qRgb(0, 0, 0)); // dark at the stored left
    save(image, folder / "a.jpg");
    std::string jpeg = bytesOf(folder / "a.jpg");
    jpeg.insert(2, exifSegment(6)); // 6: the stored left is the top
    write(folder / "b.jpg", jpeg);

    const LoadedPicture stored = loadPicture(folder / "a.jpg");
    EXPECT_EQ(stored.grey.width, 80);
    const LoadedPicture turned = loadPicture(folder / "b.jpg");
    ASSERT_EQ(turned.width, 40);
    ASSERT_EQ(turned.height, 80);
    EXPECT_LT(turned.grey.row(5)[20], 40);
    EXPECT_GT(turned.grey.row(70)[20], 200);
}

TEST(PictureFile, shrinksABigPictureAndTellsTheScale) {
    const ScratchFolder folder;
    for (const char* format : {"jpg", "png"}) {
        const auto path = folder / (std::string("big.") + format);
        save(plain({2000, 1000}), path);
        const LoadedPicture picture = loadPicture(path, 500 * 250);
        ASSERT_FALSE(picture.error);
        EXPECT_EQ(picture.width, 2000);
        EXPECT_EQ(picture.height, 1000);
        EXPECT_EQ(picture.grey.width, 500);
        EXPECT_EQ(picture.grey.height, 250);
        EXPECT_DOUBLE_EQ(picture.scaleX(), 4.0);
        EXPECT_DOUBLE_EQ(picture.scaleY(), 4.0);
    }
}

TEST(PictureFile, aBigTurnedPictureKeepsItsSidesApart) {
    const ScratchFolder folder;
    save(plain({2000, 1000}), folder / "a.jpg");
    std::string jpeg = bytesOf(folder / "a.jpg");
    jpeg.insert(2, exifSegment(8));
    write(folder / "b.jpg", jpeg);
    const LoadedPicture picture = loadPicture(folder / "b.jpg", 500 * 250);
    EXPECT_EQ(picture.width, 1000);
    EXPECT_EQ(picture.height, 2000);
    EXPECT_EQ(picture.grey.width, 250);
    EXPECT_EQ(picture.grey.height, 500);
}

TEST(PictureFile, saysWhatIsWrongWithAFile) {
    const ScratchFolder folder;
    EXPECT_EQ(loadPicture(folder / "none.png").error->fault, FileFault::NotFound);
    EXPECT_EQ(loadPicture(folder.path()).error->fault, FileFault::NotAPicture);
    write(folder / "empty.png", "");
    EXPECT_EQ(loadPicture(folder / "empty.png").error->fault, FileFault::Empty);
    write(folder / "words.png", "code,kit_type,name\n");
    EXPECT_EQ(loadPicture(folder / "words.png").error->fault, FileFault::NotAPicture);
}

TEST(PictureFile, aPictureCutOffInItsHeaderIsDamaged) {
    const ScratchFolder folder;
    save(plain({64, 64}), folder / "whole.png");
    const std::string whole = bytesOf(folder / "whole.png");
    write(folder / "cut.png", whole.substr(0, 40));
    EXPECT_FALSE(loadPicture(folder / "whole.png").error);
    EXPECT_EQ(loadPicture(folder / "cut.png").error->fault, FileFault::Damaged);
}

TEST(PictureFile, garbageAfterAGoodSignatureNeverCrashes) {
    const ScratchFolder folder;
    for (const char* format : {"png", "jpg", "webp", "bmp"}) {
        const auto path = folder / (std::string("p.") + format);
        save(support::qrSymbol("K000000000", 3), path);
        const std::string whole = bytesOf(path);
        for (std::size_t at = 0; at < 64 && at < whole.size(); ++at) {
            std::string spoilt = whole;
            spoilt[at] = static_cast<char>(spoilt[at] ^ 0x5a);
            write(path, spoilt);
            const LoadedPicture picture = loadPicture(path);
            EXPECT_TRUE(picture.error.has_value() != !picture.grey.view().isEmpty());
        }
    }
}

} // namespace
} // namespace scanner
