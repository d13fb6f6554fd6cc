#include "core/answers/board.h"
#include "core/answers/history.h"
#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_plans.h"
#include "core/club/club_record.h"
#include "core/plan/make_ready/make_ready.h"
#include "core/plan/replacement/replacement_plan.h"
#include "core/register/new_kit.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using core::Named;
using core::Phase;
using core::Scanned;
using support::SmallClub;
using testing::Contains;
using testing::ElementsAre;
using testing::Not;

// docs/rules.md, "No longer here": the last day counts as here, the day after does not. Common practice, no
// source.

class Ends : public testing::Test {
protected:
    static core::CalendarDay day(const char* iso) { return *core::CalendarDay::parse(iso); }
    core::Result<std::string> end(Named named, const char* name, const char* until = "2026-03-14") {
        return small.club.register_().end(named, name, day(until), "Bram Oke", small.now);
    }
    template <class Answer>
    static ErrorCode codeOf(const Answer& answer) {
        return answer ? ErrorCode::EndOfCodes : answer.error().code;
    }
    template <class Things>
    static std::vector<std::string> names(const Things& things) {
        std::vector<std::string> all;
        for (const auto& each : things)
            all.push_back(each.name);
        return all;
    }
    std::vector<std::string> board(core::CalendarDay today) const {
        std::vector<std::string> boats;
        for (const core::BoatCondition& each : small.club.answers().boatConditions(today))
            boats.push_back(each.boat);
        return boats;
    }
    /// Petrel goes out, complete.
    void launch(const std::vector<std::string>& people = {"Odalys Finch"}) {
        const std::string check = small.open();
        ASSERT_TRUE(small.club.checks().giveNames(check, people, small.now));
        small.scanAll(check);
        ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "", small.now));
    }
    void expectWhole() const { EXPECT_TRUE(small.club.record().verify(true)->problems.empty()); }

    SmallClub small;
    const core::Moment nextDay = small.at("2026-03-15T06:40:00Z");
};

TEST_F(Ends, theLastDayIsTheLastOnWhichABoatIsHere) {
    EXPECT_EQ(end(Named::Boat, "tern").value(), "Tern");
    const auto known = small.club.register_();
    EXPECT_THAT(names(known.boats()), ElementsAre("Petrel", "Tern"));
    EXPECT_THAT(names(known.boatsHere(small.now.today)), ElementsAre("Petrel", "Tern"));
    EXPECT_THAT(names(known.boatsHere(nextDay.today)), ElementsAre("Petrel"));
    EXPECT_THAT(board(small.now.today), Contains("Tern"));
    EXPECT_THAT(board(nextDay.today), ElementsAre("Petrel"));
    EXPECT_TRUE(small.club.checks().open("Tern", Phase::Launch, small.now));
    EXPECT_EQ(small.club.checks().open("Tern", Phase::Launch, nextDay).error(),
              (core::Error{ErrorCode::NoLongerHere, {"Tern", "2026-03-14"}}));
    EXPECT_EQ(codeOf(small.club.checks().open("Tern", Phase::Return, nextDay)), ErrorCode::NoLongerHere);
    EXPECT_TRUE(small.club.checks().open("Petrel", Phase::Launch, nextDay));
    EXPECT_TRUE(small.club.answers().history("Tern")) << "the record keeps it";
    expectWhole();
}

TEST_F(Ends, aBoatThatIsOutStaysUntilItIsBack) {
    launch();
    small.import("boats.csv", "boat,until\nPetrel,2026-03-14\n");
    EXPECT_THAT(board(nextDay.today), Contains("Petrel"));
    EXPECT_EQ(codeOf(small.club.checks().open("Petrel", Phase::Launch, nextDay)), ErrorCode::NoLongerHere);
    const auto back = small.club.checks().open("Petrel", Phase::Return, nextDay);
    ASSERT_TRUE(back) << support::described(back.error());
    small.scanAll(back->check);
    ASSERT_TRUE(small.club.checks().sign(back->check, "Odalys Finch", "", nextDay));
    EXPECT_THAT(board(nextDay.today), Not(Contains("Petrel")));
    EXPECT_EQ(codeOf(small.club.checks().open("Petrel", Phase::Return, nextDay)), ErrorCode::NoLongerHere);
}

