#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/record/documents.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"
#include "tests/support/statement_count.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace core {
namespace {

using support::DatabaseWork;
using support::publishedKit;
using support::SmallClub;
using support::StatementCount;

std::string answerOf(const Club& club, const std::string& check, CalendarDay today) {
    const auto answer = club.checks().answer(check, today);
    return answer ? textOf(*answer) : support::described(answer.error());
}

/// Compares the answer from memory with that of a reader who opens the file anew.
void expectAsOnDisk(const SmallClub& small, const std::string& check) {
    const auto onDisk = Club::open(small.file(), Club::Access::ReadOnly);
    ASSERT_TRUE(onDisk);
    EXPECT_EQ(answerOf(small.club, check, small.now.today), answerOf(*onDisk, check, small.now.today));
}

/// The same when what was shown last is taken back, by either way to do so, and shown again.
void expectAsOnDiskAfterUndo(SmallClub& small, const std::string& check, const char* code) {
    if (small.club.checks().undoSightingOf(check, code, small.now)) {
        expectAsOnDisk(small, check);
        small.scan(check, code);
        expectAsOnDisk(small, check);
    }
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    expectAsOnDisk(small, check);
    small.scan(check, code);
    expectAsOnDisk(small, check);
}

/// Spare paddles at home in a loft, one of them marked missing, and two people with their own tags.
void fitOut(SmallClub& small) {
    small.import("places.csv", "place\nLoft\n");
    small.import("people.csv", "person,role,tag\nOdalys Finch,driver,P000000011\nBram Oke,crew,\n");
    small.import("items.csv", "code,kit_type,place,state,since\nK000000018,paddle,Loft,,\n"
                              "K000000026,paddle,Loft,,\nK000000034,paddle,Loft,missing,2026-03-01\n");
}

TEST(HeldCheck, answersFromMemoryAsFromDiskAfterEachThingShown) {
    SmallClub small;
    fitOut(small);
    const std::string check = small.open();
    for (const char* code : {"KGFB6J8WF9", "KGFB6J8WF9", "K000000034", "P000000011", "K00000009T",
                             "B00000002Q", "K80NSC1FX4", "K000000018", "KBDWAF2K6T", "KD2289T9SE"}) {
        small.scan(check, code);
        expectAsOnDisk(small, check);
        expectAsOnDiskAfterUndo(small, check, code);
    }
}

TEST(HeldCheck, answersFromMemoryAsFromDiskInAReturnOfWhatIsMissing) {
    SmallClub small;
    fitOut(small);
    const std::string launch = small.open();
    small.scanAll(launch);
    ASSERT_TRUE(small.club.checks().sign(launch, "Odalys Finch", {}, small.now));
    const std::string first = small.open(Phase::Return);
    small.scanAll(first, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().sign(first, "Odalys Finch", {}, small.now)); // the knife is missing now
    const std::string again = small.open();
    small.scanAll(again, "KGFB6J8WF9");
    ASSERT_TRUE(small.club.checks().sign(again, "Odalys Finch", "a swimmer", small.now));
    const std::string check = small.open(Phase::Return);
    expectAsOnDisk(small, check);
    for (const char* code : {"KGFB6J8WF9", "K80NSC1FX4", "K000000034", "K00000009T", "KD2289T9SE"}) {
        small.scan(check, code);
        expectAsOnDisk(small, check);
        expectAsOnDiskAfterUndo(small, check, code);
    }
}

TEST(HeldCheck, answersFromMemoryAsFromDiskInAStocktakeThatFindsWhatWasMissing) {
    SmallClub small;
    fitOut(small);
    const auto loft = small.club.checks().openStocktake("Loft", small.now);
    ASSERT_TRUE(loft);
    expectAsOnDisk(small, loft->check);
    for (const char* code : {"K000000018", "K000000034", "KGFB6J8WF9", "K00000009T", "K000000026"}) {
        small.scan(loft->check, code);
        expectAsOnDisk(small, loft->check);
    }
}

TEST(HeldCheck, answersFromMemoryAsFromDiskAfterWhatIsNoScan) {
    SmallClub small;
    fitOut(small);
    ClubChecks checks = small.club.checks();
    const std::string check = small.open();
    small.scan(check, "KGFB6J8WF9");
    expectAsOnDisk(small, check);
    ASSERT_TRUE(checks.giveNames(check, {"Bram Oke"}, small.now));
    expectAsOnDisk(small, check);
    ASSERT_TRUE(checks.recordPoint(check, "bow chamber", 20, small.now));
    expectAsOnDisk(small, check);
    ASSERT_TRUE(checks.withdraw(check, "KGFB6J8WF9", "bent", small.now));
    expectAsOnDisk(small, check);
    ASSERT_TRUE(checks.undo(check, "taken back", small.now));
    expectAsOnDisk(small, check);
    small.scan(check, "KGFB6J8WF9");
    expectAsOnDisk(small, check);
}

TEST(HeldCheck, keepsTwoChecksApart) {
    SmallClub small;
    const std::string petrel = small.open();
    const std::string tern = small.open(Phase::Launch, "Tern");
    for (const auto& [code, type] : publishedKit) {
        small.scan(petrel, code);
        expectAsOnDisk(small, tern);
        expectAsOnDisk(small, petrel);
    }
}

TEST(HeldCheck, seesWhatAnotherProgramWritesBetweenTwoScans) {
    SmallClub small;
    const std::string check = small.open();
    small.scan(check, "KGFB6J8WF9");
    expectAsOnDisk(small, check);
    auto other = Club::open(small.file());
    ASSERT_TRUE(other);
    const auto mark = small.club.changeMark();
    ASSERT_TRUE(other->checks().withdraw(check, "KGFB6J8WF9", "bent", small.now));
    EXPECT_NE(small.club.changeMark(), mark);
    expectAsOnDisk(small, check);
    ASSERT_TRUE(other->checks().scan(check, ScannedText::typed("K80NSC1FX4"), SeenBy::Typed, small.now));
    small.scan(check, "KD2289T9SE");
    expectAsOnDisk(small, check);
}

TEST(HeldCheck, isAnotherDaysOnAnotherDay) {
    SmallClub small;
    const std::string check = small.open();
    const auto answer = small.club.checks().answer(check, *CalendarDay::from(2026, 3, 15));
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->today, *CalendarDay::from(2026, 3, 15));
    EXPECT_EQ(small.club.checks().answer(check, small.now.today)->today, small.now.today);
}

