#include "core/answers/board.h"
#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/tag/tag_code.h"
#include "tests/core/club/small_club.h"
#include "tests/support/watched_disk.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace {

using core::CheckOutcome;
using core::FindingKind;
using core::Phase;
using core::Scanned;
using support::SmallClub;

int missingOf(const core::CheckAnswer& answer, const std::string& kitType) {
    for (const core::Finding& finding : answer.findings)
        if (finding.kind == FindingKind::Missing && finding.kitType == kitType) return finding.quantity;
    return 0;
}

bool hasFinding(const core::CheckAnswer& answer, FindingKind kind) {
    return std::any_of(answer.findings.begin(), answer.findings.end(),
                       [&](const core::Finding& finding) { return finding.kind == kind; });
}

// The published six-item list (see small_club.h): all of it there, then each piece in turn left on the beach.
TEST(Club, publishedKitIsCompleteAndEachMissingPieceIsNamed) {
    for (const auto& [left, type] : support::publishedKit) {
        SmallClub small;
        const auto check = small.open();
        small.scanAll(check, left);
        const auto shortAnswer = small.club.checks().answer(check, small.now.today);
        EXPECT_EQ(shortAnswer->outcome, CheckOutcome::Incomplete) << type;
        EXPECT_EQ(missingOf(*shortAnswer, type), 1) << type;
        EXPECT_EQ(std::count_if(shortAnswer->findings.begin(), shortAnswer->findings.end(),
                                [](const auto& f) { return f.severity == core::Severity::Stop; }),
                  1);
        small.scan(check, left);
        const auto whole = small.club.checks().answer(check, small.now.today);
        EXPECT_FALSE(hasFinding(*whole, FindingKind::Missing)) << type;
    }
}

TEST(Club, onePaddleShownTwiceIsStillOnePaddle) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check, "K80NSC1FX4");
    EXPECT_EQ(small.scan(check, "KBDWAF2K6T").what, Scanned::What::SeenBefore);
    EXPECT_EQ(missingOf(*small.club.checks().answer(check, small.now.today), "paddle"), 1);
    EXPECT_EQ(small.scan(check, "K80NSC1FX4").what, Scanned::What::NewItem);
    EXPECT_EQ(missingOf(*small.club.checks().answer(check, small.now.today), "paddle"), 0);
}

TEST(Club, aSightingIsOnDiskBeforeItIsAnsweredAndTheCheckGoesOn) {
    SmallClub small;
    const auto check = small.open();
    small.scan(check, "K80NSC1FX4");
    // A second connection sees what a machine would find after a power cut at this moment.
    auto other = core::Club::open(small.file());
    ASSERT_TRUE(other);
    const auto again = other->checks().open("petrel", Phase::Launch, small.now);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->resumed);
    EXPECT_EQ(again->check, check);
    EXPECT_EQ(missingOf(*other->checks().answer(check, small.now.today), "paddle"), 1);
}

TEST(Club, aNewSightingCostsOneSyncAndARepeatedOneNone) {
    const support::WatchedDisk disk;
    SmallClub small;
    const auto check = small.open();
    small.scan(check, "K80NSC1FX4");
    const int before = disk.syncs();
    small.scan(check, "KBDWAF2K6T");
    const int one = disk.syncs();
    EXPECT_EQ(one - before, 1);
    small.scan(check, "KBDWAF2K6T");
    EXPECT_EQ(disk.syncs(), one);
}

TEST(Club, undoTakesTheNewestSightingBackAndKeepsItInTheRecord) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check);
    small.scan(check, small.club.kit().mintCodes(1).front());
    EXPECT_TRUE(hasFinding(*small.club.checks().answer(check, small.now.today), FindingKind::UnknownTag));
    const auto facts = small.club.record().verify(false)->facts;
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    EXPECT_FALSE(hasFinding(*small.club.checks().answer(check, small.now.today), FindingKind::UnknownTag));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts + 1);
}

TEST(Club, undoOfNothingIsRefused) {
    SmallClub small;
    const auto check = small.open();
    const auto undone = small.club.checks().undo(check, "taken back", small.now);
    ASSERT_FALSE(undone);
    EXPECT_EQ(undone.error().kind(), core::ErrorKind::NotFound);
}

TEST(Club, anIncompleteLaunchIsSignedOnlyWithAReason) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check, "KGFB6J8WF9");
    const auto refused = small.club.checks().sign(check, "Odalys Finch", "", small.now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::NotAllowed);
    EXPECT_FALSE(small.club.checks().sign(check, "Odalys Finch", " \t", small.now)) << "blanks are no reason";
    const auto done = small.club.checks().sign(check, "odalys finch", "swimmer in the water", small.now);
    ASSERT_TRUE(done);
    EXPECT_EQ(done->by, "Odalys Finch");
    EXPECT_EQ(done->urgent, "swimmer in the water");
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).front().boat,
              "Tern"); // never checked stands first
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().urgent, "swimmer in the water");
}

