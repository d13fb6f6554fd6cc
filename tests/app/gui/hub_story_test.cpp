#include "tests/app/gui/story_hand.h"
#include "tests/app/gui/window_story.h"
#include "tests/support/test_cluster.h"

#include "app/gui/club/hub_watch.h"
#include "app/gui/gear/office/gear_office.h"
#include "core/club/club_checks.h"
#include "core/club/club_hub.h"
#include "core/club/district_hub.h"

#include <QPushButton>

using support::StoryHand;
using support::waitFor;

namespace {

/// The window beside a district's server of the test's own.
class HubStory : public support::WindowStory {
protected:
    static constexpr const char* club = "Quillmere Lake Rescue"; // of DemoClub

    void SetUp() override {
        WindowStory::SetUp();
        support::testCluster().makeDatabase("district");
        support::testCluster().makeRole("lake");
        ASSERT_TRUE(core::districtHub::prepare(support::testCluster().url("district")));
        ASSERT_TRUE(core::districtHub::addClub(support::testCluster().url("district"), club, "lake"));
    }
    static std::string url() { return support::testCluster().url("district", "lake"); }
    QPushButton* line() { return window().board().findChild<QPushButton*>("hubLine"); }
    bool says(const QString& words) {
        return waitFor([&] { return line()->isVisible() && line()->text().startsWith(words); });
    }
    void showBoats() {
        const int before = boardsShown();
        QTest::keySequence(&window(), QKeySequence("Ctrl+B"));
        waitForBoard(before);
    }
    /// What another machine of the club does meanwhile.
    void launchElsewhere(const char* boat) {
        const auto file = folder() / "elsewhere.tholepin";
        ASSERT_TRUE(core::districtHub::fetch({url(), false}, club, file));
        auto there = core::Club::open(file);
        ASSERT_TRUE(there);
        const auto check = there->checks().open(boat, core::Phase::Launch, moment());
        ASSERT_TRUE(there->checks().giveNames(check->check, {"Marta Quill"}, moment()));
        ASSERT_TRUE(there->checks().sign(check->check, "Marta Quill", "needed at once", moment()));
        core::HubLink link;
        ASSERT_TRUE(there->hub().exchange(link, today(), [](const auto&) { return std::string(); }));
    }
    bool isOutOnBoard(const std::string& boat) {
        for (const core::BoatCondition& each : window().board().state().boats)
            if (each.boat == boat) return each.kind == core::BoatCondition::Kind::Out;
        return false;
    }
};

} // namespace

TEST_F(HubStory, theBoardSaysHowItStandsAndNobodyWaits) {
    openWindow();
    EXPECT_FALSE(line()->isVisible()) << "the file exchanges with no server";
    StoryHand hand(window(), StoryHand::Way::Mouse);
    QTest::keySequence(&window(), QKeySequence("Ctrl+Shift+X"));
    ASSERT_TRUE(waitFor([&] { return window().gearOffice().officer() == "Joss Iveny"; }));
    hand.pick("exchangeHubChoice");
    child<QLineEdit>("hubUrlEdit")->setText(QString::fromStdString(url()));
    hand.press("hubJoinButton");
    ASSERT_TRUE(waitFor([&] { return child<QLabel>("hubNowLabel")->text().startsWith("Exchanged with"); }))
        << child<QLabel>("hubSaidLabel")->text().toStdString();
    showBoats();
    ASSERT_TRUE(says("Exchanged with the district"));

    launchElsewhere("Dabchick");
    EXPECT_TRUE(waitFor([&] { return isOutOnBoard("Dabchick"); })) << "without anybody's asking";

    support::testCluster().kill();
    ASSERT_TRUE(says("The district was not reached since"));
    openBoat("Grebe");
    window().checkPage().session()->sign("Petra Lund", "needed at once");
    settle();
    EXPECT_TRUE(child("signedPanel")->isVisible());

    support::testCluster().start();
    showBoats();
    hand.press("hubLine");
    hand.press("hubExchangeButton");
    ASSERT_TRUE(waitFor([&] { return child<QLabel>("hubNowLabel")->text().startsWith("Exchanged with"); }));
    hand.press("hubLeaveButton");
    ASSERT_TRUE(waitFor([&] { return child("hubJoinButton")->isVisible(); }));
    showBoats();
    EXPECT_TRUE(waitFor([&] { return !line()->isVisible(); }));
}
