#include "core/answers/event_tally.h"
#include "core/answers/evidence.h"
#include "core/answers/service_round.h"
#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_plans.h"
#include "core/plan/make_ready/make_ready.h"
#include "core/store/fact_table.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::ItemName;
using core::Phase;
using support::SmallClub;
using testing::Contains;
using testing::Not;

// Of the published kit, and of those that the club below has besides.
constexpr const char *knife = "KGFB6J8WF9", *paddle = "K80NSC1FX4", *radio = "KD2289T9SE";
constexpr const char *ternsKnife = "K000000018", *ternsPaddle = "K000000026", *sparePaddle = "K000000034",
                     *nowhere = "K000000042", *unknown = "K00000009T";

// Every name of an item that an answer holds.
using Names = std::vector<ItemName>;

void add(Names& names, const Names& more) {
    names.insert(names.end(), more.begin(), more.end());
}

void add(Names& names, const std::vector<core::LogEntry>& entries) {
    for (const core::LogEntry& entry : entries)
        names.push_back(entry.item);
}

Names namesIn(const core::CheckAnswer& answer) {
    Names names;
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& each : line.items)
            names.push_back(each.item);
    for (const core::Finding& finding : answer.findings)
        names.push_back(finding.item);
    add(names, answer.logOpen);
    return names;
}

Names namesIn(const std::vector<core::MissingItem>& missing) {
    Names names;
    for (const core::MissingItem& each : missing)
        names.push_back(each.item);
    return names;
}

Names namesIn(const core::EventTally& tally) {
    Names names = namesIn(tally.missing);
    for (const core::BoatTally& boat : tally.boats)
        for (const auto* items : {&boat.out, &boat.back, &boat.notReturned})
            add(names, *items);
    for (const core::Swap& swap : tally.swaps)
        add(names, {swap.item, swap.against});
    return names;
}

Names namesIn(const core::Evidence& evidence) {
    Names names;
    for (const core::AboardItem& each : evidence.aboard)
        names.push_back(each.item);
    for (const auto* check : {&evidence.launch, &evidence.back})
        if (*check) add(names, namesIn((*check)->answer));
    return names;
}

Names namesIn(const std::vector<core::BoatCondition>& boats) {
    Names names;
    for (const core::BoatCondition& boat : boats)
        for (const core::NotReadyReason& reason : boat.reasons) {
            names.push_back(reason.item);
            if (reason.finding) names.push_back(reason.finding->item);
        }
    return names;
}

Names namesIn(const core::ServiceRound& round) {
    Names names;
    for (const auto& each : round.recorded)
        names.push_back(each.item);
    for (const auto& each : round.refused)
        names.push_back(each.item);
    return names;
}

/// Two boats that swapped their knives; a paddle stayed out; then everything got a new tag.
class NewTags : public testing::Test {
protected:
    NewTags() {
        small.import("places.csv", "place\nloft\n");
        small.import("items.csv",
                     "code,kit_type,boat,place\nK000000018,knife,Tern,\nK000000026,paddle,Tern,\n"
                     "K000000034,paddle,,loft\nK000000042,paddle,,\n");
        small.import("life_rules.csv", "kit_type,rule,kind,n\nknife,yearly look,inspect_every,12\n"
                                       "radio,retire,from_made,12\n");
        small.import("services.csv", "code,rule,day,passed\nKGFB6J8WF9,yearly look,2025-04-01,yes\n"
                                     "K000000018,yearly look,2025-04-01,yes\n");
        write(check("Petrel", Phase::Launch, {knife, paddle, radio, unknown}, "2026-03-14T08:00:00Z"));
        write(check("Tern", Phase::Launch, {ternsKnife, ternsPaddle}, "2026-03-14T08:05:00Z"));
        write(check("Petrel", Phase::Return, {ternsKnife, radio}, "2026-03-14T11:00:00Z"));
        write(check("Tern", Phase::Return, {knife, ternsPaddle}, "2026-03-14T11:10:00Z"));
        small.now = small.at("2026-03-14T12:00:00Z");
        EXPECT_TRUE(small.club.log().add(radio, "crackles", core::Severity::Stop, "Bram Oke", small.now));
        for (const core::Item& item : small.club.kit().all())
            m_tags[item.id] = *small.club.kit().replaceTag(item.id, "Bram Oke", small.now);
    }

