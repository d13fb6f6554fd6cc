#include "core/answers/history.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "tests/core/club/pin_club.h"

#include <gmock/gmock.h>

namespace {

using core::Error;
using core::ErrorCode;
using support::pin;

class Pins : public testing::Test {
protected:
    core::ClubPins pins() { return full.club.pins(); }
    ErrorCode codeOf(const core::Outcome& outcome) {
        return outcome ? ErrorCode::EndOfCodes : outcome.error().code;
    }
    std::vector<ErrorCode> problems() {
        std::vector<ErrorCode> codes;
        const auto found = full.club.record().verify(false);
        for (const Error& problem : found->problems)
            codes.push_back(problem.code);
        return codes;
    }
    core::Database file() { return {full.file(), core::Database::Mode::ReadWrite}; }

    support::PinClub full;
};

TEST_F(Pins, holdTenMinutesAfterTheLastProvenAct) {
    EXPECT_EQ(pins().officers(), std::vector<std::string>{"Bram Oke"});
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded);
    ASSERT_TRUE(full.unlock());
    full.clock.pass(599);
    EXPECT_TRUE(full.act());
    ASSERT_TRUE(pins().unlocked());
    EXPECT_EQ(pins().unlocked()->person, "Bram Oke");
    EXPECT_EQ(pins().unlocked()->until.millis(), full.clock.wall + 600'000);
    full.clock.pass(599);
    EXPECT_TRUE(full.act()) << "each proven act begins them anew";
    full.scan(full.stillOpen, "KGFB6J8WF9");
    full.clock.wall -= 3'600'000;
    full.clock.pass(300);
    EXPECT_TRUE(pins().unlocked());
    full.clock.pass(300);
    EXPECT_FALSE(pins().unlocked()) << "a crew's act does not, nor does a clock that is set back";
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded);
}

TEST_F(Pins, areAskedForAnewAfterLockingAndInAnotherProgram) {
    ASSERT_TRUE(full.unlock());
    pins().lock();
    EXPECT_FALSE(pins().unlocked());
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded);
    ASSERT_TRUE(full.unlock());
    auto other = core::Club::open(full.file()).value();
    EXPECT_EQ(codeOf(other.record().nameMachine("van", {})), ErrorCode::PinNeeded);
    EXPECT_TRUE(full.act());
    // Another PIN was set elsewhere: what was unlocked by the old one is locked.
    full.givePin("Bram Oke");
    EXPECT_FALSE(pins().unlocked());
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded);
}

TEST_F(Pins, afterFiveWrongOnesTheNextWaitsAndTwiceAsLongEachTime) {
    for (int i = 0; i < 4; ++i)
        EXPECT_EQ(full.unlock("0000").error(), (Error{ErrorCode::PinWrong, {"Bram Oke"}}));
    EXPECT_EQ(codeOf(pins().set("Bram Oke", pin("1111"), {})), ErrorCode::PinNeeded);
    EXPECT_EQ(codeOf(full.unlock("0000")), ErrorCode::PinWrong);
    EXPECT_EQ(full.unlock().error(), (Error{ErrorCode::PinWait, {"30", "Bram Oke"}})) << "also the right one";
    full.clock.pass(29);
    EXPECT_EQ(full.unlock().error().arguments.front(), "1");
    full.clock.pass(1);
    EXPECT_EQ(codeOf(full.unlock("0000")), ErrorCode::PinWrong);
    EXPECT_EQ(full.unlock().error().arguments.front(), "60");
    // The program is started anew, and the computer, with its clock set back by an hour: once more the wait.
    full.club = core::Club::open(full.file()).value();
    full.club.pins().goBy(full.clock);
    full.clock.pass(20);
    EXPECT_EQ(full.unlock().error().arguments.front(), "40");
    full.clock.restart();
    full.clock.pass(10);
    EXPECT_EQ(full.unlock().error().arguments.front(), "30") << "its clock tells what went by";
    full.clock.restart();
    full.clock.wall -= 3'600'000;
    EXPECT_EQ(full.unlock().error().arguments.front(), "60");
    full.clock.pass(59);
    full.clock.wall -= 3'600'000;
    EXPECT_EQ(full.unlock().error().arguments.front(), "1") << "setting it back gains and costs no more";
    full.clock.pass(1);
    EXPECT_TRUE(full.unlock());
    EXPECT_EQ(file().number("SELECT count(*) FROM wrong_pin"), 0) << "a right one is a new beginning";
    EXPECT_THAT(problems(), testing::IsEmpty());
}

