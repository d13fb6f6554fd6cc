#include "core/answers/history.h"
#include "core/answers/item_record.h"
#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/migrations.h"
#include "tests/core/club/small_club.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>
#include <sstream>

namespace {

using core::ErrorCode;
using core::ItemState;
using testing::ElementsAre;

const char* const rope = "K79TE08WXH";

/// Whose tow line is looked at each year and after each long tow.
class RopeClub : public support::SmallClub {
public:
    RopeClub() {
        import("life_rules.csv", "kit_type,part,rule,kind,n,source\n"
                                 "tow line,,yearly look,inspect_every,12,s\n"
                                 "tow line,,pull test,inspect_every,24,s\n"
                                 "tow line,hook,weigh,inspect_every,12,s\n");
        import("parts.csv", std::string("code,part,made\n") + rope + ",hook,2024-05\n");
        import("items.csv", std::string("code,registered\n") + rope + ",2025-01-01\n");
    }
    void record(const std::string& rule, bool passed) {
        const auto round = club.kit().recordService(
            {.rule = rule, .day = now.today, .by = "Bram Oke", .passed = passed, .scans = {rope}}, now);
        ASSERT_TRUE(round && round->recorded.size() == 1);
    }
    core::Outcome withdraw(const std::string& rule, const std::string& day = "2026-03-14",
                           const std::string& part = {}) {
        return club.kit().withdrawRecord(rope, {.rule = rule, .part = part, .day = day}, "wrong line scanned",
                                         "Odalys Finch", now);
    }
    ItemState state() { return club.kit().item(rope)->state; }
    std::string dueOf(const std::string& rule) {
        const auto record = *club.kit().itemRecord(rope);
        for (const core::KitType& type : club.register_().kitTypes())
            for (const core::RuleDue& due : type.name == record.item.kitType
                                                ? core::dueDatesOf(record, type, now.today)
                                                : std::vector<core::RuleDue>())
                if (due.rule.name == rule) return due.due ? due.due->iso() : "";
        return "no such rule";
    }
    std::vector<core::Error> problems() { return club.record().verify(false)->problems; }
    std::string exported(const char* file) {
        const auto to = folder / "out";
        std::filesystem::create_directories(to);
        EXPECT_TRUE(club.register_().exportCsv(to, {}));
        std::ostringstream text;
        text << std::ifstream(to / file).rdbuf();
        std::filesystem::remove_all(to);
        return text.str();
    }
};

TEST(WithdrawnRecord, countsNoMoreAndItsDaysGoBack) {
    RopeClub small;
    const std::string before = small.dueOf("yearly look");
    small.record("yearly look", true);
    ASSERT_EQ(small.dueOf("yearly look"), "2027-03-14");
    ASSERT_TRUE(small.withdraw("Yearly Look"));
    EXPECT_EQ(small.dueOf("yearly look"), before);
    EXPECT_EQ(small.state(), ItemState::Serviceable);
    EXPECT_TRUE(small.club.kit().serviceRecords(rope).empty());
    EXPECT_THAT(small.exported("services.csv"), testing::Not(testing::HasSubstr("yearly look")));
    EXPECT_TRUE(small.problems().empty());
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.dueOf("yearly look"), before) << "made anew from the record";
    // It may be recorded again, and counts.
    small.record("yearly look", true);
    EXPECT_EQ(small.dueOf("yearly look"), "2027-03-14");
    EXPECT_TRUE(small.problems().empty());
}

TEST(WithdrawnRecord, staysInTheHistoryWithItsReason) {
    RopeClub small;
    small.record("yearly look", true);
    ASSERT_TRUE(small.withdraw("yearly look"));
    std::vector<std::string> kinds;
    const auto history = *small.club.answers().history(rope);
    for (const core::HistoryLine& line : history)
        kinds.push_back(line.kind);
    EXPECT_THAT(kinds, testing::IsSupersetOf({"service", "record-withdrawn"}));
    EXPECT_EQ(kinds.back(), "record-withdrawn");
    EXPECT_EQ(history.back().by, "Odalys Finch");
    EXPECT_THAT(history.back().body, testing::AllOf(testing::HasSubstr("wrong line scanned"),
                                                    testing::HasSubstr("\"rule\":\"yearly look\"")));
}

