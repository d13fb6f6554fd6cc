#include "scanner/live/camera_list.h"

#include "scanner/live/camera_source.h"
#include "tests/scanner/live/camera_bench.h"
#include "tests/support/wait_for.h"

#include <QVideoFrameFormat>
#include <gtest/gtest.h>

#include <QElapsedTimer>

namespace scanner {
namespace {

using support::fakeCameras;
using support::waitFor;
using support::webcam720;

QStringList names(const CameraList& list) {
    QStringList found;
    for (const QCameraDevice& camera : list.cameras())
        found << camera.description();
    return found;
}

/// Lets the event loop run for as long as doubles come.
void letDoublesCome() {
    QElapsedTimer timer;
    timer.start();
    ASSERT_TRUE(waitFor([&] { return timer.elapsed() > 1200; }));
}

TEST(CameraList, withoutACameraItIsEmpty) {
    const CameraList list;
    letDoublesCome();
    EXPECT_TRUE(list.cameras().isEmpty());
}

TEST(CameraList, showsEachCameraOnce) {
    fakeCameras().plugIn("a", "Shed webcam", webcam720);
    fakeCameras().plugIn("b", "Ramp webcam", webcam720);
    const CameraList list;
    EXPECT_EQ(names(list), (QStringList{"Shed webcam", "Ramp webcam"}));
    letDoublesCome();
    EXPECT_EQ(names(list), (QStringList{"Shed webcam", "Ramp webcam"}));
}

TEST(CameraList, followsTheCamerasThatComeAndGo) {
    fakeCameras().plugIn("a", "Shed webcam", webcam720);
    const CameraList list;
    int changes = 0;
    QObject::connect(&list, &CameraList::changed, [&] { ++changes; });
    letDoublesCome();
    EXPECT_EQ(changes, 0);
    fakeCameras().plugIn("b", "Ramp webcam", webcam720);
    EXPECT_TRUE(waitFor([&] { return names(list) == QStringList{"Shed webcam", "Ramp webcam"}; }));
    fakeCameras().pullOut("a");
    EXPECT_TRUE(waitFor([&] { return names(list) == QStringList{"Ramp webcam"}; }));
    fakeCameras().plugIn("a", "Shed webcam", webcam720);
    EXPECT_TRUE(waitFor([&] { return names(list) == QStringList{"Ramp webcam", "Shed webcam"}; }));
    fakeCameras().pullOut("a");
    EXPECT_TRUE(waitFor([&] { return names(list) == QStringList{"Ramp webcam"}; }));
    EXPECT_EQ(changes, 4);
}

TEST(CameraList, twoOfAMakeAreShownTwice) {
    fakeCameras().plugIn("a", "Webcam", webcam720);
    fakeCameras().plugIn("b", "Webcam", webcam720);
    const CameraList list;
    letDoublesCome();
    EXPECT_EQ(names(list), (QStringList{"Webcam", "Webcam"}));
    fakeCameras().pullOut("a");
    EXPECT_TRUE(waitFor([&] { return names(list) == QStringList{"Webcam"}; }));
}

TEST(CameraList, aSecondListKnowsTheGhostsOfTheFirst) {
    fakeCameras().plugIn("a", "Shed webcam", webcam720);
    {
        const CameraList list;
        letDoublesCome();
        fakeCameras().pullOut("a");
        EXPECT_TRUE(waitFor([&] { return list.cameras().isEmpty(); }));
    }
    const CameraList list;
    EXPECT_TRUE(list.cameras().isEmpty());
}

QSize chosenSize(const std::string& modes, QVideoFrameFormat::PixelFormat* pixels = nullptr,
                 float* rate = nullptr) {
    fakeCameras().plugIn("a", "Shed webcam", modes);
    const CameraList list;
    EXPECT_TRUE(waitFor([&] { return list.cameras().size() == 1; }));
    const QCameraFormat format = chooseFormat(list.cameras().value(0).videoFormats());
    if (pixels != nullptr) *pixels = format.pixelFormat();
    if (rate != nullptr) *rate = format.maxFrameRate();
    return format.resolution();
}

TEST(CameraFormat, isTheNearestTo720p) {
    EXPECT_EQ(chosenSize("YUY2,320,240,30;YUY2,1280,720,30;YUY2,1920,1080,30"), QSize(1280, 720));
}

TEST(CameraFormat, theFastOneOfTwoOfASize) {
    QVideoFrameFormat::PixelFormat pixels{};
    float rate = 0;
    EXPECT_EQ(chosenSize("YUY2,1280,720,10;MJPG,1280,720,30", &pixels, &rate), QSize(1280, 720));
    EXPECT_EQ(pixels, QVideoFrameFormat::Format_Jpeg);
    EXPECT_FLOAT_EQ(rate, 30);
}

TEST(CameraFormat, theOneWithoutDecodingOfTwoThatAreAlike) {
    QVideoFrameFormat::PixelFormat pixels{};
    chosenSize("MJPG,1280,720,30;NV12,1280,720,30", &pixels);
    EXPECT_EQ(pixels, QVideoFrameFormat::Format_NV12);
}

TEST(CameraFormat, ofNoneIsNull) {
    EXPECT_TRUE(chooseFormat({}).isNull());
}

} // namespace
} // namespace scanner
