#include "scanner/reader/frame_reader.h"

#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/near_miss_labels.h"
#include "tests/scanner/reader/scenes/scene.h"

#include <gtest/gtest.h>

#include <random>

using namespace scanner::reader;

namespace {

/// A label on a cylinder, tilted, of 3.5 pixels a module.
std::vector<scanner::SeenCode> readBent(const scenes::Label& label, double bend, double tilt) {
    std::mt19937 random(9);
    scenes::Scene scene;
    scene.width = 320;
    scene.height = 240;
    scene.ground = scanner::GreyPicture(scene.width + 128, scene.height + 128, 90);
    scenes::Placed placed{label, scenes::Pose::turned(tilt, 0.3, 0.4), 0.001, bend};
    placed.pose.place = {0, 0, scene.optics.focal * placed.module / 3.5};
    scene.labels.push_back(placed);
    FrameReader reader(scenes::draw(scene, {}, random), pictures::isTag);
    reader.run(ReadingStep::ThreeFinders);
    reader.run(ReadingStep::BentLabels);
    return reader.codes();
}

} // namespace

// Where a first fit is poor a sound symbol looks as if a part of it were another label's: it is asked once
// more where the whole symbol lies best, and is no guess then. Joined ones are told nowhere.
TEST(BentTag, isToldWithoutAGuessAndAJoinedOneIsNot) {
    std::mt19937 random(4);
    for (const double bend : {0.3, 0.5, 0.7})
        for (unsigned number = 0; number < 15; ++number) {
            const double tilt = 0.05 * number - 0.4;
            const auto label = scenes::makeLabel(scenes::Kind::Qr, number);
            const auto sound = readBent(label, bend, tilt);
            ASSERT_EQ(sound.size(), 1u) << bend << ' ' << number;
            EXPECT_EQ(sound[0].text, label.text);
            EXPECT_EQ(sound[0].howRead, scanner::HowRead::Fitted) << bend << ' ' << number;
            const auto joined = scenes::makeJoined(scenes::Kind::Qr, number, random);
            EXPECT_TRUE(readBent(joined, bend, tilt).empty()) << bend << ' ' << number;
        }
}