TEST_F(Ends, kitHasToGoFirst) {
    const auto refused = end(Named::Boat, "Petrel");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(),
              (core::Error{
                  ErrorCode::KitStillThere,
                  {"Petrel", "7", "whistle K0D6 EKB9 KR, rescue tube K6JY GNZ3 76, tow line K79T E08W XH"}}));
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::NotAllowed);
    EXPECT_THAT(names(small.club.register_().boatsHere(nextDay.today)), Contains("Petrel"));
    // Missing kit is the club's still; written-off kit is not.
    small.import("items.csv", "code,state\nKGFB6J8WF9,missing\n");
    std::string moved = "code,boat\n";
    for (const auto& [code, type] : support::publishedKit)
        if (code != "KGFB6J8WF9") moved += code + ",Tern\n";
    small.import("items.csv", moved);
    EXPECT_EQ(end(Named::Boat, "Petrel").error().arguments[1], "1");
    ASSERT_TRUE(small.club.kit().writeOff("KGFB6J8WF9", "lost", "Bram Oke", small.now));
    EXPECT_TRUE(end(Named::Boat, "Petrel"));
}

TEST_F(Ends, kitAtAPlaceAndAPersonsOwnHasToGoFirst) {
    small.import("places.csv", "place\nLoft\nVan\n");
    const auto has = [&](const core::NewKit& kit) {
        ASSERT_TRUE(small.club.kit().registerKit(kit, {}, small.now));
    };
    has({.kitType = "whistle", .place = "Loft"});
    has({.kitType = "whistle", .boat = "Petrel", .person = "Bram Oke"});
    EXPECT_EQ(codeOf(end(Named::Place, "Loft")), ErrorCode::KitStillThere);
    EXPECT_EQ(codeOf(end(Named::Person, "Bram Oke")), ErrorCode::KitStillThere);
    EXPECT_TRUE(end(Named::Place, "Van"));
    EXPECT_TRUE(end(Named::Person, "Odalys Finch"));
}

TEST_F(Ends, boatsThatAreKeptAtAPlaceGetAnotherFirst) {
    small.import("places.csv", "place\nLoft\nVan\n");
    small.import("boats.csv", "boat,place\nPetrel,Loft\nTern,Loft\n");
    const auto refused = end(Named::Place, "Loft");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(), (core::Error{ErrorCode::BoatsStillThere, {"Loft", "Petrel, Tern"}}));
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::NotAllowed);
    small.import("boats.csv", "boat,place\nPetrel,Van\n");
    EXPECT_EQ(end(Named::Place, "Loft").error().arguments[1], "Tern");
    ASSERT_TRUE(end(Named::Boat, "Tern")); // a boat that goes with its place, or before it, is no matter
    EXPECT_TRUE(end(Named::Place, "Loft"));
}

TEST_F(Ends, whatIsNotThereOrHasNoLastDayIsRefused) {
    EXPECT_EQ(codeOf(end(Named::Boat, "Swan")), ErrorCode::NothingSoNamed);
    EXPECT_EQ(codeOf(end(Named::Person, "Petrel")), ErrorCode::NothingSoNamed);
    EXPECT_EQ(codeOf(end(Named::KitType, "knife")), ErrorCode::NothingSoNamed);
    EXPECT_TRUE(end(Named::Boat, "Tern"));
}

TEST_F(Ends, theSameDayAgainIsNoNewFact) {
    ASSERT_TRUE(end(Named::Boat, "Tern"));
    const auto facts = small.club.record().verify(false)->facts;
    ASSERT_TRUE(end(Named::Boat, "Tern"));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    ASSERT_TRUE(end(Named::Boat, "Tern", "2026-03-20"));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts + 1);
    EXPECT_THAT(names(small.club.register_().boatsHere(nextDay.today)), Contains("Tern"));
}

TEST_F(Ends, whoIsGoneIsNotNamedAndSignsNothing) {
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    auto checks = small.club.checks();
    const std::string today = small.open();
    EXPECT_TRUE(checks.giveNames(today, {"Odalys Finch", "Bram Oke"}, small.now));
    const auto open = checks.open("Tern", Phase::Launch, nextDay);
    ASSERT_TRUE(open);
    EXPECT_EQ(codeOf(checks.giveNames(open->check, {"Bram Oke"}, nextDay)), ErrorCode::NoLongerHere);
    EXPECT_EQ(codeOf(checks.giveNames(open->check, {"Odalys Finch"}, nextDay)), ErrorCode::EndOfCodes);
    EXPECT_EQ(codeOf(checks.sign(open->check, "Bram Oke", "drill only", nextDay)), ErrorCode::NoLongerHere);
    EXPECT_EQ(codeOf(checks.sign(open->check, "Odalys Finch", "drill only", nextDay)), ErrorCode::EndOfCodes);
    EXPECT_THAT(names(small.club.register_().peopleHere(nextDay.today)), ElementsAre("Odalys Finch"));
    EXPECT_TRUE(small.club.answers().history("Bram Oke"));
}