TEST(Club, aSignedCheckNeverChanges) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "not urgent at all", small.now));
    EXPECT_FALSE(small.club.checks().scan(check, core::ScannedText::typed("K80NSC1FX4"), core::SeenBy::Typed,
                                          small.now));
    EXPECT_FALSE(small.club.checks().sign(check, "Bram Oke", "", small.now));
    EXPECT_FALSE(small.club.checks().undo(check, "taken back", small.now));
    const auto before = small.club.checks().answer(check, small.now.today);
    small.import("manifest_lines.csv", "boat_class,kit_type,quantity\ninflatable,knife,5\n");
    const auto after = small.club.checks().answer(check, small.now.today);
    EXPECT_EQ(after->outcome, before->outcome);
    EXPECT_EQ(after->lines.front().wanted, 1);
    EXPECT_EQ(after->findings.size(), before->findings.size());
    EXPECT_TRUE(after->score == before->score);
    const auto next = small.open();
    EXPECT_EQ(small.club.checks().answer(next, small.now.today)->lines.front().wanted, 5);
}

TEST(Club, whatDidNotComeBackIsMissingWithItsChainAndIsFoundByAnyLaterCheck) {
    SmallClub small;
    const auto launch = small.open();
    ASSERT_TRUE(small.club.checks().giveNames(launch, {"Odalys Finch", "Bram Oke"}, small.now));
    small.scanAll(launch);
    ASSERT_TRUE(small.club.checks().sign(launch, "Odalys Finch", "", small.now));
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().kind,
              core::BoatCondition::Kind::Out);

    small.now = small.at("2026-03-14T09:10:00Z");
    const auto back = small.open(Phase::Return);
    small.scanAll(back, "KGFB6J8WF9");
    const auto signedBack = small.club.checks().sign(back, "Bram Oke", "", small.now);
    ASSERT_TRUE(signedBack);
    EXPECT_EQ(signedBack->answer.outcome, CheckOutcome::Incomplete);

    const auto missing = small.club.answers().missingItems();
    ASSERT_EQ(missing.size(), 1U);
    EXPECT_EQ(missing[0].item.id, "KGFB6J8WF9");
    EXPECT_EQ(missing[0].boat, "Petrel");
    ASSERT_EQ(missing[0].chain.size(), 3U);
    EXPECT_EQ(missing[0].chain[0].what, core::ChainLink::What::Launched);
    EXPECT_THAT(missing[0].chain[0].by, testing::ElementsAre("Odalys Finch", "Bram Oke"));
    EXPECT_EQ(missing[0].chain[2].what, core::ChainLink::What::NotReturned);
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().kind,
              core::BoatCondition::Kind::NotReady);

    const auto elsewhere = small.open(Phase::Launch, "Tern");
    small.scan(elsewhere, "KGFB6J8WF9");
    EXPECT_TRUE(hasFinding(*small.club.checks().answer(elsewhere, small.now.today), FindingKind::WasMissing));
    EXPECT_TRUE(small.club.answers().missingItems().empty());
    EXPECT_EQ(small.club.kit().item("KGFB6J8WF9")->state, core::ItemState::Serviceable);
    const auto whyPetrel = [&] {
        for (const core::BoatCondition& boat : small.club.answers().boatConditions(small.now.today))
            if (boat.boat == "Petrel") return boat.reasons.at(0);
        return core::NotReadyReason{};
    };
    const core::NotReadyReason found = whyPetrel();
    EXPECT_EQ(found.kind, core::NotReadyReason::Kind::SeenElsewhere) << "nobody need search it any more";
    EXPECT_EQ(found.elsewhere, core::Location::boat("Tern"));
    ASSERT_TRUE(small.club.checks().undoSightingOf(elsewhere, "KGFB6J8WF9",
                                                   small.now)); // it was a wrong scan: still missing
    EXPECT_EQ(small.club.answers().missingItems().size(), 1U);
    EXPECT_EQ(whyPetrel().kind, core::NotReadyReason::Kind::Finding);
}

core::BoatCondition conditionOfPetrel(SmallClub& small) {
    for (core::BoatCondition& boat : small.club.answers().boatConditions(small.now.today))
        if (boat.boat == "Petrel") return boat;
    return {};
}