TEST(WithdrawnRecord, aFailedOneLeavesTheItemAsItWas) {
    RopeClub small;
    small.record("yearly look", false);
    ASSERT_EQ(small.state(), ItemState::Unserviceable);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

// A row of services.csv that a person writes; who, need not be said.
TEST(WithdrawnRecord, ofARowTakesItsStateAlong) {
    for (const char* by : {"Bram Oke", ""}) {
        RopeClub small;
        const auto write = [&](const char* day, const char* passed) {
            const core::CellTexts cells{
                {"code", rope}, {"rule", "yearly look"}, {"day", day}, {"passed", passed}};
            ASSERT_TRUE(
                small.club.register_().write({core::SheetId::Services, {{{}, cells, {}}}}, by, small.now));
        };
        write("2026-03-12", "no");
        EXPECT_EQ(small.state(), ItemState::Unserviceable);
        write("2026-03-13", "yes");
        EXPECT_EQ(small.state(), ItemState::Serviceable);
        ASSERT_TRUE(small.withdraw("yearly look", "2026-03-13"));
        EXPECT_EQ(small.state(), ItemState::Unserviceable) << by;
        ASSERT_TRUE(small.withdraw("yearly look", "2026-03-12"));
        EXPECT_EQ(small.state(), ItemState::Serviceable) << by;
        EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    }
}

TEST(WithdrawnRecord, aFailedOneBesideAnotherLeavesItWithdrawn) {
    RopeClub small;
    small.record("yearly look", false);
    small.record("pull test", false);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Unserviceable) << "the other test failed, too";
    ASSERT_TRUE(small.withdraw("pull test"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
    EXPECT_TRUE(small.problems().empty());
}

TEST(WithdrawnRecord, aFailedOneBehindADamageDoesNotReleaseIt) {
    RopeClub small;
    const auto check = small.open();
    small.scan(check, rope);
    ASSERT_TRUE(small.club.checks().withdraw(check, rope, "strand cut", small.now));
    small.record("yearly look", false);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Unserviceable);
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, aFailedOneThatADamageHidIsLiftedToo) {
    RopeClub small;
    const auto check = small.open();
    small.scan(check, rope);
    ASSERT_TRUE(small.club.checks().withdraw(check, rope, "strand cut", small.now));
    small.record("yearly look", false);
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    ASSERT_EQ(small.state(), ItemState::Unserviceable) << "by the record now";
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, aPassedOneThatReleasedItWithdrawsItAgain) {
    RopeClub small;
    small.record("yearly look", false);
    small.now = small.at("2026-03-20T10:00:00Z");
    small.record("yearly look", true);
    ASSERT_EQ(small.state(), ItemState::Serviceable);
    ASSERT_TRUE(small.withdraw("yearly look", "2026-03-20"));
    EXPECT_EQ(small.state(), ItemState::Unserviceable);
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.state(), ItemState::Unserviceable);
    // And the failed one that stands behind it is an error, too.
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, aPassedOneOfTheSameDayGivesTheFailedOneBack) {
    RopeClub small;
    small.record("yearly look", false);
    small.record("yearly look", true);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Unserviceable);
    ASSERT_EQ(small.club.kit().serviceRecords(rope).size(), 1u);
    EXPECT_FALSE(small.club.kit().serviceRecords(rope).front().passed);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, aStateThatSomethingElseGaveSinceStays) {
    RopeClub small;
    small.record("yearly look", false);
    ASSERT_TRUE(small.club.kit().release(rope, "Bram Oke", small.now));
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
    ASSERT_TRUE(small.club.kit().writeOff(rope, "worn", "Bram Oke", small.now));
    small.now = small.at("2026-03-20T10:00:00Z");
    EXPECT_EQ(small.state(), ItemState::WrittenOff);
    ASSERT_TRUE(small.club.kit().reinstate(rope, "still good", "Bram Oke", small.now));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

// The same person releases it right after a failed look that gave it no state of its own.
TEST(WithdrawnRecord, aReleaseThatFollowsTheRecordIsNotTakenForItsOwn) {
    RopeClub small;
    small.import("items.csv", std::string("code,state\n") + rope + ",unserviceable\n");
    small.record("yearly look", true);
    ASSERT_TRUE(small.club.kit().release(rope, "Bram Oke", small.now));
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, whatTheBenchFoundIsMissingAgain) {
    RopeClub small;
    small.import("items.csv", std::string("code,state\n") + rope + ",missing\n");
    small.record("yearly look", true);
    ASSERT_EQ(small.state(), ItemState::Serviceable);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Missing) << "another line was scanned";
}

/// docs/rules.md, "a service record made in error": one that was missing is here again by another round.
TEST(WithdrawnRecord, whatAnotherRoundFoundTooIsHereStill) {
    RopeClub small;
    small.import("items.csv", std::string("code,state\n") + rope + ",missing\n");
    small.record("yearly look", true);
    small.record("pull test", true);
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
    ASSERT_TRUE(small.withdraw("pull test"));
    EXPECT_EQ(small.state(), ItemState::Missing) << "nobody saw it, after all";
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
}

