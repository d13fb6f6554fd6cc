#include "core/answers/event_tally.h"
#include "core/base/error_code.h"
#include "core/club/club_events.h"
#include "core/club/club_record.h"
#include "core/store/database.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using core::Phase;
using testing::ElementsAre;

class PatrolClub : public support::SmallClub {
public:
    core::HeldEvent begin(const std::string& event, std::optional<core::Instant> until = {}) {
        return club.events().begin(event, until, "Bram Oke", now).value();
    }
    std::string openedAt(const std::string& instant, const std::string& boat, Phase phase = Phase::Launch) {
        now = at(instant);
        return open(phase, boat);
    }
    std::string eventOf(const std::string& check) {
        core::Database file(this->file(), core::Database::Mode::ReadOnly);
        return core::firstText(
                   file.prepare("SELECT event FROM event_of_check WHERE check_id = ?").with(check))
            .value_or("");
    }
};

TEST(HeldEvent, isGivenToEachCheckThatIsOpenedUntilItIsOver) {
    PatrolClub small;
    const std::string before = small.open(Phase::Launch, "Tern");
    const auto held = small.begin("  Spring patrol ");
    EXPECT_EQ(held.event, "Spring patrol");
    EXPECT_EQ(held.until.localDay(), small.now.today.plusDays(1));
    EXPECT_EQ(core::Instant::fromMillis(held.until.millis() - 1).localDay(), small.now.today)
        << "it is over with the day";
    EXPECT_EQ(small.eventOf(before), "");
    const std::string launch = small.open();
    EXPECT_EQ(small.eventOf(launch), "Spring patrol");
    EXPECT_THAT(small.club.events().names(), ElementsAre("Spring patrol"));
    EXPECT_EQ(small.club.events().held(small.now.at)->by, "Bram Oke");
    EXPECT_FALSE(small.club.events().held(held.until));
    EXPECT_EQ(small.eventOf(small.openedAt("2026-03-16T06:40:00Z", "Tern", Phase::Return)), "")
        << "another day";
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.eventOf(launch), "Spring patrol");
}

TEST(HeldEvent, endsAtItsInstantOrWhenSomebodyEndsIt) {
    PatrolClub small;
    small.begin("Carnival", core::Instant::parse("2026-03-15T12:00:00Z"));
    EXPECT_EQ(small.eventOf(small.openedAt("2026-03-15T11:59:00Z", "Petrel")), "Carnival");
    EXPECT_EQ(small.eventOf(small.openedAt("2026-03-15T12:00:00Z", "Tern")), "");
    small.begin("Training");
    small.now = small.at("2026-03-15T13:00:00Z");
    EXPECT_EQ(small.club.events().end("Bram Oke", small.now)->event, "Training");
    EXPECT_FALSE(small.club.events().held(small.now.at));
    EXPECT_EQ(small.eventOf(small.open(Phase::Return, "Tern")), "");
    EXPECT_EQ(small.club.events().end("Bram Oke", small.now).error().code, ErrorCode::NoEventHolds);
    EXPECT_EQ(small.club.events().held(small.at("2026-03-15T12:30:00Z").at)->event, "Training")
        << "what is typed in later is of what held then";
}

TEST(HeldEvent, anotherOneTakesItsPlace) {
    PatrolClub small;
    small.begin("Training");
    small.now = small.at("2026-03-14T09:00:00Z");
    small.begin("Carnival");
    EXPECT_EQ(small.eventOf(small.open()), "Carnival");
    const auto facts = small.club.record().verify(false)->facts;
    EXPECT_EQ(small.begin("Carnival").since, small.now.at);
    EXPECT_EQ(small.club.record().verify(false)->facts, facts) << "it holds already";
}

TEST(HeldEvent, aChecksOwnEventWins) {
    PatrolClub small;
    small.begin("Training");
    const std::string check = small.open();
    ASSERT_TRUE(small.club.events().fileUnder(check, "Rescue", small.now));
    EXPECT_EQ(small.eventOf(check), "Rescue");
    EXPECT_EQ(small.club.checks().undo(check, "taken back", small.now)->act.name, "Rescue");
    EXPECT_EQ(small.eventOf(check), "Training");
    // Nobody did anything in it: it is nothing that can be taken back, and nothing that asks for a reason.
    EXPECT_EQ(small.club.checks().undo(check, "taken back", small.now).error().code,
              ErrorCode::NothingToTakeBack);
    EXPECT_TRUE(small.club.checks().discard(check, "", small.now));
}

TEST(HeldEvent, aCheckIsFiledElsewhereLater) {
    PatrolClub small;
    small.begin("Training");
    const std::string check = small.open();
    small.scan(check, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "drill", small.now));
    ASSERT_TRUE(small.club.checks().discard(small.open(Phase::Launch, "Tern"), {}, small.now));
    const auto checks = small.club.events().checksOf("training");
    ASSERT_EQ(checks.size(), 1u) << "what was let go is no check of it";
    EXPECT_EQ(checks[0].boat, "Petrel");
    EXPECT_EQ(checks[0].event, "Training");
    ASSERT_TRUE(small.club.events().fileUnder(checks[0].check, "Rescue", small.now));
    EXPECT_TRUE(small.club.events().checksOf("Training").empty());
    EXPECT_EQ(small.club.events().checksOf("2026-03-14")[0].event, "Rescue") << "by its day";
}

TEST(HeldEvent, aStocktakeIsOfNone) {
    PatrolClub small;
    small.import("places.csv", "place\nshed\n");
    small.begin("Training");
    EXPECT_EQ(small.eventOf(small.club.checks().openStocktake("shed", small.now)->check), "");
}

TEST(HeldEvent, withoutNameOrAlreadyOverItIsRefused) {
    PatrolClub small;
    const auto begin = [&](const char* name, std::optional<core::Instant> until) {
        return small.club.events().begin(name, until, "", small.now).error().code;
    };
    EXPECT_EQ(begin(" ", {}), ErrorCode::EventWithoutName);
    EXPECT_EQ(begin("Training", small.now.at), ErrorCode::EventOverBefore);
    EXPECT_FALSE(small.club.events().held(small.now.at));
    EXPECT_TRUE(small.club.events().begin("Training", core::Instant::fromMillis(small.now.at.millis() + 1),
                                          "", small.now));
}

} // namespace
