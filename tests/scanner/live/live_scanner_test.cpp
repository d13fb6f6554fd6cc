#include "scanner/live/live_scanner.h"

#include "tests/scanner/live/quick_reader.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/tag_picture.h"
#include "tests/support/video_writer.h"
#include "tests/support/wait_for.h"

#include <QThread>
#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <fstream>

namespace scanner {
namespace {

using support::readQuickly;
using support::ScratchFolder;
using support::waitFor;
using Texts = std::vector<std::string>;

void savePicture(const QImage& image, const std::filesystem::path& path) {
    ASSERT_TRUE(image.save(QString::fromStdString(path.string()))) << path;
}

class LiveScannerOnRecordings : public testing::Test {
protected:
    void listenTo(LiveScanner& live) {
        QObject::connect(&live, &LiveScanner::codeFound,
                         [this](const SeenCode& code) { found.push_back(code.text); });
        QObject::connect(&live, &LiveScanner::stateChanged,
                         [this](SourceState state) { states.push_back(state); });
        QObject::connect(&live, &LiveScanner::progressed, [this](double share) { shares.push_back(share); });
        QObject::connect(&live, &LiveScanner::previewChanged,
                         [this](const QImage& it) { previews.push_back(it); });
        QObject::connect(&live, &LiveScanner::fileFailed,
                         [this](const QString&, const FileError& error) { failures.push_back(error.fault); });
    }

