#include "scanner/files/video_file.h"

#include "scanner/files/read_path.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/tag_picture.h"
#include "tests/support/video_writer.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>

namespace scanner {
namespace {

using support::ScratchFolder;
using support::VideoKind;
using support::writeVideo;
using Texts = std::vector<std::string>;

constexpr QSize size(640, 360);

/// Frame i is evenly grey, darker than its follower by 2.
std::vector<QImage> greySteps(int count) {
    std::vector<QImage> pictures;
    for (int i = 0; i < count; ++i)
        pictures.push_back(support::tagPicture({}, size, QColor::fromHsv(0, 0, 30 + 2 * i)));
    return pictures;
}

std::vector<QImage> tagsInTurn(const Texts& texts, int framesEach) {
    std::vector<QImage> pictures;
    for (const std::string& text : texts)
        pictures.insert(pictures.end(), static_cast<std::size_t>(framesEach),
                        support::tagPicture({text}, size, Qt::lightGray, 5));
    return pictures;
}

std::vector<VideoPicture> allFramesOf(const std::filesystem::path& path, const VideoOptions& options = {}) {
    VideoFile video(path, options);
    std::vector<VideoPicture> frames;
    while (auto frame = video.next())
        frames.push_back(std::move(*frame));
    EXPECT_FALSE(video.error()) << video.error()->detail;
    return frames;
}

class VideoFileKinds : public testing::TestWithParam<VideoKind> {};

TEST_P(VideoFileKinds, givesEveryFrameInItsOrder) {
    const ScratchFolder folder;
    writeVideo(folder / "video", greySteps(50), 25, GetParam());
    const auto frames = allFramesOf(folder / "video");
    ASSERT_EQ(frames.size(), 50U);
    for (std::size_t i = 1; i < frames.size(); ++i) {
        EXPECT_GE(frames[i].grey.row(100)[100], frames[i - 1].grey.row(100)[100]) << i;
        EXPECT_NEAR(static_cast<double>((frames[i].at - frames[i - 1].at).count()), 40, 2) << i;
        EXPECT_GE(frames[i].share, frames[i - 1].share);
    }
    EXPECT_GT(frames[49].grey.row(100)[100], frames[0].grey.row(100)[100] + 60);
    EXPECT_GT(frames[49].share, 0.9);
    EXPECT_LE(frames[49].share, 1.0);
}

TEST_P(VideoFileKinds, readPathFindsEachTagOnce) {
    const ScratchFolder folder;
    writeVideo(folder / "video", tagsInTurn({"K00000002B", "K00000001A", "K00000002B"}, 10), 25, GetParam());
    const auto readings = readPath(folder / "video");
    ASSERT_EQ(readings.size(), 1U);
    ASSERT_FALSE(readings[0].error);
    Texts texts;
    for (const SeenCode& code : readings[0].seen)
        texts.push_back(code.text);
    EXPECT_EQ(texts, (Texts{"K00000002B", "K00000001A"}));
    EXPECT_EQ(readings[0].frames,
              10); // 1.2 s; frames lie 40 ms apart, so every third is 100 ms or more from the last
}

INSTANTIATE_TEST_SUITE_P(All, VideoFileKinds,
                         testing::Values(VideoKind::Vp8InMatroska, VideoKind::MjpegInAvi,
                                         VideoKind::MjpegInMovTurned));

TEST(VideoFile, givesASteadySampleWhenAsked) {
    const ScratchFolder folder;
    writeVideo(folder / "v.avi", greySteps(50), 25, VideoKind::MjpegInAvi);
    VideoOptions options;
    options.framesPerSecond = 5;
    const auto frames = allFramesOf(folder / "v.avi", options);
    ASSERT_EQ(frames.size(), 10U);
    for (std::size_t i = 0; i < frames.size(); ++i)
        EXPECT_NEAR(static_cast<double>(frames[i].at.count()), 200.0 * static_cast<double>(i), 2);
}

TEST(VideoFile, turnsTheFramesUprightAsAPhoneSays) {
    const ScratchFolder folder;
    std::vector<QImage> pictures = greySteps(5);
    for (QImage& picture : pictures)
        for (int y = 0; y < size.height(); ++y)
            for (int x = 0; x < 100; ++x)
                picture.setPixel(x, y, qRgb(255, 255, 255)); // bright at the stored left
    writeVideo(folder / "v.mov", pictures, 25, VideoKind::MjpegInMovTurned);
    const auto frames = allFramesOf(folder / "v.mov");
    ASSERT_EQ(frames.size(), 5U);
    ASSERT_EQ(frames[0].grey.width, size.height());
    ASSERT_EQ(frames[0].grey.height, size.width());
    EXPECT_GT(frames[0].grey.row(20)[180], 200); // the stored left is the top
    EXPECT_LT(frames[0].grey.row(620)[180], 80);
}

TEST(VideoFile, givesAPreviewInColour) {
    const ScratchFolder folder;
    writeVideo(folder / "v.avi", {support::tagPicture({}, size, Qt::red)}, 25, VideoKind::MjpegInAvi);
    VideoOptions options;
    options.previewWidth = 320;
    const auto frames = allFramesOf(folder / "v.avi", options);
    ASSERT_EQ(frames.size(), 1U);
    ASSERT_EQ(frames[0].preview.size(), QSize(320, 180));
    EXPECT_GT(qRed(frames[0].preview.pixel(100, 100)), 220);
    EXPECT_LT(qBlue(frames[0].preview.pixel(100, 100)), 40);
}

FileFault faultOf(const std::filesystem::path& path) {
    VideoFile video(path);
    while (video.next()) {
    }
    EXPECT_TRUE(video.error());
    return video.error() ? video.error()->fault : FileFault::TooBig;
}

TEST(VideoFile, saysWhatIsWrongWithAFile) {
    const ScratchFolder folder;
    EXPECT_EQ(faultOf(folder / "none.mkv"), FileFault::NotFound);
    std::ofstream(folder / "empty.mkv").flush();
    EXPECT_EQ(faultOf(folder / "empty.mkv"), FileFault::Empty);
    std::ofstream(folder / "words.mkv") << "code,kit_type,name\n";
    EXPECT_EQ(faultOf(folder / "words.mkv"), FileFault::NotAPicture);
    std::ofstream(folder / "noise.mkv") << std::string(5000, '\x91');
    EXPECT_EQ(faultOf(folder / "noise.mkv"), FileFault::NotAPicture);
}

TEST(VideoFile, aVideoCutShortGivesWhatItHas) {
    const ScratchFolder folder;
    writeVideo(folder / "v.mkv", tagsInTurn({"K00000001A", "K00000002B"}, 25), 25, VideoKind::Vp8InMatroska);
    std::filesystem::resize_file(folder / "v.mkv", std::filesystem::file_size(folder / "v.mkv") / 2);
    const auto readings = readPath(folder / "v.mkv");
    ASSERT_EQ(readings[0].seen.size(), 1U);
    EXPECT_EQ(readings[0].seen[0].text, "K00000001A");
    EXPECT_GT(readings[0].frames, 0);
}

TEST(VideoFile, readingStopsWhenAskedAndTellsHowFarItIs) {
    const ScratchFolder folder;
    writeVideo(folder / "v.mkv", greySteps(50), 25, VideoKind::Vp8InMatroska);
    std::vector<double> shares;
    const auto readings = readPath(folder / "v.mkv", {}, [&](const ReadProgress& progress) {
        shares.push_back(progress.share);
        return progress.share < 0.5;
    });
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_NEAR(shares.back(), 0.5, 0.15);
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_LT(readings[0].frames, 15);
}

TEST(VideoFile, leavingOffInTheMiddleIsFine) {
    const ScratchFolder folder;
    writeVideo(folder / "v.mkv", greySteps(50), 25, VideoKind::Vp8InMatroska);
    VideoFile video(folder / "v.mkv");
    EXPECT_TRUE(video.next());
}

} // namespace
} // namespace scanner
