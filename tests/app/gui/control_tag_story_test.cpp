#include "app/gui/camera/camera_panel.h"
#include "tests/app/flow/control_tag_cases.h"
#include "tests/app/gui/window_story.h"

namespace {

using small_club::ControlTagCase;

/// The window is shown what the command line is shown: by its camera, so that it does not matter where the
/// keyboard is. Its tag for finishing asks first and is shown once more.
class ControlTagStory : public support::WindowStory, public testing::WithParamInterface<ControlTagCase> {
protected:
    void SetUp() override { m_check = small_club::beginTealsLaunch(file()); }

    void show(const std::string& code) {
        emit window().checkPage().camera().codeSeen(core::ScannedText::ofSymbol(code, false),
                                                    core::SeenBy::Camera);
        settle();
    }

    std::string m_check;
};

} // namespace

TEST_P(ControlTagStory, leavesWhatItLeavesInEveryProgram) {
    openWindow();
    openBoat("Teal");
    for (const std::string& code : GetParam().shown) {
        if (window().isBoardShown() || window().checkPage().boat() != "Teal") break; // it was ended
        show(code);
        if (code == small_club::finishTag) show(code);
    }
    closeWindow();
    small_club::expectCame(stored(), m_check, GetParam());
}

INSTANTIATE_TEST_SUITE_P(Shown, ControlTagStory, testing::ValuesIn(small_club::controlTagCases()),
                         small_club::nameOfCase);