    std::string check(const std::string& boat, Phase phase, const std::vector<std::string>& codes,
                      const std::string& at) {
        small.now = small.at(at);
        const std::string id = small.open(phase, boat);
        EXPECT_TRUE(small.club.events().fileUnder(id, "Spring training", small.now));
        for (const std::string& code : codes)
            small.scan(id, code);
        return id;
    }
    void write(const std::string& check) {
        EXPECT_TRUE(small.club.checks().sign(check, "Bram Oke", "training", small.now));
    }

    const std::string& tagOf(const std::string& id) const { return m_tags.at(id); }

    /// Each item by its id and the tag that is on it now; `wanted` are among them.
    void expectNamed(const char* answer, const Names& names, const std::vector<std::string>& wanted) const {
        SCOPED_TRACE(answer);
        for (const ItemName& each : names)
            if (const auto item = m_tags.find(each.id); item != m_tags.end())
                EXPECT_EQ(each.tag, item->second) << each.id;
            else
                EXPECT_EQ(each.tag, each.id) << "a tag that the register does not know, or none";
        for (const std::string& id : wanted)
            EXPECT_THAT(names, Contains(ItemName{id, m_tags.contains(id) ? tagOf(id) : id}));
    }

    SmallClub small;

private:
    std::map<std::string, std::string> m_tags; // of every item of the club, by id
};

TEST_F(NewTags, nameTheirItemsInEveryAnswer) {
    const core::Club& club = small.club;
    const auto today = small.now.today;
    Names kit, due, log;
    for (const core::Item& item : club.kit().all())
        kit.push_back(item.name());
    expectNamed("kit", kit, {knife, ternsKnife, sparePaddle, nowhere});
    expectNamed("item",
                {club.kit().item(knife)->name(), club.kit().itemRecord(tagOf(knife))->item.name(),
                 club.kit().itemOfScan(tagOf(knife), today)->name()},
                {knife});
    for (const core::DueRow& row : club.answers().dueList(today, 400))
        due.push_back(row.item);
    expectNamed("due list", due, {knife, ternsKnife, radio});
    add(log, *club.log().entries());
    expectNamed("log", log, {radio});
    expectNamed("missing", namesIn(club.answers().missingItems()), {paddle});
    expectNamed("board", namesIn(club.answers().boatConditions(today)), {knife, paddle});
    expectNamed("tally", namesIn(*club.events().tally("Spring training")),
                {knife, ternsKnife, paddle, ternsPaddle, radio});
    const auto evidence = *club.answers().evidence("Petrel", *core::Instant::parse("2026-03-14T09:00:00Z"));
    expectNamed("evidence", namesIn(evidence), {knife, paddle, radio, ternsKnife, unknown});
    EXPECT_EQ(club.answers().history(tagOf(knife))->size(), club.answers().history(knife)->size());
    const auto plan = *club.plans().makeReady({.boats = {"Petrel"}}, today);
    Names planned = plan.notPlaced;
    for (const core::KitMove& move : plan.moves)
        planned.push_back(move.item);
    expectNamed("plan", planned, {nowhere});
}

TEST_F(NewTags, nameTheirItemsInAPlanOfMoves) {
    small.import("manifest_lines.csv",
                 "boat,kit_type,quantity,required\nTern,knife,1,yes\nTern,paddle,2,yes\n"
                 "Tern,radio,0,yes\nTern,whistle,0,yes\nTern,tow line,0,yes\n"
                 "Tern,rescue tube,0,yes\n");
    const auto plan = *small.club.plans().makeReady({.boats = {"Tern"}}, small.now.today);
    ASSERT_THAT(plan.moves, testing::SizeIs(1));
    expectNamed("plan", {plan.moves[0].item}, {sparePaddle});
}

