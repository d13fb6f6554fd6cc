#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "tests/app/gui/gear/gear_story.h"

using support::GearStory;

namespace {

// Rescue tubes of demo/club/items.csv.
constexpr const char* grebes = "KMC20GKEK9";
constexpr const char* dabchicks = "KQ8SK0R3E2";
constexpr const char* grebesKnife = "KD0XPAMAJG";

class EventStory : public GearStory {
protected:
    /// Two boats whose rescue tubes change over, and a knife that stays out.
    void recordTheDay() {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Grebe", core::Phase::Launch, "Petra Lund", {grebes, grebesKnife},
              "2026-03-13T07:00:00Z");
        check(club, "Dabchick", core::Phase::Launch, "Tobin Ashe", {dabchicks}, "2026-03-13T07:10:00Z");
        check(club, "Grebe", core::Phase::Return, "Petra Lund", {dabchicks}, "2026-03-13T11:00:00Z");
        check(club, "Dabchick", core::Phase::Return, "Tobin Ashe", {grebes}, "2026-03-13T11:10:00Z");
    }
};

} // namespace

TEST_F(EventStory, aDayShowsWhatWentOutWhatCameBackAndTheSwap) {
    recordTheDay();
    openOffice("events");
    typeInto("eventEdit", "2026-03-13");
    press(Qt::Key_Return);
    EXPECT_TRUE(textOf("eventSummaryLabel")
                    .startsWith("3 items went out on 2 boats, 0 came back on their own, 2 on another, "))
        << textOf("eventSummaryLabel").toStdString();
    bool isMissing = false;
    for (const app::ListRow& row : rowsIn("eventList"))
        isMissing |= row.key == QStringLiteral("missing ") + grebesKnife;
    EXPECT_TRUE(isMissing);
    QStringList said;
    for (const app::ListRow& row : rowsIn("eventList"))
        said << row.title + ' ' + row.remark;
    const QString all = said.join('\n');
    EXPECT_TRUE(all.contains("by Petra Lund")) << all.toStdString();
    EXPECT_TRUE(all.contains("Change the two over")) << all.toStdString();
}

TEST_F(EventStory, anEventThatNobodyNamedIsSaidToBeUnknown) {
    recordTheDay();
    openOffice("events");
    typeInto("eventEdit", "Harvest carnival");
    press(Qt::Key_Return);
    EXPECT_TRUE(textOf("eventSummaryLabel").startsWith("Nothing was filed under that"));
    EXPECT_TRUE(rowsIn("eventList").empty());
}

TEST_F(EventStory, namedEventsAreOfferedNewestFirst) {
    core::Club club = stored(core::Club::Access::ReadWrite);
    for (const auto& [boat, event] : {std::pair("Grebe", "Youth day"), std::pair("Bittern", "Spring patrol")})
        ASSERT_TRUE(club.events().fileUnder(club.checks().open(boat, core::Phase::Launch, moment())->check,
                                            event, moment()));
    openOffice("events");
    EXPECT_EQ(child<QComboBox>("eventBox")->itemText(0), "Spring patrol");
    EXPECT_EQ(child<QComboBox>("eventBox")->itemText(1), "Youth day");
}

TEST_F(EventStory, aCheckIsFiledUnderAnotherEventLater) {
    recordTheDay();
    openOffice("events");
    typeInto("eventEdit", "2026-03-13");
    press(Qt::Key_Return);
    ASSERT_TRUE(child("eventFiling")->isVisible());
    EXPECT_EQ(child<QComboBox>("filedCheckBox")->count(), 4);
    EXPECT_TRUE(child<QComboBox>("filedCheckBox")->itemText(0).startsWith("Grebe, launch check, "));
    EXPECT_FALSE(child("fileCheckButton")->isEnabled());
    typeInto("otherEventEdit", "Youth day");
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    EXPECT_EQ(stored().events().names(), std::vector<std::string>{"Youth day"});
    EXPECT_EQ(textOf("eventSaidLabel"), "The check is filed under Youth day now.");
}
