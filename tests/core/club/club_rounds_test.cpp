#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/answers/service_round.h"
#include "core/base/calendar_day.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/upkeep/due_date.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"

#include <functional>
#include <gmock/gmock.h>

namespace {

using core::FindingKind;
using core::ItemState;
using core::Phase;
using core::ServiceRound;
using support::SmallClub;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> told(const core::CheckAnswer& answer) {
    std::vector<std::string> texts;
    for (const core::Finding& finding : answer.findings)
        texts.push_back(std::string(core::nameOf(finding.kind)) + " " + finding.item.id);
    return texts;
}

/// The small club with a shed in which a spare paddle, a spare knife and a broken radio lie.
class ShedClub : public SmallClub {
public:
    ShedClub() {
        import("places.csv", "place\nshed\nloft\n");
        import("items.csv", "code,kit_type,place,state\nK000000018,paddle,shed,\nK000000026,knife,shed,\n"
                            "K000000034,radio,shed,unserviceable\nK000000042,knife,loft,\n");
    }
    std::string stocktake() { return club.checks().openStocktake("Shed", now)->check; }
};

TEST(Stocktake, everythingThereIsComplete) {
    ShedClub small;
    const auto check = small.stocktake();
    for (const char* code : {"K000000018", "K000000026", "K000000034"})
        small.scan(check, code);
    const auto answer = *small.club.checks().answer(check, small.now.today);
    EXPECT_EQ(answer.location, core::Location::place("shed"));
    EXPECT_EQ(answer.phase, Phase::Stocktake);
    EXPECT_THAT(told(answer), ElementsAre("unserviceable K000000034")); // it is there, and told
    EXPECT_EQ(answer.outcome, core::CheckOutcome::CompleteWithRemarks);
    EXPECT_EQ(answer.lines.size(), 3u);
    EXPECT_EQ(answer.score.required, 3);
}

TEST(Stocktake, whatIsNotSeenIsMissingOnceSignedAndFoundWhereverItTurnsUp) {
    ShedClub small;
    const auto check = small.stocktake();
    small.scan(check, "K000000018");
    small.scan(check, "K000000034");
    const auto answer = *small.club.checks().sign(check, "Bram Oke", {}, small.now);
    EXPECT_THAT(told(answer.answer), ElementsAre("missing K000000026", "unserviceable K000000034"));
    EXPECT_EQ(small.club.kit().item("K000000026")->state, ItemState::Missing);
    EXPECT_EQ(small.club.kit().item("K000000018")->state, ItemState::Serviceable);
    const auto missing = small.club.answers().missingItems();
    ASSERT_EQ(missing.size(), 1u);
    EXPECT_EQ(missing[0].chain.back().what, core::ChainLink::What::MarkedMissing);
    EXPECT_EQ(missing[0].chain.back().where, core::Location::place("shed"));
    small.scan(small.open(), "K000000026");
    EXPECT_EQ(small.club.kit().item("K000000026")->state, ItemState::Serviceable);
}

/// docs/rules.md, 6: seen anywhere later, by any check, also one that had seen it before.
TEST(Stocktake, whatAnOpenCheckSeesOnceMoreIsFound) {
    ShedClub small;
    const auto launch = small.open();
    small.scan(launch, "K000000026");
    const auto check = small.stocktake();
    small.scan(check, "K000000018");
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", {}, small.now));
    EXPECT_EQ(small.club.kit().item("K000000026")->state, ItemState::Missing);
    small.scan(launch, "K000000026");
    EXPECT_EQ(small.club.kit().item("K000000026")->state, ItemState::Serviceable);
    EXPECT_THAT(told(*small.club.checks().answer(launch, small.now.today)),
                testing::Contains("was-missing K000000026"));
    ASSERT_TRUE(small.club.checks().undo(launch, {}, small.now));
    EXPECT_EQ(small.club.kit().item("K000000026")->state, ItemState::Missing);
}

TEST(Stocktake, whatIsSeenHereAgainAfterAnotherCheckIsHere) {
    ShedClub small;
    const auto sightings = [&] {
        const auto lines = *small.club.answers().history("K000000026");
        return std::ranges::count(lines, "tag-seen", &core::HistoryLine::kind);
    };
    const auto launch = small.open();
    small.scan(launch, "K000000026");
    small.scan(launch, "K000000026");
    EXPECT_EQ(sightings(), 1);
    small.scan(small.stocktake(), "K000000026");
    const auto scanned = small.scan(launch, "K000000026");
    EXPECT_EQ(scanned.what, core::Scanned::What::SeenBefore);
    EXPECT_EQ(sightings(), 3);
    EXPECT_EQ(small.club.checks().answer(launch, small.now.today)->lines.size(), 6u);
}

TEST(Stocktake, isNotSignedWhileNoTagOfTheClubWasRead) {
    ShedClub small;
    const auto check = small.stocktake();
    small.scan(check, "K00000009T"); // unknown: a scanner that works says nothing about this club's kit
    const auto refused = small.club.checks().sign(check, "Bram Oke", {}, small.now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::NotAllowed);
    EXPECT_THAT(small.club.answers().missingItems(), testing::IsEmpty());
    small.scan(check, "K000000018");
    EXPECT_TRUE(small.club.checks().sign(check, "Bram Oke", {}, small.now));
    EXPECT_EQ(small.club.answers().missingItems().size(), 2u);
}

TEST(Stocktake, whatBelongsElsewhereIsTold) {
    ShedClub small;
    const auto check = small.stocktake();
    small.scan(check, "K000000042"); // of the loft
    small.scan(check, "KGFB6J8WF9"); // Petrel's knife
    small.scan(check, "K00000009T"); // unknown
    const auto answer = *small.club.checks().answer(check, small.now.today);
    EXPECT_THAT(told(answer), testing::IsSupersetOf({"extra K000000042", "extra KGFB6J8WF9"}));
    for (const auto& finding : answer.findings)
        if (finding.kind == FindingKind::Extra) {
            EXPECT_EQ(finding.boat, finding.item.id == "K000000042" ? "loft" : "Petrel");
        }
}

TEST(Stocktake, kitThatIsOutOnABoatIsNotExpected) {
    ShedClub small;
    const auto launch = small.open();
    small.scanAll(launch);
    small.scan(launch, "K000000018"); // the spare paddle goes along
    ASSERT_TRUE(small.club.checks().sign(launch, "Odalys Finch", {}, small.now));
    const auto check = small.stocktake();
    small.scan(check, "K000000026");
    small.scan(check, "K000000034");
    EXPECT_EQ(small.club.checks().answer(check, small.now.today)->outcome,
              core::CheckOutcome::CompleteWithRemarks);
    EXPECT_THAT(told(*small.club.checks().answer(check, small.now.today)),
                ElementsAre("unserviceable K000000034"));
    small.scan(check, "K000000018"); // it lies at home after all
    EXPECT_THAT(told(*small.club.checks().answer(check, small.now.today)),
                ElementsAre("unserviceable K000000034"));
}

TEST(Stocktake, doesNotMakeABoatReadyOrOut) {
    ShedClub small;
    small.import("places.csv", "place\nPetrel\n"); // a place may have a boat's name
    const auto before = small.club.answers().boatConditions(small.now.today);
    const auto check = small.club.checks().openStocktake("petrel", small.now)->check;
    small.scan(check, "K000000018");
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", {}, small.now));
    const auto after = small.club.answers().boatConditions(small.now.today);
    EXPECT_EQ(before.size(), after.size());
    EXPECT_EQ(after[0].kind, before[0].kind);
    EXPECT_FALSE(after[0].since);
    EXPECT_THAT(small.club.checks().unfinished(), IsEmpty());
}

TEST(Stocktake, aPlaceThatIsNoneIsRefusedByName) {
    ShedClub small;
    const auto open = small.club.checks().openStocktake("attic", small.now);
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().kind(), core::ErrorKind::NotFound);
    EXPECT_EQ(open.error(), (core::Error{core::ErrorCode::NoSuchPlace, {"attic", "loft, shed"}}));
}

