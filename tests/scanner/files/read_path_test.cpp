#include "scanner/files/read_path.h"

#include "tests/support/scratch_folder.h"
#include "tests/support/tag_picture.h"

#include <QImage>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>

namespace scanner {
namespace {

using support::ScratchFolder;
using Texts = std::vector<std::string>;

void saveTagPicture(const QImage& image, const std::filesystem::path& path) {
    ASSERT_TRUE(image.save(QString::fromStdString(path.string()))) << path;
}

Texts sortedTexts(const std::vector<SeenCode>& codes) {
    Texts found;
    for (const SeenCode& code : codes)
        found.push_back(code.text);
    std::sort(found.begin(), found.end());
    return found;
}

TEST(ReadPath, readsTheCodesOfOnePicture) {
    const ScratchFolder folder;
    saveTagPicture(support::tagPicture({"K00000001A", "K00000002B"}), folder / "two.png");
    const auto readings = readPath(folder / "two.png");
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_FALSE(readings[0].error);
    EXPECT_FALSE(readings[0].frames);
    EXPECT_EQ(readings[0].path, folder / "two.png");
    EXPECT_EQ(readings[0].width, 1280);
    EXPECT_EQ(sortedTexts(readings[0].seen), (Texts{"K00000001A", "K00000002B"}));
}

TEST(ReadPath, readsAFolderInTheOrderOfNames) {
    const ScratchFolder folder;
    saveTagPicture(support::tagPicture({"K00000002B"}), folder / "2.jpg");
    saveTagPicture(support::tagPicture({"K00000001A"}), folder / "1.png");
    saveTagPicture(support::tagPicture({}), folder / "3.png");
    std::ofstream(folder / "notes.txt") << "not a picture";
    const auto readings = readPath(folder.path());
    ASSERT_EQ(readings.size(), 3U);
    EXPECT_EQ(sortedTexts(readings[0].seen), Texts{"K00000001A"});
    EXPECT_EQ(sortedTexts(readings[1].seen), Texts{"K00000002B"});
    EXPECT_TRUE(readings[2].seen.empty());
    EXPECT_FALSE(readings[2].error);
}

TEST(ReadPath, anUnreadableFileIsOneErrorAndTheRestIsRead) {
    const ScratchFolder folder;
    std::ofstream(folder / "1.png") << "words";
    saveTagPicture(support::tagPicture({"K00000001A"}), folder / "2.png");
    const auto readings = readPath(folder.path());
    ASSERT_EQ(readings.size(), 2U);
    ASSERT_TRUE(readings[0].error);
    EXPECT_EQ(readings[0].error->fault, FileFault::NotAPicture);
    EXPECT_FALSE(readings[0].frames);
    EXPECT_EQ(sortedTexts(readings[1].seen), Texts{"K00000001A"});
}

TEST(ReadPath, saysWhatIsWrongWithAPath) {
    const ScratchFolder folder;
    const auto missing = readPath(folder / "none.png");
    ASSERT_EQ(missing.size(), 1U);
    EXPECT_EQ(missing[0].error->fault, FileFault::NotFound);
    const auto empty = readPath(folder.path());
    ASSERT_EQ(empty.size(), 1U);
    EXPECT_EQ(empty[0].error->fault, FileFault::Empty);
    EXPECT_EQ(empty[0].path, folder.path());
}

TEST(ReadPath, cornersAreInThePicturesOwnPixels) {
    const ScratchFolder folder;
    // 5000 x 4000 is shrunk before it is read; the symbol of 33 modules of 30 px stands in the middle.
    saveTagPicture(support::tagPicture({"K00000001A"}, {5000, 4000}, Qt::lightGray, 30), folder / "big.jpg");
    const auto readings = readPath(folder / "big.jpg");
    ASSERT_EQ(readings[0].seen.size(), 1U);
    EXPECT_EQ(readings[0].width, 5000);
    // The symbol without its quiet zone of 4 modules: version 2 has 25, version 1 has 21 (ISO/IEC 18004).
    const int side = support::qrSymbol("K00000001A", 30).width() - 8 * 30;
    EXPECT_NEAR(readings[0].seen[0].corners[0].x, 2500 - side / 2.0, 15);
    EXPECT_NEAR(readings[0].seen[0].corners[0].y, 2000 - side / 2.0, 15);
    EXPECT_NEAR(readings[0].seen[0].corners[2].x, 2500 + side / 2.0, 15);
    EXPECT_NEAR(readings[0].seen[0].corners[2].y, 2000 + side / 2.0, 15);
}

TEST(ReadPath, tellsProgressAndStopsWhenAsked) {
    const ScratchFolder folder;
    for (const char* name : {"1.png", "2.png", "3.png", "4.png"})
        saveTagPicture(support::tagPicture({}, {64, 64}), folder / name);
    std::vector<double> shares;
    readPath(folder.path(), {}, [&](const ReadProgress& progress) {
        shares.push_back(progress.share);
        return true;
    });
    EXPECT_EQ(shares, (std::vector<double>{0, 0.25, 0.5, 0.75}));
    const auto stopped =
        readPath(folder.path(), {}, [](const ReadProgress& progress) { return progress.share < 0.5; });
    EXPECT_EQ(stopped.size(), 2U);
}

TEST(ReadPath, aGuessInAPictureIsOnlyDoubtful) {
    const ScratchFolder folder;
    saveTagPicture(support::tagPicture({}, {64, 64}), folder / "1.png");
    ReadPathOptions options;
    options.reader = [](GreyView) {
        SeenCode guess;
        guess.text = "K00000001A";
        guess.howRead = HowRead::Guessed;
        return std::vector<SeenCode>{guess};
    };
    const auto readings = readPath(folder / "1.png", options);
    EXPECT_TRUE(readings[0].seen.empty());
    EXPECT_EQ(sortedTexts(readings[0].doubtful), Texts{"K00000001A"});
}

} // namespace
} // namespace scanner