TEST_F(NewTags, nameTheirItemsInChecksAndRounds) {
    const auto check = small.open();
    expectNamed("scan", {small.scan(check, tagOf(knife)).item}, {knife});
    expectNamed("scan again", {small.scan(check, tagOf(knife)).item}, {knife});
    EXPECT_EQ(small.scan(check, knife).what, core::Scanned::What::Unread) << "the old one names nothing";
    for (const char* id : {radio, ternsPaddle})
        small.scan(check, tagOf(id));
    small.scan(check, unknown);
    expectNamed("launch check", namesIn(*small.club.checks().answer(check, small.now.today)),
                {knife, radio, ternsPaddle, unknown});
    expectNamed("taken back", {small.club.checks().undo(check, "taken back", small.now)->act.item},
                {unknown});
    expectNamed("taken back", {small.club.checks().undo(check, "taken back", small.now)->act.item},
                {ternsPaddle});
    const auto done = *small.club.checks().sign(check, "Bram Oke", "training", small.now);
    expectNamed("signed", namesIn(done.answer), {knife, radio});
    expectNamed("as it was signed", namesIn(*small.club.checks().answer(check, small.now.today)),
                {knife, radio});
    const auto stocktake = small.club.checks().openStocktake("loft", small.now)->check;
    small.scan(stocktake, tagOf(ternsPaddle));
    expectNamed("stocktake", namesIn(*small.club.checks().answer(stocktake, small.now.today)),
                {sparePaddle, ternsPaddle});
    const core::ServiceOrder order{.rule = "yearly look",
                                   .day = small.now.today,
                                   .by = "Bram Oke",
                                   .passed = true,
                                   .note = {},
                                   .scans = {tagOf(knife), tagOf(radio), unknown}};
    expectNamed("round", namesIn(*small.club.kit().recordService(order, small.now)), {knife, radio, unknown});
}

TEST_F(NewTags, standInNoFactButTheirOwn) {
    const auto check = small.open();
    small.scan(check, tagOf(knife));
    small.scan(check, tagOf(ternsPaddle));
    ASSERT_TRUE(small.club.checks().undo(check, "taken back", small.now));
    ASSERT_TRUE(small.club.checks().withdraw(check, tagOf(knife), "loose grip", small.now));
    ASSERT_TRUE(small.club.checks().sign(check, "Bram Oke", "training", small.now));
    ASSERT_TRUE(small.club.kit().release(tagOf(knife), "Bram Oke", small.now));
    ASSERT_TRUE(small.club.kit().writeOff(tagOf(nowhere), "worn", "Bram Oke", small.now));
    ASSERT_TRUE(small.club.log().add(tagOf(knife), "blunt", core::Severity::Remark, "Bram Oke", small.now));
    const core::ServiceOrder order{.rule = "yearly look",
                                   .day = small.now.today,
                                   .by = "Bram Oke",
                                   .passed = true,
                                   .note = {},
                                   .scans = {tagOf(knife)}};
    ASSERT_TRUE(small.club.kit().recordService(order, small.now));
    core::Database database(small.file(), core::Database::Mode::ReadOnly);
    std::map<std::string, int> ofKnife; // facts that name it, by kind
    core::factTable::forEachInChain(database, [&](const core::Fact& fact) {
        if (fact.body.find(knife) != std::string::npos) ++ofKnife[fact.kind];
        if (fact.kind == "tag-fixed") return;
        for (const core::Item& item : small.club.kit().all())
            EXPECT_EQ(fact.body.find(item.tag), std::string::npos) << fact.kind << ' ' << fact.body;
    });
    for (const auto& [kind, count] : std::map<std::string, int>{
             {"tag-fixed", 1}, {"tag-seen", 3}, {"check-signed", 4}, {"log_entry", 2}, {"service", 2}})
        EXPECT_EQ(ofKnife[kind], count) << kind;
}

} // namespace
