#include "core/club/club_log.h"
#include "tests/app/gui/gear/gear_story.h"

#include <algorithm>

using support::GearStory;

namespace {

class LogStory : public GearStory {
protected:
    std::optional<core::LogEntry> entryOf(const std::string& text) {
        const auto entries = stored().log().entries();
        const auto found = std::find_if(entries->begin(), entries->end(),
                                        [&](const core::LogEntry& entry) { return entry.text == text; });
        return found == entries->end() ? std::nullopt : std::optional(*found);
    }
};

} // namespace

TEST_F(LogStory, openEntriesStandFirstThoseThatStopBeforeRemarks) {
    openOffice("log");
    const auto rows = rowsIn("clubLogList");
    ASSERT_EQ(rows.size(), 8u); // six of demo/club/log.csv and two headings
    EXPECT_EQ(rows[0].title, "open");
    EXPECT_EQ(rows[0].aside, "3");
    EXPECT_TRUE(rows[1].title.startsWith("Chafed on the rocks"));
    EXPECT_TRUE(rows[1].remark.startsWith("tow line KGG7 6DZM 61"));
    EXPECT_EQ(rows[4].title, "closed");
    EXPECT_EQ(textOf("logSummaryLabel"), "3 entries open, 1 of them stopping a boat or item.");
}

TEST_F(LogStory, anEntryIsClosedWithWhatWasDone) {
    openOffice("log");
    focus("clubLogList");
    press(Qt::Key_Home);
    EXPECT_TRUE(textOf("logTextLabel").startsWith("Chafed on the rocks"));
    EXPECT_FALSE(child("closeLogButton")->isEnabled());
    typeInto("closingEdit", "Spliced anew, pulled by two");
    pressButton("closeLogButton");
    const auto entry = entryOf("Chafed on the rocks, half a metre from the second float");
    ASSERT_TRUE(entry);
    ASSERT_TRUE(entry->closed);
    EXPECT_EQ(entry->closed->iso(), "2026-03-14");
    EXPECT_EQ(entry->closing, "Spliced anew, pulled by two");
    EXPECT_FALSE(child("closeLogButton")->isVisible());
}

TEST_F(LogStory, aNewEntryAboutABoat) {
    openOffice("log");
    pressButton("newLogEntryButton");
    choose("logAboutBox", "Grebe");
    typeInto("logTextEdit", "Painter frayed at the eye");
    choose("logSeverityBox", "it stops the boat or item until closed");
    pressButton("writeLogButton");
    const auto entry = entryOf("Painter frayed at the eye");
    ASSERT_TRUE(entry);
    EXPECT_EQ(entry->boat, "Grebe");
    EXPECT_EQ(entry->severity, core::Severity::Stop);
    EXPECT_EQ(entry->by, "Joss Iveny");
}

TEST_F(LogStory, aNewEntryAboutAnItemByItsCode) {
    openOffice("log");
    pressButton("newLogEntryButton");
    typeInto("logCodeEdit", "kfgq 9xhh kj");
    typeInto("logTextEdit", "Leather collar worn");
    pressButton("writeLogButton");
    const auto entry = entryOf("Leather collar worn");
    ASSERT_TRUE(entry);
    EXPECT_EQ(entry->item.id, "KFGQ9XHHKJ");
    EXPECT_EQ(entry->severity, core::Severity::Remark);
}

TEST_F(LogStory, anUnknownCodeIsRefusedAndWhatWasTypedStays) {
    openOffice("log");
    pressButton("newLogEntryButton");
    typeInto("logCodeEdit", "KZZZZZZZZZ");
    typeInto("logTextEdit", "Lost its cover");
    pressButton("writeLogButton");
    EXPECT_FALSE(entryOf("Lost its cover"));
    EXPECT_EQ(child<QLineEdit>("logTextEdit")->text(), "Lost its cover");
    EXPECT_FALSE(textOf("logSaidLabel").isEmpty());
}