TEST_F(Pins, waitNoLongerThanAQuarterOfAnHour) {
    const std::vector<std::pair<int, std::string>> published{
        {5, "30"}, {6, "60"}, {7, "120"}, {8, "240"}, {9, "480"}, {10, "900"}, {11, "900"}, {500, "900"}};
    EXPECT_EQ(codeOf(full.unlock("0000")), ErrorCode::PinWrong);
    for (const auto& [wrong, seconds] : published) {
        file().script("UPDATE wrong_pin SET wrong = " + std::to_string(wrong));
        EXPECT_EQ(full.unlock().error().arguments.front(), seconds) << wrong;
    }
    // Counted for each computer by itself: the file may be carried to another one.
    file().script("UPDATE wrong_pin SET computer = 'elsewhere'");
    EXPECT_TRUE(full.unlock());
}

TEST_F(Pins, countOnlyOfGearOfficersWhoAreHere) {
    EXPECT_EQ(codeOf(pins().unlock("Odalys Finch", pin("4711"))), ErrorCode::NotGearOfficer);
    EXPECT_EQ(codeOf(pins().unlock("Nobody", pin("4711"))), ErrorCode::NoSuchPerson);
    ASSERT_TRUE(full.unlock());
    full.import("people.csv", "person,until\nBram Oke,2026-03-14\n");
    EXPECT_TRUE(pins().anySet()) << "the last day counts";
    full.clock.wall = core::Instant::parse("2026-03-15T11:59:59.999Z")->millis();
    EXPECT_TRUE(pins().anySet()) << "until it is over everywhere, wherever TZ says that the computer stands";
    full.clock.wall += 1;
    EXPECT_FALSE(pins().anySet());
    EXPECT_TRUE(full.act()) << "nobody is left who could open it";
    full.import("people.csv", "person,role\nOdalys Finch,gear officer\n");
    EXPECT_EQ(pins().officers(), std::vector<std::string>{"Odalys Finch"});
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded);
    EXPECT_EQ(codeOf(full.unlock()), ErrorCode::NotGearOfficer);
}

TEST_F(Pins, areChangedByWhoeverKnowsThemAndByAGearOfficer) {
    const core::Pin own = pin("4711"), wrong = pin("0000");
    EXPECT_EQ(codeOf(pins().set("Odalys Finch", pin("1111"), {})), ErrorCode::PinNeeded);
    EXPECT_EQ(codeOf(pins().set("Odalys Finch", pin("1111"), {}, &wrong)), ErrorCode::PinWrong);
    ASSERT_TRUE(pins().set("Odalys Finch", pin("1111"), "Odalys Finch", &own));
    EXPECT_EQ(file().number("SELECT count(*) FROM private_cell WHERE field = 'pin'"), 2)
        << "of the one before nothing is kept";
    ASSERT_TRUE(full.unlock());
    EXPECT_TRUE(pins().clear("Odalys Finch", "Bram Oke"));
    EXPECT_FALSE(pins().isSet("Odalys Finch"));
    EXPECT_EQ(codeOf(pins().clear("Odalys Finch", "Bram Oke")), ErrorCode::NoPinSet);
    const auto history = full.club.answers().history("Odalys Finch");
    ASSERT_TRUE(history);
    EXPECT_EQ(history->back().kind, "pin-cleared");
    EXPECT_EQ(history->back().proven, "Bram Oke");
    EXPECT_EQ(history->back().machineName, "shed");
    EXPECT_THAT(problems(), testing::IsEmpty());
}