/// Tow lines with a yearly look, jackets with a cylinder that is weighed.
class RoundClub : public SmallClub {
public:
    RoundClub() {
        import("kit_types.csv", "kit_type\njacket\n");
        import("life_rules.csv", "kit_type,part,rule,kind,n\ntow line,,yearly look,inspect_every,12\n"
                                 "jacket,cylinder,weigh,inspect_every,24\n"
                                 "jacket,,yearly look,inspect_every,12\n");
        import("items.csv",
               "code,kit_type,registered\nK000000018,jacket,2025-01-01\nK000000026,jacket,2025-01-01\n");
        import("parts.csv", "code,part,made\nK000000018,cylinder,2024-05\n");
    }
    core::ServiceOrder order(const std::string& rule, std::vector<std::string> scans) const {
        return {.rule = rule, .day = now.today, .by = "bram oke", .scans = std::move(scans)};
    }
};

std::vector<std::string> refusals(const ServiceRound& round) {
    std::vector<std::string> texts;
    for (const auto& each : round.refused)
        texts.push_back(std::string(core::nameOf(each.why)) + " " + each.item.id);
    return texts;
}

TEST(ServiceRound, onePassForAllThatTheRuleFits) {
    RoundClub small;
    const auto round = *small.club.kit().recordService(
        small.order("Yearly Look",
                    {"K79TE08WXH", "k000 0000 18", "K000000018", "KGFB6J8WF9", "K00000009T", "soup"}),
        small.now);
    ASSERT_EQ(round.recorded.size(), 2u);
    EXPECT_EQ(round.recorded[0].item.id, "K79TE08WXH");
    EXPECT_EQ(round.recorded[0].nextDue, core::CalendarDay::parse("2027-03-14"));
    EXPECT_EQ(round.recorded[1].item.id, "K000000018");
    EXPECT_THAT(refusals(round), ElementsAre("no-such-rule KGFB6J8WF9", "unknown-tag K00000009T"));
    EXPECT_THAT(round.unread, ElementsAre("soup"));
}