TEST(Club, whatAnotherBoatBroughtInBeforeIsNotLookedForAtSea) {
    SmallClub small;
    const auto launch = small.open();
    small.scanAll(launch);
    ASSERT_TRUE(small.club.checks().sign(launch, "Odalys Finch", "", small.now));
    const auto other = small.open(Phase::Launch, "Tern");
    ASSERT_TRUE(small.club.checks().sign(other, "Bram Oke", "a call out", small.now));
    const auto otherBack = small.open(Phase::Return, "Tern");
    small.scan(otherBack, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().sign(otherBack, "Bram Oke", "", small.now));
    const auto back = small.open(Phase::Return);
    small.scanAll(back, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().sign(back, "Odalys Finch", "", small.now));
    const auto reasons = conditionOfPetrel(small).reasons;
    ASSERT_EQ(reasons.size(), 1U);
    EXPECT_EQ(reasons[0].kind, core::NotReadyReason::Kind::SeenElsewhere);
    EXPECT_EQ(reasons[0].elsewhere, core::Location::boat("Tern"));
}

/// docs/rules.md, "Kit ready": the reason stands until the boat is whole again; then it is gone for good.
TEST(Club, aScanOrOneTakenBackThatMakesABoatWholeEndsItsUrgentLaunch) {
    for (const bool isTakenBack : {true, false}) {
        SmallClub small;
        small.import("life_rules.csv", "kit_type,rule,kind\nknife,stamp,stamped\n");
        small.import("items.csv", "code,stamped\nKGFB6J8WF9,2020-01-01\n");
        for (const Phase phase : {Phase::Launch, Phase::Return}) {
            const auto check = small.open(phase);
            small.scanAll(check);
            ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "a call out", small.now));
        }
        const auto elsewhere = small.open(Phase::Launch, "Tern");
        small.scan(elsewhere, "KGFB6J8WF9");
        small.import("items.csv", "code,stamped\nKGFB6J8WF9,2028-01-01\n");
        ASSERT_EQ(conditionOfPetrel(small).urgent, "a call out");
        if (isTakenBack) {
            ASSERT_TRUE(small.club.checks().undoSightingOf(elsewhere, "KGFB6J8WF9", small.now));
        } else {
            small.scan(small.open(), "KGFB6J8WF9");
        }
        ASSERT_EQ(conditionOfPetrel(small).kind, core::BoatCondition::Kind::KitReady);
        ASSERT_TRUE(
            small.club.log().add("Petrel", "hole in a tube", core::Severity::Stop, "Bram Oke", small.now));
        EXPECT_EQ(conditionOfPetrel(small).kind, core::BoatCondition::Kind::NotReady);
        EXPECT_EQ(conditionOfPetrel(small).urgent, "");
    }
}

TEST(Club, anEntryThatIsClosedAfterTheReturnAsksForACheck) {
    SmallClub small;
    const auto entry =
        small.club.log().add("Petrel", "hole in a tube", core::Severity::Stop, "Bram Oke", small.now);
    ASSERT_TRUE(entry);
    for (const Phase phase : {Phase::Launch, Phase::Return}) {
        const auto check = small.open(phase);
        small.scanAll(check);
        ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "a call out", small.now));
    }
    ASSERT_EQ(conditionOfPetrel(small).reasons.at(0).kind, core::NotReadyReason::Kind::Finding);
    ASSERT_TRUE(small.club.log().close(entry->id, "patched", "Bram Oke", small.now));
    EXPECT_EQ(conditionOfPetrel(small).reasons.at(0).kind, core::NotReadyReason::Kind::LogClosed);
}

TEST(Club, aBoatThatCameBackWholeIsKitReadyUntilSomethingOfItsKitChanges) {
    SmallClub small;
    for (const Phase phase : {Phase::Launch, Phase::Return}) {
        const auto check = small.open(phase);
        small.scanAll(check);
        ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "", small.now));
    }
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().kind,
              core::BoatCondition::Kind::KitReady);

    const auto elsewhere = small.open(Phase::Launch, "Tern");
    small.scan(elsewhere, "KD2289T9SE");
    const auto moved = small.club.answers().boatConditions(small.now.today);
    EXPECT_THAT(moved, testing::Each(
                           testing::Field(&core::BoatCondition::kind, core::BoatCondition::Kind::NotReady)));
    ASSERT_TRUE(small.club.checks().undo(elsewhere, "taken back", small.now));
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).back().kind,
              core::BoatCondition::Kind::KitReady);
    EXPECT_FALSE(small.club.log().add("Petrel", "  ", core::Severity::Stop, "Bram Oke", small.now));
    ASSERT_TRUE(
        small.club.log().add("Petrel", "port bung seeps", core::Severity::Stop, "Bram Oke", small.now));
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).front().boat, "Petrel");
    EXPECT_EQ(small.club.answers().boatConditions(small.now.today).front().reasons.size(), 1U);
}