TEST(ChangeMark, staysWhileNothingIsWritten) {
    SmallClub small;
    const std::string check = small.open();
    small.scan(check, "KGFB6J8WF9");
    const auto mark = small.club.changeMark();
    small.scan(check, "KGFB6J8WF9"); // seen before: nothing to write
    EXPECT_TRUE(small.club.checks().answer(check, small.now.today));
    EXPECT_EQ(small.club.changeMark(), mark);
    small.scan(check, "K80NSC1FX4");
    EXPECT_NE(small.club.changeMark(), mark);
}

/// People, entries of the log and tags that were replaced, which no scan of Petrel's kit touches.
void grow(SmallClub& small) {
    std::string people = "person,role\nOdalys Finch,driver\nBram Oke,crew\n";
    std::string items = "code,kit_type,boat\n";
    const auto codes = small.club.kit().mintCodes(60);
    for (int i = 0; i < 60; ++i) {
        people += fmt::format("Hand {},crew\n", i);
        items += codes[static_cast<std::size_t>(i)] + ",paddle,Tern\n";
    }
    small.import("people.csv", people);
    small.import("items.csv", items);
    for (const std::string& code : codes) {
        if (!small.club.kit().replaceTag(code, "Bram Oke", small.now)) throw std::runtime_error("no new tag");
        if (!small.club.log().add("Tern", "rub mark " + code, Severity::Remark, "Bram Oke", small.now))
            throw std::runtime_error("no entry");
    }
}

DatabaseWork workOfOneScan(bool isGrown) {
    SmallClub small;
    if (isGrown) grow(small);
    const std::string check = small.open();
    small.scan(check, "K80NSC1FX4");
    small.close();
    StatementCount count;
    small.club = Club::open(small.file()).value();
    EXPECT_TRUE(small.club.checks().answer(check, small.now.today)); // as when the page is opened
    small.scan(check, "KBDWAF2K6T");                                 // prepares what is prepared once
    EXPECT_TRUE(small.club.checks().answer(check, small.now.today));
    count.take();
    small.scan(check, "KGFB6J8WF9");
    EXPECT_TRUE(small.club.checks().answer(check, small.now.today));
    return count.take();
}

TEST(WorkOfAScan, doesNotGrowWithPeopleLogAndReplacedTags) {
    const DatabaseWork small = workOfOneScan(false);
    EXPECT_GT(small.statements, 5) << "the counter counts";
    EXPECT_GT(small.rows, 5);
    EXPECT_EQ(workOfOneScan(true), small);
}

} // namespace
} // namespace core