TEST(ServiceRound, aPartsRuleIsRecordedWhereThePartIs) {
    RoundClub small;
    const auto round =
        *small.club.kit().recordService(small.order("weigh", {"K000000018", "K000000026"}), small.now);
    ASSERT_EQ(round.recorded.size(), 1u);
    EXPECT_EQ(round.recorded[0].part, "cylinder");
    EXPECT_THAT(refusals(round), ElementsAre("no-such-rule K000000026"));
}

TEST(ServiceRound, theSameRecordTwiceIsToldAndNotWrittenAgain) {
    RoundClub small;
    ASSERT_EQ(small.club.kit()
                  .recordService(small.order("yearly look", {"K79TE08WXH"}), small.now)
                  ->recorded.size(),
              1u);
    const auto facts = small.club.record().verify(false)->facts;
    const auto again = *small.club.kit().recordService(small.order("yearly look", {"K79TE08WXH"}), small.now);
    EXPECT_THAT(again.recorded, IsEmpty());
    EXPECT_THAT(refusals(again), ElementsAre("done-already K79TE08WXH"));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
}

TEST(ServiceRound, aFailedRecordWithdrawsAndALaterPassedOneReleases) {
    RoundClub small;
    auto failed = small.order("yearly look", {"K79TE08WXH"});
    failed.passed = false;
    ASSERT_EQ(small.club.kit().recordService(failed, small.now)->recorded.size(), 1u);
    EXPECT_EQ(small.club.kit().item("K79TE08WXH")->state, ItemState::Unserviceable);
    const auto later = small.at("2026-03-20T10:00:00Z");
    auto passed = small.order("yearly look", {"K79TE08WXH"});
    passed.day = later.today;
    const auto round = *small.club.kit().recordService(passed, later);
    ASSERT_EQ(round.recorded.size(), 1u);
    EXPECT_TRUE(round.recorded[0].released);
    EXPECT_EQ(small.club.kit().item("K79TE08WXH")->state, ItemState::Serviceable);
}

TEST(ServiceRound, aPassedRecordDoesNotReleaseWhatTheCrewWithdrew) {
    RoundClub small;
    const auto check = small.open();
    small.scan(check, "K79TE08WXH");
    ASSERT_TRUE(small.club.checks().withdraw(check, "K79TE08WXH", "cut", small.now));
    ASSERT_TRUE(small.club.kit().recordService(small.order("yearly look", {"K79TE08WXH"}), small.now));
    EXPECT_EQ(small.club.kit().item("K79TE08WXH")->state, ItemState::Unserviceable);
}

