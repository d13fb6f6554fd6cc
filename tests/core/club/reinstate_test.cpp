#include "core/answers/missing_list.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <gtest/gtest.h>

namespace {

using core::ItemState;
using support::SmallClub;

struct Reinstating : testing::Test {
    static constexpr auto knife = "KGFB6J8WF9";

    core::Outcome reinstate(const char* why = "found in the van") {
        return small.club.kit().reinstate(knife, why, "Bram Oke", small.now);
    }
    ItemState state() { return small.club.kit().item(knife)->state; }
    void writeOff() { ASSERT_TRUE(small.club.kit().writeOff(knife, "lost", "Bram Oke", small.now)); }

    SmallClub small;
};

TEST_F(Reinstating, aWrittenOffItemIsInUseAgain) {
    writeOff();
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Serviceable);
    EXPECT_EQ(small.club.kit().item(knife)->why, "") << "no longer lost";
    EXPECT_NE(small.club.answers().history(knife)->back().body.find("found in the van"), std::string::npos);
}

TEST_F(Reinstating, whatWasUnserviceableIsSoAgain) {
    ASSERT_TRUE(small.club.checks().withdraw(small.open(), knife, "loose grip", small.now));
    writeOff();
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Unserviceable);
    EXPECT_TRUE(small.club.kit().release(knife, "Bram Oke", small.now));
    EXPECT_EQ(state(), ItemState::Serviceable);
}

/// docs/register-csv.md: only a passed record of the rule, or a release, ends what a failed one did.
TEST_F(Reinstating, aFailedRecordWithdrawsItStillAndAPassedOneReleasesIt) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    const auto record = [&](bool passed) {
        core::ServiceOrder order{.rule = "yearly look", .day = small.now.today.plusDays(passed ? 0 : -1)};
        order.by = "Bram Oke";
        order.passed = passed;
        order.scans = {knife};
        return small.club.kit().recordService(order, small.now);
    };
    ASSERT_TRUE(record(false));
    ASSERT_EQ(state(), ItemState::Unserviceable);
    writeOff();
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Unserviceable);
    ASSERT_TRUE(record(true));
    EXPECT_EQ(state(), ItemState::Serviceable);
}

/// docs/register-csv.md: where no state is given, the records decide.
TEST_F(Reinstating, whatAnImportedRecordHeldIsReleasedByAPassedOne) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    small.import("services.csv", "code,rule,day,passed\nKGFB6J8WF9,yearly look,2026-03-01,no\n");
    ASSERT_EQ(state(), ItemState::Unserviceable);
    writeOff();
    ASSERT_TRUE(reinstate());
    ASSERT_EQ(state(), ItemState::Unserviceable);
    core::ServiceOrder order{.rule = "yearly look", .day = small.now.today};
    order.by = "Bram Oke";
    order.scans = {knife};
    ASSERT_TRUE(small.club.kit().recordService(order, small.now));
    EXPECT_EQ(state(), ItemState::Serviceable);
}

/// Its damage was taken back while it was written off, and a round had failed it meanwhile.
TEST_F(Reinstating, whatFailedBeforeItWasWrittenOffIsUnserviceable) {
    small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,service_every,12\n");
    small.import("items.csv", "code,state\nKGFB6J8WF9,serviceable\n");
    const auto check = small.open();
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));
    core::ServiceOrder order{.rule = "yearly look", .day = small.now.today};
    order.by = "Bram Oke";
    order.passed = false;
    order.scans = {knife};
    ASSERT_TRUE(small.club.kit().recordService(order, small.now));
    writeOff();
    ASSERT_TRUE(small.club.checks().undo(check, {}, small.now));
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Unserviceable);
}

/// Written off, not back from a trip, and written off once more.
TEST_F(Reinstating, whatIsWrittenOffTwiceWithMissingBetweenIsInUseAgain) {
    const auto launch = small.open();
    small.scanAll(launch);
    ASSERT_TRUE(small.club.checks().sign(launch, "Bram Oke", "", small.now));
    writeOff();
    const auto back = small.open(core::Phase::Return);
    small.scanAll(back, knife);
    ASSERT_TRUE(small.club.checks().sign(back, "Bram Oke", "", small.now));
    if (state() != ItemState::WrittenOff) writeOff();
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Serviceable);
}

TEST_F(Reinstating, aDamageThatIsTakenBackAfterwardsLeavesNoCopy) {
    const auto check = small.open();
    ASSERT_TRUE(small.club.checks().withdraw(check, knife, "loose grip", small.now));
    const auto launch = small.club.checks().open("Tern", core::Phase::Launch, small.now)->check;
    small.scan(launch, knife);
    ASSERT_TRUE(small.club.checks().sign(launch, "Bram Oke", "a drill afloat", small.now));
    const auto back = small.club.checks().open("Tern", core::Phase::Return, small.now)->check;
    ASSERT_TRUE(small.club.checks().sign(back, "Bram Oke", "", small.now));
    ASSERT_EQ(state(), ItemState::Missing);
    writeOff();
    ASSERT_TRUE(reinstate());
    ASSERT_EQ(state(), ItemState::Unserviceable);
    ASSERT_TRUE(small.club.checks().undo(check, {}, small.now));
    EXPECT_EQ(state(), ItemState::Serviceable);
}

TEST_F(Reinstating, whatCameIntoTheRegisterWrittenOffKeepsTheRest) {
    small.import("items.csv", "code,kit_type,boat,state,since,why,serial\n"
                              "KCYV1T03ZE,paddle,Petrel,written off,2025-01-01,worn,S7\n");
    ASSERT_TRUE(small.club.kit().reinstate("KCYV1T03ZE", "new blade", "Bram Oke", small.now));
    const core::Item item = *small.club.kit().item("KCYV1T03ZE");
    EXPECT_EQ(item.state, ItemState::Serviceable);
    EXPECT_EQ(item.kitType, "paddle");
    EXPECT_EQ(item.serial, "S7");
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
    EXPECT_EQ(small.club.kit().item("KCYV1T03ZE")->state, ItemState::Serviceable)
        << "made anew from all facts";
}

TEST_F(Reinstating, whatWasMissingBeforeIsNoLongerLookedFor) {
    small.import("items.csv", "code,state,since\nKGFB6J8WF9,missing,2026-03-01\n");
    writeOff();
    ASSERT_TRUE(reinstate());
    EXPECT_EQ(state(), ItemState::Serviceable);
}

TEST_F(Reinstating, onlyWhatIsWrittenOffAndOnlyForAReason) {
    EXPECT_EQ(reinstate().error().code, core::ErrorCode::NotWrittenOff);
    writeOff();
    EXPECT_EQ(reinstate("ok").error().code, core::ErrorCode::ReasonTooShort);
    EXPECT_EQ(reinstate("K80NSC1FX4").error().code, core::ErrorCode::ReasonIsTag);
    EXPECT_EQ(state(), ItemState::WrittenOff);
    EXPECT_TRUE(reinstate());
}

} // namespace