TEST_F(Ends, whoDroveTheBoatLastStandsFirst) {
    auto checks = small.club.checks();
    const auto first = [&](const char* boat) {
        return checks.peopleFor(core::Location::boat(boat), Phase::Launch, nextDay.today).front().name;
    };
    EXPECT_EQ(first("Petrel"), "Bram Oke") << "by name, as long as nobody went out";
    launch({"Odalys Finch", "Bram Oke"});
    EXPECT_EQ(first("Petrel"), "Odalys Finch");
    EXPECT_EQ(first("Tern"), "Bram Oke") << "another boat";
}

TEST_F(Ends, whoWentOutComesBack) {
    launch({"Odalys Finch", "Bram Oke"});
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    auto checks = small.club.checks();
    const auto where = core::Location::boat("Petrel");
    EXPECT_THAT(names(checks.peopleFor(where, Phase::Return, nextDay.today)),
                ElementsAre("Odalys Finch", "Bram Oke"));
    EXPECT_THAT(names(checks.peopleFor(where, Phase::Launch, nextDay.today)), ElementsAre("Odalys Finch"));
    EXPECT_THAT(names(checks.peopleFor(core::Location::boat("Tern"), Phase::Return, nextDay.today)),
                ElementsAre("Odalys Finch"));
    const auto back = checks.open("Petrel", Phase::Return, nextDay);
    ASSERT_TRUE(back);
    EXPECT_TRUE(checks.giveNames(back->check, {"Bram Oke"}, nextDay));
    small.scanAll(back->check);
    EXPECT_TRUE(checks.sign(back->check, "Bram Oke", "", nextDay));
}

TEST_F(Ends, theTagOfWhoIsGoneNamesNobody) {
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    const auto tagOf = [&](const char* name) { return small.club.kit().tagLabels({name})->front().code; };
    auto checks = small.club.checks();
    const std::string check = checks.open("Petrel", Phase::Launch, nextDay)->check;
    const auto scan = [&](const std::string& code) {
        return *checks.scan(check, core::ScannedText::typed(code), core::SeenBy::Typed, nextDay);
    };
    const Scanned gone = scan(tagOf("Bram Oke"));
    EXPECT_EQ(gone.what, Scanned::What::Unread);
    EXPECT_EQ(gone.name, "Bram Oke") << "so that it can be said";
    EXPECT_TRUE(checks.namesOf(check).empty());
    EXPECT_EQ(scan(tagOf("Odalys Finch")).what, Scanned::What::PersonNamed);
    EXPECT_THAT(checks.namesOf(check), ElementsAre("Odalys Finch"));
}

TEST_F(Ends, aServiceRoundIsSignedByWhoWasHereThatDay) {
    small.import("life_rules.csv", "kit_type,rule,kind,n,source\nradio,test,inspect_every,12,club\n");
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    core::ServiceOrder order{"test", nextDay.today, "Bram Oke", true, {}, {}};
    order.scans.emplace_back("KD2289T9SE");
    EXPECT_EQ(codeOf(small.club.kit().recordService(order, nextDay)), ErrorCode::NoLongerHere);
    order.day = small.now.today;
    EXPECT_EQ(codeOf(small.club.kit().recordService(order, nextDay)), ErrorCode::EndOfCodes);
}

TEST_F(Ends, nothingNewGetsItsHomeThere) {
    small.import("places.csv", "place,until\nLoft,2026-03-14\nVan,\n");
    ASSERT_TRUE(end(Named::Boat, "Tern"));
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    const auto comes = [&](const core::NewKit& kit, core::Moment when) {
        return codeOf(small.club.kit().registerKit(kit, {}, when));
    };
    for (const core::NewKit& kit :
         {core::NewKit{.kitType = "knife", .boat = "Tern"}, core::NewKit{.kitType = "knife", .place = "Loft"},
          core::NewKit{.kitType = "knife", .person = "Bram Oke"}}) {
        EXPECT_EQ(comes(kit, nextDay), ErrorCode::NoLongerHere);
        EXPECT_EQ(comes(kit, small.now), ErrorCode::EndOfCodes);
    }
}