    ScratchFolder folder;
    Texts found;
    std::vector<SourceState> states;
    std::vector<double> shares;
    std::vector<QImage> previews;
    std::vector<FileFault> failures;
};

TEST_F(LiveScannerOnRecordings, readsAFolderOfPicturesToItsEnd) {
    savePicture(support::tagPicture({"K00000001A", "K00000002B"}), folder / "1.png");
    savePicture(support::tagPicture({"K00000002B"}), folder / "2.jpg");
    std::ofstream(folder / "3.png") << "words";
    savePicture(support::tagPicture({"K00000003C"}), folder / "4.png");
    LiveScanner live(readQuickly);
    listenTo(live);
    live.setPreviewWidth(640);
    live.useRecording({folder.path()});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    std::sort(found.begin(), found.end());
    EXPECT_EQ(found, (Texts{"K00000001A", "K00000002B", "K00000003C"}));
    EXPECT_EQ(states, (std::vector{SourceState::Starting, SourceState::Running, SourceState::Ended}));
    EXPECT_EQ(failures, std::vector{FileFault::NotAPicture});
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_DOUBLE_EQ(shares.back(), 1.0);
    ASSERT_EQ(previews.size(), 3U);
    EXPECT_EQ(previews[0].size(), QSize(640, 360));
}

TEST_F(LiveScannerOnRecordings, readsAPictureByItselfAndAVideoFrameByFrame) {
    savePicture(support::tagPicture({"K000000001"}, {640, 360}), folder / "p.png");
    const std::vector<QImage> video(5, support::tagPicture({"K000000002"}, {640, 360}));
    support::writeVideo(folder / "v.avi", video, 10, support::VideoKind::MjpegInAvi);
    std::atomic<int> frames = 0, pictures = 0;
    LiveScanner live([&](GreyView view) { return ++frames, readQuickly(view); },
                     [&](GreyView view) { return ++pictures, readQuickly(view); });
    listenTo(live);
    live.useRecording({folder / "p.png", folder / "v.avi"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(found.size(), 2U);
    EXPECT_EQ(pictures, 1);
    EXPECT_EQ(frames, 5);
}

TEST_F(LiveScannerOnRecordings, advisesLightWhileItIsDarkAndNoLonger) {
    QImage dark(640, 360, QImage::Format_RGB32);
    dark.fill(QColor(12, 12, 12));
    std::vector<QImage> pictures(20, dark);
    pictures.insert(pictures.end(), 20, support::tagPicture({"K000000001"}, {640, 360}));
    support::writeVideo(folder / "v.avi", pictures, 10, support::VideoKind::MjpegInAvi);
    LiveScanner live(readQuickly);
    listenTo(live);
    std::vector<PictureAdvice> advice;
    QObject::connect(&live, &LiveScanner::adviceChanged, [&](PictureAdvice told) { advice.push_back(told); });
    live.useRecording({folder / "v.avi"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(advice, (std::vector{PictureAdvice::TooDark, PictureAdvice::None}));
    EXPECT_FALSE(found.empty()); // so it was the light that took the advice away, not the end
}

TEST_F(LiveScannerOnRecordings, losesNoFrameOfAVideoToASlowReader) {
    std::vector<QImage> pictures;
    for (int i = 0; i < 12; ++i) // each tag is in view for a tenth of a second only
        pictures.insert(pictures.end(), 3,
                        support::tagPicture({"K0000000" + std::to_string(10 + i)}, {640, 360}));
    support::writeVideo(folder / "v.avi", pictures, 30, support::VideoKind::MjpegInAvi);
    LiveScanner live([](GreyView view) {
        QThread::msleep(60); // a slow machine
        return readQuickly(view);
    });
    listenTo(live);
    live.useRecording({folder / "v.avi"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(found.size(), 12U);
    EXPECT_TRUE(std::is_sorted(found.begin(), found.end()));
}

TEST_F(LiveScannerOnRecordings, readingIsDoneOnAnotherThreadAndSignalsComeOnThisOne) {
    savePicture(support::tagPicture({"K00000001A"}), folder / "1.png");
    std::atomic<QThread*> reading = nullptr;
    LiveScanner live([&](GreyView view) {
        reading = QThread::currentThread();
        return readQuickly(view);
    });
    QThread* signalled = nullptr;
    QObject::connect(&live, &LiveScanner::codeFound, [&] { signalled = QThread::currentThread(); });
    live.useRecording({folder.path()});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(signalled, QThread::currentThread());
    EXPECT_NE(reading.load(), QThread::currentThread());
    EXPECT_NE(reading.load(), nullptr);
}

TEST_F(LiveScannerOnRecordings, outlinesHaveTheFramesCorners) {
    savePicture(support::tagPicture({"K00000001A"}, {800, 600}), folder / "1.png");
    std::vector<TrackedCode> outlines;
    QSize frameSize;
    LiveScanner live(readQuickly);
    QObject::connect(&live, &LiveScanner::outlinesChanged,
                     [&](const std::vector<TrackedCode>& codes, QSize size) {
                         if (codes.empty()) return;
                         outlines = codes;
                         frameSize = size;
                     });
    live.useRecording({folder / "1.png"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    ASSERT_EQ(outlines.size(), 1U);
    EXPECT_EQ(frameSize, QSize(800, 600));
    EXPECT_TRUE(outlines[0].believed);
    double middleX = 0;
    for (const Point& corner : outlines[0].code.corners)
        middleX += corner.x / 4;
    EXPECT_NEAR(middleX, 400, 3);
}

TEST_F(LiveScannerOnRecordings, stoppedInTheMiddleItIsSilentFromThenOn) {
    for (int i = 10; i < 40; ++i)
        savePicture(support::tagPicture({"K000000" + std::to_string(i)}),
                    folder / (std::to_string(i) + ".png"));
    LiveScanner live(readQuickly);
    listenTo(live);
    QObject::connect(&live, &LiveScanner::codeFound, [&] {
        if (found.size() == 3) live.stop();
    });
    live.useRecording({folder.path()});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Stopped; }));
    live.useRecording({folder / "10.png"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(found, (Texts{"K00000010", "K00000011", "K00000012", "K00000010"}));
}

TEST_F(LiveScannerOnRecordings, canBeDeletedAtAnyMoment) {
    for (int i = 10; i < 20; ++i)
        savePicture(support::tagPicture({"K000000" + std::to_string(i)}),
                    folder / (std::to_string(i) + ".png"));
    for (std::size_t wanted = 0; wanted < 3; ++wanted) {
        found.clear();
        LiveScanner live(readQuickly);
        listenTo(live);
        live.useRecording({folder.path()});
        ASSERT_TRUE(waitFor([&] { return found.size() >= wanted; }));
    }
    EXPECT_GE(found.size(), 2U);
}

TEST_F(LiveScannerOnRecordings, anEmptyFolderEndsWithAFailure) {
    LiveScanner live(readQuickly);
    listenTo(live);
    live.useRecording({folder.path()});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(failures, std::vector{FileFault::Empty});
    EXPECT_TRUE(found.empty());
}

TEST_F(LiveScannerOnRecordings, aGuessOfOnePictureIsNoCode) {
    savePicture(support::tagPicture({}, {64, 64}), folder / "1.png");
    savePicture(support::tagPicture({}, {64, 64}), folder / "2.png");
    const auto guess = [](GreyView) {
        SeenCode code;
        code.text = "K00000001A";
        code.howRead = HowRead::Guessed;
        return std::vector{code};
    };
    LiveScanner live(guess);
    listenTo(live);
    live.useRecording({folder / "1.png"});
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_TRUE(found.empty());
    live.useRecording({folder.path()}); // two pictures agree
    ASSERT_TRUE(waitFor([&] { return live.state() == SourceState::Ended; }));
    EXPECT_EQ(found, Texts{"K00000001A"});
}

} // namespace
} // namespace scanner