// Rules 4 and the safest reading of "kit ready": short when it went out and short when it came back is
// short.
TEST(Club, aBoatLaunchedShortIsNotKitReadyWhenItIsBack) {
    SmallClub small;
    for (const Phase phase : {Phase::Launch, Phase::Return}) {
        const auto check = small.open(phase);
        small.scanAll(check, "KGFB6J8WF9");
        ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "swimmer in the water", small.now));
    }
    const auto petrel = small.club.answers().boatConditions(small.now.today).front();
    EXPECT_EQ(petrel.kind, core::BoatCondition::Kind::NotReady);
    EXPECT_EQ(petrel.urgent, "swimmer in the water");
}

TEST(Club, historyTellsWhatWasRecordedAboutAnItemABoatAndAPerson) {
    SmallClub small;
    const auto check = small.open();
    ASSERT_TRUE(small.club.checks().giveNames(check, {"Bram Oke"}, small.now));
    small.scan(check, "K80NSC1FX4");
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    const auto kindsOf = [&](const std::string& subject) {
        std::vector<std::string> kinds;
        const auto history = small.club.answers().history(subject);
        for (const core::HistoryLine& line : history.value())
            kinds.push_back(line.kind);
        return kinds;
    };
    EXPECT_THAT(kindsOf("k80n sc1f x4"), testing::ElementsAre("item", "tag-seen", "act-taken-back"));
    EXPECT_THAT(kindsOf("petrel"), testing::ElementsAre("boat", "check-opened", "names-given"));
    EXPECT_THAT(kindsOf("Bram Oke"), testing::ElementsAre("person", "names-given"));
    EXPECT_FALSE(small.club.answers().history("nobody"));
}

TEST(Club, damagedKitCountsForNoBoatAndStandsInTheLog) {
    SmallClub small;
    const auto check = small.open();
    small.scanAll(check);
    ASSERT_TRUE(small.club.checks().withdraw(check, "kd22 89t9 se", "aerial broken", small.now));
    const auto answer = small.club.checks().answer(check, small.now.today);
    EXPECT_TRUE(hasFinding(*answer, FindingKind::Unserviceable));
    EXPECT_EQ(missingOf(*answer, "radio"), 1);
    const auto log = small.club.log().entries();
    ASSERT_EQ(log->size(), 1U);
    EXPECT_EQ(log->front().text, "aerial broken");
    EXPECT_EQ(log->front().severity, core::Severity::Stop);
}

TEST(Club, pointsAreRecordedAndRefusedByName) {
    SmallClub small;
    const auto check = small.open();
    EXPECT_TRUE(small.club.checks().recordPoint(check, "Bow Chamber", 25, small.now));
    EXPECT_TRUE(
        hasFinding(*small.club.checks().answer(check, small.now.today), FindingKind::PointOutOfRange));
    EXPECT_TRUE(small.club.checks().recordPoint(check, "bow chamber", 20, small.now));
    EXPECT_FALSE(
        hasFinding(*small.club.checks().answer(check, small.now.today), FindingKind::PointOutOfRange));
    EXPECT_FALSE(small.club.checks().recordPoint(check, "stern chamber", 20, small.now));
}

TEST(Club, tagsOfBoatsPeopleAndControlsMeanWhatTheyAre) {
    SmallClub small;
    small.import("boats.csv", "boat,tag\nPetrel,B00000001S\nTern,B00000002Q\n");
    small.import("people.csv", "person,tag\nBram Oke,P000000011\n");
    const auto check = small.open();
    EXPECT_EQ(small.scan(check, "B00000001S").what, Scanned::What::Ignored);
    EXPECT_EQ(small.scan(check, "B00000002Q").what, Scanned::What::Unread);
    EXPECT_EQ(small.scan(check, "P000000011").what, Scanned::What::PersonNamed);
    EXPECT_THAT(small.club.checks().namesOf(check), testing::ElementsAre("Bram Oke"));
    EXPECT_EQ(small.scan(check, "C00000004S").control, core::ControlTag::Undo);
    EXPECT_EQ(small.scan(check, "]Q1K80NSC1FX4").what,
              Scanned::What::NewItem); // as a hand-held scanner may type it
    EXPECT_EQ(small.scan(check, "4099052913969").what, Scanned::What::Unread);
    EXPECT_FALSE(hasFinding(*small.club.checks().answer(check, small.now.today), FindingKind::UnknownTag));
}

} // namespace
