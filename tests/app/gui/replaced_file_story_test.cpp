#include "core/club/club_checks.h"
#include "tests/app/gui/window_story.h"

#include <QLabel>
#include <QPushButton>

namespace {

namespace fs = std::filesystem;

class ReplacedFileStory : public support::WindowStory {
protected:
    bool isStripShown() { return window().findChild<QFrame*>("replacedStrip")->isVisible(); }
};

} // namespace

// As a program that keeps folders alike on two computers does, while the window is open.
TEST_F(ReplacedFileStory, nothingIsRecordedAnyMoreAndTheWindowSaysSo) {
    const fs::path other = folder() / "other.tholepin";
    app::Choosers choosers;
    choosers.openClub = [&](QWidget*) { return QString::fromStdString(other.string()); };
    openWindow(false, choosers);
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    EXPECT_FALSE(isStripShown());

    fs::copy_file(file(), other);
    fs::rename(file(), folder() / "moved.tholepin");
    fs::copy_file(other, file());
    EXPECT_TRUE(support::waitFor([&] { return isStripShown(); })) << "nobody pressed anything";
    typeCode("KFC3K7GM79");
    EXPECT_NE(markOf("KFC3K7GM79"), app::Mark::Found);
    EXPECT_TRUE(said().contains("moved, deleted or replaced")) << said().toStdString();

    const int shown = boardsShown();
    window().findChild<QPushButton*>("replacedOpenButton")->click();
    waitForBoard(shown);
    EXPECT_FALSE(isStripShown());
    openBoat("Grebe");
    typeCode("KFC3K7GM79");
    EXPECT_EQ(markOf("KFC3K7GM79"), app::Mark::Found) << "the file that is to be used takes it";
}