TEST(ServiceRound, whatCannotBeIsRefusedWhole) {
    RoundClub small;
    auto tomorrow = small.order("yearly look", {"K79TE08WXH"});
    tomorrow.day = small.now.today.plusDays(1);
    EXPECT_EQ(small.club.kit().recordService(tomorrow, small.now).error().kind(), core::ErrorKind::BadInput);
    auto nobody = small.order("yearly look", {"K79TE08WXH"});
    nobody.by = "Nobody";
    EXPECT_EQ(small.club.kit().recordService(nobody, small.now).error().kind(), core::ErrorKind::NotFound);
    EXPECT_EQ(small.club.kit().recordService(small.order("polish", {"K79TE08WXH"}), small.now).error().kind(),
              core::ErrorKind::NotFound);
    EXPECT_TRUE(small.club.kit().recordService(small.order("yearly look", {"K79TE08WXH"}), small.now));
}

// How a record comes to the club, and what it makes of three knives: one that was never given a state, one
// that was given "serviceable", one that was given "unserviceable".
using Recording =
    std::function<void(ShedClub&, const std::string& code, const std::string& day, bool passed)>;

void recordInRound(ShedClub& small, const std::string& code, const std::string& day, bool passed) {
    ASSERT_EQ(small.club.kit()
                  .recordService({.rule = "yearly look",
                                  .day = *core::CalendarDay::parse(day),
                                  .by = "Bram Oke",
                                  .passed = passed,
                                  .scans = {code}},
                                 small.now)
                  ->recorded.size(),
              1U);
}

Recording recordAsRow(const std::string& by) {
    return [by](ShedClub& small, const std::string& code, const std::string& day, bool passed) {
        core::CellTexts cells{{"code", code}, {"rule", "yearly look"}, {"day", day}};
        if (!passed) cells.emplace_back("passed", "no"); // which is not what an empty cell means
        const auto plan =
            small.club.register_().write({core::SheetId::Services, {{{}, cells, {}}}}, by, small.now);
        ASSERT_TRUE(plan && plan->rejected.empty());
    };
}

void recordByImport(ShedClub& small, const std::string& code, const std::string& day, bool passed) {
    small.import("services.csv",
                 "code,rule,day,passed\n" + code + ",yearly look," + day + (passed ? ",yes\n" : ",no\n"));
}

// docs/rules.md, "A failed record": whoever makes one withdraws an item, whatever state was given before; one
// that came with an import withdraws an item without a given state. An import of items may give a state.
TEST(FailedRecord, withdrawsAlikeHoweverSomebodyWritesIt) {
    const auto knives = {"K000000026", "K000000042", "K000000050"};
    constexpr ItemState good = ItemState::Serviceable, bad = ItemState::Unserviceable;
    struct Way {
        const char* name;
        Recording record;
        std::vector<ItemState> afterFailed, afterPassed;
    };
    for (const Way& way : {Way{"round", recordInRound, {bad, bad, bad}, {good, good, bad}},
                           Way{"row", recordAsRow("Bram Oke"), {bad, bad, bad}, {good, good, bad}},
                           Way{"row of nobody", recordAsRow({}), {bad, bad, bad}, {good, good, bad}},
                           Way{"import", recordByImport, {bad, good, bad}, {good, good, bad}}}) {
        SCOPED_TRACE(way.name);
        ShedClub small;
        small.import("life_rules.csv", "kit_type,rule,kind,n,source\nknife,yearly look,inspect_every,12,s\n");
        small.import("items.csv", "code,kit_type,place,state\nK000000042,knife,loft,serviceable\n"
                                  "K000000050,knife,loft,unserviceable\n");
        const auto expectNow = [&](const std::vector<ItemState>& states, const char* due) {
            std::vector<ItemState> now;
            for (const char* code : knives) {
                const auto record = *small.club.kit().itemRecord(code);
                now.push_back(record.item.state);
                const auto types = small.club.register_().kitTypes();
                const auto knife = std::ranges::find(types, "knife", &core::KitType::name);
                EXPECT_EQ(core::dueDatesOf(record, *knife, small.now.today).front().due->iso(), due) << code;
            }
            EXPECT_EQ(now, states);
            EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
        };
        for (const char* code : knives)
            way.record(small, code, "2026-03-12", false);
        expectNow(way.afterFailed,
                  "2027-03-14"); // counted from its registration: a failed one satisfies nothing
        for (const char* code : knives)
            way.record(small, code, "2026-03-13", true);
        expectNow(way.afterPassed, "2027-03-13");
    }
}

} // namespace
