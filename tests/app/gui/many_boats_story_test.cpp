#include "core/club/club_checks.h"
#include "tests/app/gui/window_story.h"

#include <QScrollArea>
#include <QToolButton>

#include <fstream>

using support::WindowStory;

namespace {

/// A board with more boats than fit on it.
class ManyBoatsStory : public WindowStory {
protected:
    void SetUp() override {
        WindowStory::SetUp();
        const std::filesystem::path csv = folder() / "more";
        std::filesystem::create_directories(csv);
        std::ofstream boats(csv / "boats.csv");
        boats << "boat,boat_class,tag,place,priority,note\n";
        for (const char* name : {"Avocet", "Curlew", "Dunlin", "Eider", "Fulmar", "Gannet", "Heron", "Knot",
                                 "Lapwing", "Merlin"})
            boats << name << ",skiff,,Boathouse,,\n";
        boats.close();
        core::Club club = stored(core::Club::Access::ReadWrite);
        const auto plan = club.register_().importCsv(csv, today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
        sign(club, "Merlin", core::Phase::Launch, "2026-03-14T05:40:00Z");
    }
    static void sign(core::Club& club, const char* boat, core::Phase phase, const char* at) {
        const auto check = club.checks().open(boat, phase, moment(at));
        ASSERT_TRUE(check);
        ASSERT_TRUE(club.checks().giveNames(check->check, {"Petra Lund"}, moment(at)));
        ASSERT_TRUE(club.checks().sign(check->check, "Petra Lund", "two swimmers drift off", moment(at)));
    }

    app::BoatStrip* strip(const char* boat) {
        return window().findChild<app::BoatStrip*>(QString("boatStrip ") + boat);
    }
    QStringList shownBoats() {
        QStringList boats;
        for (const app::BoatStrip* each : window().findChildren<app::BoatStrip*>())
            if (!each->isHidden()) boats << each->text();
        return boats;
    }
    QLineEdit& filter() { return *child<QLineEdit>("boatFilterEdit"); }
};

} // namespace

TEST_F(ManyBoatsStory, whoNeedsSomebodyComesFirstAndABoatThatIsOutIsNamed) {
    openWindow();
    const QStringList boats = shownBoats();
    ASSERT_EQ(boats.size(), 13);
    EXPECT_EQ(boats.front(), "Avocet");
    EXPECT_EQ(boats.back(), "Merlin") << "out, after all that are not ready";
    const QStringList notReady = boats.mid(0, 12);
    QStringList byName = notReady;
    byName.sort();
    EXPECT_EQ(notReady, byName);
    EXPECT_EQ(child<QLabel>("boatCountLabel")->text(), "▲ 12 not ready · ○ out: Merlin");
}

TEST_F(ManyBoatsStory, eachReasonTakesOneLineAndTheRestIsAPressAway) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        sign(club, "Grebe", core::Phase::Launch, "2026-03-14T05:50:00Z");
        sign(club, "Grebe", core::Phase::Return, "2026-03-14T06:20:00Z");
    }
    openWindow();
    app::BoatStrip* grebe = strip("Grebe");
    ASSERT_GT(grebe->words().reasons.size(), 1) << "nothing came back";
    const int closed = grebe->height();
    EXPECT_LE(closed, strip("Avocet")->height() + 80) << "it pushes nobody out of sight";
    auto* more = grebe->findChild<QToolButton*>("boatReasonsButton");
    ASSERT_TRUE(more->isVisible());
    grebe->setFocus();
    press(Qt::Key_Tab);
    ASSERT_TRUE(more->hasFocus());
    press(Qt::Key_Space);
    EXPECT_TRUE(grebe->isOpen());
    EXPECT_GT(grebe->height(), closed);
    press(Qt::Key_Return);
    EXPECT_EQ(grebe->height(), closed);
    EXPECT_TRUE(window().isBoardShown()) << "its own press opens no check";
    grebe->setFocus();
    press(Qt::Key_Right);
    EXPECT_TRUE(grebe->isOpen());
}

TEST_F(ManyBoatsStory, aNameIsTypedAndEnterGoesToTheBoat) {
    openWindow();
    ASSERT_TRUE(filter().isVisible());
    for (int i = 0; i < 60 && !filter().hasFocus(); ++i)
        press(Qt::Key_Tab);
    ASSERT_TRUE(filter().hasFocus());
    type("her");
    EXPECT_EQ(shownBoats(), QStringList{"Heron"});
    press(Qt::Key_Return);
    EXPECT_TRUE(strip("Heron")->hasFocus());
    filter().setText("out, ");
    EXPECT_EQ(shownBoats(), QStringList{"Merlin"});
    filter().setText("zzz");
    EXPECT_EQ(shownBoats(), QStringList());
    EXPECT_TRUE(child<QLabel>("boatCountLabel")->text().contains("zzz"));
}

TEST_F(ManyBoatsStory, aBoatsTagTypedOrScannedIntoTheFieldOpensIt) {
    openWindow();
    filter().setFocus();
    type("bb60 q6wx 54");
    press(Qt::Key_Return);
    ASSERT_TRUE(support::waitFor([&] { return window().checkPage().boat() == "Grebe"; }));
    saveForLater();
    filter().setFocus();
    type("mer");
    typeAsScanner("BVWMV0JQQG");
    ASSERT_TRUE(support::waitFor([&] { return window().checkPage().boat() == "Bittern"; }));
    EXPECT_EQ(filter().text(), "mer") << "what was typed by hand stays";
}

TEST_F(WindowStory, aFewBoatsNeedNoFilter) {
    openWindow();
    EXPECT_FALSE(child("boatFilterEdit")->isVisible());
    EXPECT_FALSE(child("boatCountLabel")->isVisible());
}