TEST(WithdrawnRecord, whatWasReinstatedSinceIsHereStill) {
    RopeClub small;
    small.import("items.csv", std::string("code,state\n") + rope + ",missing\n");
    small.record("yearly look", true);
    ASSERT_TRUE(small.club.kit().writeOff(rope, "worn", "Bram Oke", small.now));
    ASSERT_TRUE(small.club.kit().reinstate(rope, "still good", "Bram Oke", small.now));
    ASSERT_TRUE(small.withdraw("yearly look"));
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

/// docs/rules.md, "a service record made in error": what a passed one released is withdrawn again.
TEST(WithdrawnRecord, whatItReleasedIsWithdrawnAgainAlsoWhereItWasLostAndFoundSince) {
    RopeClub small;
    small.record("pull test", false);
    small.now = small.at("2026-03-15T10:00:00Z");
    small.record("pull test", true);
    small.import("items.csv", std::string("code,state\n") + rope + ",missing\n");
    small.record("yearly look", true);
    ASSERT_EQ(small.state(), ItemState::Serviceable);
    ASSERT_TRUE(small.withdraw("pull test", "2026-03-15"));
    EXPECT_EQ(small.state(), ItemState::Unserviceable);
}

TEST(WithdrawnRecord, aMissingThingIsFoundByTheSameRecordOnceMore) {
    RopeClub small;
    small.record("yearly look", true);
    small.import("items.csv", std::string("code,state\n") + rope + ",missing\n");
    ASSERT_EQ(small.state(), ItemState::Missing);
    small.record("yearly look", true);
    EXPECT_EQ(small.state(), ItemState::Serviceable);
}

TEST(WithdrawnRecord, aPartsRecordIsNamedByItsPart) {
    RopeClub small;
    small.import("services.csv", std::string("code,part,rule,day\n") + rope + ",hook,weigh,2025-06\n");
    ASSERT_EQ(small.dueOf("weigh"), "2026-06-01");
    EXPECT_EQ(small.withdraw("weigh", "2025-06").error().code, ErrorCode::NoSuchServiceRecord);
    EXPECT_EQ(small.withdraw("weigh", "2025-07", "hook").error().code, ErrorCode::NoServiceRecordOfPart);
    ASSERT_TRUE(small.withdraw("weigh", "2025-06", "Hook"));
    EXPECT_NE(small.dueOf("weigh"), "2026-06-01");
    EXPECT_TRUE(small.problems().empty());
}

TEST(WithdrawnRecord, whatIsNotThereOrWithoutReasonIsRefused) {
    RopeClub small;
    small.record("yearly look", true);
    EXPECT_EQ(small.withdraw("yearly look", "2026-03-13").error().code, ErrorCode::NoSuchServiceRecord);
    EXPECT_EQ(small.withdraw("pull test").error().kind(), core::ErrorKind::NotFound);
    const auto dumb = small.club.kit().withdrawRecord(rope, {.rule = "yearly look", .day = "2026-03-14"}, "x",
                                                      "Odalys Finch", small.now);
    EXPECT_EQ(dumb.error().code, ErrorCode::ReasonTooShort);
    EXPECT_EQ(small.dueOf("yearly look"), "2027-03-14");
    ASSERT_TRUE(small.withdraw("yearly look"));
    const auto twice = small.withdraw("yearly look");
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().code, ErrorCode::RecordWithdrawnAlready);
    EXPECT_EQ(twice.error().kind(), core::ErrorKind::NotAllowed);
}

// Two machines: the withdrawal may arrive before the record that it is about.
TEST(WithdrawnRecord, whateverTheOrderOfArrivalTheTablesAreTheSame) {
    RopeClub small;
    small.record("yearly look", false);
    small.record("pull test", true);
    ASSERT_TRUE(small.withdraw("yearly look"));
    small.record("yearly look", true);
    ASSERT_TRUE(small.withdraw("pull test"));
    core::Database kept(small.file(), core::Database::Mode::ReadWrite);
    std::vector<core::Fact> facts;
    core::factTable::forEachInChain(kept, [&](const core::Fact& fact) { facts.push_back(fact); });
    const std::int64_t begun = core::Instant::parse(facts.front().atUtc)->millis();
    for (std::size_t i = 0; i < facts.size(); ++i)
        facts[i].atUtc = core::Instant::fromMillis(begun + static_cast<std::int64_t>(i)).iso();
    const auto tables = [&] {
        core::Database memory({}, core::Database::Mode::Memory);
        core::migrate(memory, core::migrations());
        for (const core::Fact& fact : facts) {
            core::factTable::insert(memory, fact);
            core::apply(memory, fact);
        }
        std::string text;
        for (const char* table : {"service", "item", "item_state", "made_at", "taken_back"}) {
            auto query = memory.prepare(std::string("SELECT * FROM ") + table + " ORDER BY 1, 2");
            while (query.step())
                text += std::string(table) + " " + query.row() + "\n";
        }
        return text;
    };
    const std::string first = tables();
    EXPECT_THAT(first, testing::HasSubstr("yearly look"));
    EXPECT_THAT(first, testing::Not(testing::ContainsRegex("service key=[^\n]*pull test")));
    std::mt19937 random(7);
    for (int round = 0; round < 20; ++round) {
        std::shuffle(facts.begin(), facts.end(), random);
        EXPECT_EQ(tables(), first) << "round " << round;
    }
}

} // namespace