TEST_F(Ends, aPlaceIsNoLongerCounted) {
    small.import("places.csv", "place,until\nLoft,2026-03-14\nVan,\n");
    EXPECT_THAT(small.club.register_().places(), ElementsAre("Loft", "Van"));
    EXPECT_THAT(small.club.register_().placesHere(small.now.today), ElementsAre("Loft", "Van"));
    EXPECT_THAT(small.club.register_().placesHere(nextDay.today), ElementsAre("Van"));
    EXPECT_EQ(codeOf(small.club.checks().openStocktake("Loft", nextDay)), ErrorCode::NoLongerHere);
    EXPECT_EQ(codeOf(small.club.checks().openStocktake("Loft", small.now)), ErrorCode::EndOfCodes);
    EXPECT_EQ(codeOf(small.club.checks().openStocktake("Van", nextDay)), ErrorCode::EndOfCodes);
}

TEST_F(Ends, plansAreForTheBoatsThatAreHere) {
    const auto wantedKnives = [&](core::CalendarDay today) {
        const auto plan = small.club.plans().replacement({}, today);
        int wanted = 0;
        for (const auto& row : plan->rows)
            if (row.kitType == "knife") wanted = row.wanted;
        return wanted;
    };
    const auto planned = [&](core::CalendarDay today, const core::MakeReadyQuestion& asked = {}) {
        const auto plan = small.club.plans().makeReady(asked, today);
        std::vector<std::string> boats;
        if (plan)
            for (const auto& boat : plan->boats)
                boats.push_back(boat.boat);
        else
            boats.push_back(support::described(plan.error()));
        return boats;
    };
    EXPECT_EQ(wantedKnives(nextDay.today), 2);
    EXPECT_THAT(planned(nextDay.today), ElementsAre("Petrel", "Tern"));
    ASSERT_TRUE(end(Named::Boat, "Tern"));
    EXPECT_EQ(wantedKnives(small.now.today), 2);
    EXPECT_EQ(wantedKnives(nextDay.today), 1);
    EXPECT_THAT(planned(nextDay.today), ElementsAre("Petrel"));
    const auto asked = small.club.plans().makeReady({.boats = {"Tern"}}, nextDay.today);
    EXPECT_EQ(codeOf(asked), ErrorCode::NoLongerHere);
}

TEST_F(Ends, kitThatWasSeenLastWhereNothingIsAnyMoreLiesNowhereKnown) {
    small.import("places.csv", "place,until\nLoft,2026-03-14\n");
    const std::string stocktake = small.club.checks().openStocktake("Loft", small.now)->check;
    small.scan(stocktake, "KGFB6J8WF9");
    const auto lostIn = [&](core::CalendarDay today) {
        const auto plan = small.club.plans().makeReady({}, today);
        std::vector<std::string> codes;
        for (const core::ItemName& item : plan->notPlaced)
            codes.push_back(item.id);
        return codes;
    };
    EXPECT_THAT(lostIn(small.now.today), ElementsAre());
    EXPECT_THAT(lostIn(nextDay.today), ElementsAre("KGFB6J8WF9"));
    EXPECT_EQ(codeOf(small.club.plans().makeReady({.places = {"loft"}}, nextDay.today)),
              ErrorCode::NoLongerHere);
}

TEST_F(Ends, anExportKnowsWhatIsGoneAndComesInAgain) {
    ASSERT_TRUE(end(Named::Boat, "Tern"));
    ASSERT_TRUE(end(Named::Person, "Bram Oke"));
    ASSERT_TRUE(small.club.register_().exportCsv(small.folder / "out", {}));
    const auto again = small.club.register_().importCsv(small.folder / "out", nextDay.today, true);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->rejected.empty());
    EXPECT_TRUE(again->changes.empty());
    EXPECT_EQ(small.club.register_().boat("Tern")->until, small.now.today);
    small.import("boats.csv", "boat,until\nTern,-\n");
    EXPECT_THAT(names(small.club.register_().boatsHere(nextDay.today)), Contains("Tern"));
}

} // namespace