TEST_F(Pins, areTakenOutOfTheFileWithThePerson) {
    ASSERT_TRUE(full.unlock());
    ASSERT_TRUE(full.club.record().eraseMeasures("Bram Oke", {}));
    EXPECT_EQ(file().number("SELECT count(*) FROM private_cell WHERE value LIKE '$argon2id%'"), 1)
        << "another's";
    EXPECT_FALSE(pins().isSet("Bram Oke"));
    EXPECT_FALSE(pins().anySet());
    EXPECT_TRUE(full.act());
    EXPECT_THAT(problems(), testing::IsEmpty());
    ASSERT_TRUE(full.club.record().verify(true)->problems.empty());
    EXPECT_FALSE(pins().isSet("Bram Oke"));
}

TEST_F(Pins, comeInWithAnotherMachinesRecord) {
    const auto copy = full.folder / "van.tholepin";
    ASSERT_TRUE(full.unlock());
    ASSERT_TRUE(core::copyClub(full.file(), copy, false));
    // Written after the copy was made, so that the copy goes on as a machine of its own.
    full.import("people.csv", "person,role\nOdalys Finch,gear officer\n");
    {
        core::Database database(copy, core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger ledger(database);
        ledger.append(core::MachineNamed{"van"}, {});
        ledger.append(core::PinCleared{"Bram Oke"}, {});
        ledger.append(core::PinSet{"Odalys Finch", support::sealed4711}, {});
        transaction.commit();
    }
    ASSERT_TRUE(full.club.exchange().merge({copy}, core::ClubExchange::Forks::Refused));
    EXPECT_EQ(pins().officers(), std::vector<std::string>{"Odalys Finch"});
    EXPECT_TRUE(pins().unlock("Odalys Finch", pin("4711")));
    const auto found = full.club.record().verify(false);
    EXPECT_TRUE(found->problems.empty());
    EXPECT_THAT(found->machines, testing::Contains(testing::Field(&core::MachineRecord::name, "van")));
}

// Whoever has the file can put another PIN there, and not unseen.
TEST_F(Pins, putThereByAnotherProgramOpenNothingAndShow) {
    const std::string of0815 = "$argon2id$v=19$m=65536,t=2,p=1$PbJQ1KpDkfZBbQ+RggkJWQ$"
                               "5HY9SSuIJQHARuvAZW7YQX18DoMJlQKXOIJ0a1CbkqI";
    file().script("UPDATE private_cell SET value = '" + of0815 +
                  "' WHERE field = 'pin' AND fact = (SELECT max(id) FROM pin_change)");
    EXPECT_EQ(full.unlock("0815").error(), (Error{ErrorCode::PinNotAsSet, {"Bram Oke"}}));
    EXPECT_EQ(codeOf(full.act()), ErrorCode::PinNeeded) << "and is as locked as before";
    EXPECT_THAT(problems(), testing::Contains(ErrorCode::PrivateCellChanged));
    file().script("DELETE FROM private_cell WHERE value = '" + of0815 + "'");
    EXPECT_THAT(problems(), testing::Contains(ErrorCode::PrivateCellMissing));
    file().script(
        "INSERT INTO fact SELECT 'f', machine, seq + 1, at_utc, by, 'pin-set', "
        "'{\"person\":\"Bram Oke\",\"sealed\":\"00\"}', hash, 'h', signature FROM fact WHERE rowid = "
        "(SELECT max(rowid) FROM fact)");
    EXPECT_THAT(problems(), testing::Contains(ErrorCode::FactChanged));
}

TEST_F(Pins, thatAreLostAreResetByTheOwnerOfTheFile) {
    EXPECT_EQ(pins().reset("Odalys Finch", {}).error(),
              (Error{ErrorCode::OtherOfficerHasPin, {"Bram Oke", "Odalys Finch"}}));
    ASSERT_TRUE(pins().reset("Bram Oke", "Odalys Finch"));
    EXPECT_FALSE(pins().anySet());
    EXPECT_EQ(codeOf(pins().reset("Bram Oke", {})), ErrorCode::NoPinSet);
    EXPECT_TRUE(full.act());
    const core::CalendarDay today = core::Instant::now().localDay();
    const auto told = pins().resets(today);
    ASSERT_EQ(told.size(), 2U) << "FullClub has one, too";
    EXPECT_EQ(told.front().person, "Bram Oke");
    EXPECT_EQ(told.front().by, "Odalys Finch");
    EXPECT_EQ(pins().resets(today.plusDays(30)).size(), 2U);
    EXPECT_EQ(pins().resets(today.plusDays(31)).size(), 0U);
}

TEST_F(Pins, proveASignatureWhereTheClubAsksForIt) {
    const auto sign = [&](const std::string& who, core::Phase phase, const core::Pin* own) {
        const auto check = full.open(phase, "Tern");
        full.scan(check, "KGFB6J8WF9");
        return full.club.checks().sign(check, who, "drill", full.now, {}, own);
    };
    const core::Pin own = pin("4711"), wrong = pin("0000");
    EXPECT_TRUE(sign("Odalys Finch", core::Phase::Launch, nullptr)) << "nobody asks";
    ASSERT_TRUE(full.unlock());
    ASSERT_TRUE(pins().proveSignatures(true, {}));
    EXPECT_TRUE(pins().areSignaturesProven());
    EXPECT_EQ(sign("Odalys Finch", core::Phase::Return, nullptr).error(),
              (Error{ErrorCode::SignatureNeedsPin, {"Odalys Finch"}}));
    EXPECT_EQ(sign("Odalys Finch", core::Phase::Return, &wrong).error().code, ErrorCode::PinWrong);
    ASSERT_TRUE(sign("Odalys Finch", core::Phase::Return, &own));
    EXPECT_EQ(file().value("SELECT count(*) FROM fact WHERE kind = 'check-signed' AND body LIKE "
                           "'%\"proven\":\"Odalys Finch\"%'"),
              "1");
    ASSERT_TRUE(pins().clear("Odalys Finch", {}));
    EXPECT_TRUE(sign("Odalys Finch", core::Phase::Launch, nullptr)) << "who has none signs as ever";
}

TEST_F(Pins, keepNoLaunchWaiting) {
    ASSERT_TRUE(full.unlock());
    ASSERT_TRUE(pins().proveSignatures(true, {}));
    const auto check = full.open(core::Phase::Launch, "Tern");
    const auto sign = [&] { return full.club.checks().sign(check, "Odalys Finch", "drill", full.now); };
    EXPECT_EQ(sign().error().code, ErrorCode::SignatureNeedsPin);
    const core::Pin wrong = pin("0000");
    (void)full.club.checks().sign(check, "Odalys Finch", "drill", full.now, {}, &wrong);
    file().script("UPDATE wrong_pin SET wrong = 5");
    EXPECT_TRUE(sign());
}

TEST_F(Pins, machinesAreNamedOnce) {
    const auto before = full.club.record().thisMachine();
    EXPECT_EQ(before.name, "shed");
    EXPECT_GT(before.facts, 10);
    ASSERT_TRUE(full.unlock());
    EXPECT_EQ(codeOf(full.club.record().nameMachine("  ", {})), ErrorCode::NameMissing);
    ASSERT_TRUE(full.club.record().nameMachine(" van ", {}));
    EXPECT_EQ(full.club.record().thisMachine().name, "van");
    EXPECT_EQ(full.club.record().thisMachine().machine, before.machine);
    const auto facts = full.facts();
    ASSERT_TRUE(full.club.record().nameMachine("van", {}));
    EXPECT_EQ(full.facts(), facts);
    EXPECT_EQ(core::Club::open(full.file(), core::Club::Access::ReadOnly)->record().thisMachine().name,
              "van");
}

} // namespace
