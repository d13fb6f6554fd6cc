#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/camera_view.h"
#include "app/gui/camera/photo_camera.h"
#include "core/club/club_kit.h"
#include "core/club/club_photos.h"
#include "tests/app/gui/fake_webcam.h"
#include "tests/app/gui/gear/gear_story.h"
#include "tests/support/tag_picture.h"

using support::GearStory;
using support::waitFor;

namespace {

constexpr const char* benchWebcam = "YUY2,1280,720,30";
constexpr std::chrono::seconds untilRead{40};

// Of demo/club/items.csv: life jackets, and what hangs on the drying rack.
constexpr const char* jacketAtStore = "KT017638PE";
constexpr const char* otherJacket = "K30268QHAF";
constexpr const char* jacketOnRack = "KG7RCVBA55";
constexpr const char* inflatableOnRack = "K5M9AR38J5";

class GearCameraStory : public GearStory {
protected:
    void SetUp() override {
        GearStory::SetUp();
        m_isCameraWanted = true;
        support::fakeWebcams().plugIn("bench", "Bench camera", benchWebcam);
    }
    void TearDown() override {
        support::fakeWebcams().pullOut("bench");
        GearStory::TearDown();
    }
    static void show(const std::vector<std::string>& codes) {
        support::fakeWebcams().show("bench", support::tagPicture(codes));
    }
};

} // namespace

TEST_F(GearCameraStory, aServiceRoundByWhatTheWebcamShows) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    show({jacketAtStore, otherJacket});
    for (const char* code : {jacketAtStore, otherJacket})
        ASSERT_TRUE(waitFor([&] { return headingOf("benchList", code) == "passed"; }, untilRead)) << code;
    pressButton("benchRecordButton");
    for (const char* code : {jacketAtStore, otherJacket}) {
        const auto item = stored().kit().itemRecord(code);
        EXPECT_TRUE(std::any_of(item->services.begin(), item->services.end(), [](const auto& record) {
            return record.day == today() && record.rule == "float test" && record.passed;
        })) << code;
    }
}

TEST_F(GearCameraStory, aStocktakeByWhatTheWebcamShows) {
    openOffice("stocktake");
    choose("stocktakePlaceBox", "Drying rack");
    pressButton("stocktakeBeginButton");
    ASSERT_EQ(headingOf("stocktakeList", jacketOnRack), "still to find");
    show({jacketOnRack});
    ASSERT_TRUE(
        waitFor([&] { return headingOf("stocktakeList", jacketOnRack) != "still to find"; }, untilRead));
    EXPECT_EQ(headingOf("stocktakeList", inflatableOnRack), "still to find");
    pressButton("stocktakeSignButton");
    EXPECT_EQ(stored().kit().item(jacketOnRack)->state, core::ItemState::Serviceable);
    EXPECT_EQ(stored().kit().item(inflatableOnRack)->state, core::ItemState::Missing);
}

TEST_F(GearCameraStory, aPhotographOfAnItemByWhatTheWebcamShows) {
    openOffice("kit");
    typeInto("kitSearchEdit", jacketOnRack);
    press(Qt::Key_Return);
    show({jacketOnRack});
    pressButton("takePhotoButton");
    auto* taking = office().findChild<app::PhotoCamera*>();
    ASSERT_NE(taking, nullptr);
    ASSERT_TRUE(waitFor([&] { return taking->camera().view().hasPicture(); }, untilRead));
    pressButton("takePictureButton");
    ASSERT_TRUE(waitFor([&] { return stored().photos().ofItem(jacketOnRack).size() == 1; }));
    EXPECT_TRUE(waitFor([&] { return child("photoButton") != nullptr; }));
    EXPECT_TRUE(child("takePhotoButton")->hasFocus());
    pressButton("takePhotoButton");
    press(Qt::Key_Escape);
    EXPECT_EQ(stored().photos().ofItem(jacketOnRack).size(), 1u) << "Escape takes none";
}
