#include "core/answers/due_list.h"

#include "tests/core/answers/answers_support.h"
#include "tests/core/upkeep/rule_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// docs/rules.md sections 1 and 2: due days and states; docs/command-line.md, `due`: what is listed. The
// order, worst first: common practice, no source.

LifeRule named(LifeRule rule, const std::string& name) {
    rule.name = name;
    return rule;
}

/// Kit on 14 March 2026.
struct DueKit {
    std::map<std::string, KitType> types;
    std::vector<ItemRecord> kit;
    CalendarDay today = day("2026-03-14");

    KitType& type(const std::string& name, std::vector<LifeRule> rules) {
        types[name].name = name;
        types[name].rules = std::move(rules);
        return types[name];
    }
    ItemRecord& item(const std::string& code, const std::string& kitType) {
        return kit.emplace_back(ItemRecord{.item = itemOf(code, kitType)});
    }
    ItemRecord& stamped(const std::string& code, const std::string& kitType, const std::string& expiry) {
        item(code, kitType).item.stamped = known(expiry);
        return kit.back();
    }
    std::vector<std::string> rows(int days = 90) const {
        std::vector<std::string> texts;
        for (const DueRow& row : dueListOf(kit, types, today, days))
            texts.push_back(row.item.id + ' ' + row.due.rule.name);
        return texts;
    }
};

TEST(DueList, tellsItemAndRule) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "expiry")});
    Item& flare = due.stamped("K1", "flare", "2026-05-01").item;
    flare.size = "red";
    flare.boat = "Heron";
    const auto rows = dueListOf(due.kit, due.types, due.today, 90);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].item.id, "K1");
    EXPECT_EQ(rows[0].kitType, "flare");
    EXPECT_EQ(rows[0].size, "red");
    EXPECT_EQ(rows[0].boat, "Heron");
    EXPECT_EQ(rows[0].due.due, day("2026-05-01"));
}

// What comes next of a thing is its first row of the whole list, however the rules stand in the kit type.
TEST(NextDues, areTheFirstRowOfEachThing) {
    DueKit due;
    due.type("flare",
             {named(ruleOf(RuleKind::Stamped), "expiry"), named(ruleOf(RuleKind::FromMade, 12), "age")});
    due.type("rope", {});
    due.stamped("K1", "flare", "2031-05-01").item.made = known("2025-06");
    due.stamped("K2", "flare", "2026-03-13").item.made = known("2026-01");
    due.stamped("K3", "flare", "1999-01-01").item.state = ItemState::WrittenOff;
    due.item("K4", "rope");
    due.stamped("K5", "flare", "2031-05-01"); // undated by its age
    const auto next = nextDuesOf(due.kit, due.types, due.today);
    std::map<std::string, std::string> first;
    for (const DueRow& row : dueListOf(due.kit, due.types, due.today, howeverLate))
        first.emplace(row.item.id, row.due.rule.name);
    std::vector<std::string> told;
    for (const ItemDue& each : next) {
        told.push_back(each.item.id + ' ' + (each.next ? each.next->rule.name : "-") +
                       (each.isToLookAt ? " look" : ""));
        const auto found = first.find(each.item.id);
        EXPECT_EQ(each.next ? each.next->rule.name : "", found == first.end() ? "" : found->second);
    }
    EXPECT_THAT(told, ElementsAre("K1 age", "K2 expiry look", "K3 -", "K4 -", "K5 age look"));
}

TEST(DueList, endsWithTheLastDayAskedFor) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "expiry")});
    due.stamped("K1", "flare", "2026-04-13"); // in thirty days
    EXPECT_THAT(due.rows(30), ElementsAre("K1 expiry"));
    EXPECT_THAT(due.rows(29), IsEmpty());
}

TEST(DueList, keepsWhatIsPassedHoweverLong) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "expiry")});
    due.stamped("K1", "flare", "1999-01-01");
    EXPECT_THAT(due.rows(0), ElementsAre("K1 expiry"));
}

TEST(DueList, namesWhatIsUndatedOrDueWithoutADay) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "expiry")});
    due.type("engine", {named(ruleOf(RuleKind::EveryHours, 50), "oil")});
    due.item("K1", "flare"); // nobody knows its stamp
    due.item("K2", "engine").use = {{day("2026-03-01"), 50, 1}};
    due.item("K3", "engine").use = {{day("2026-03-01"), 49, 1}}; // not due, and no day is known
    EXPECT_THAT(due.rows(0), ElementsAre("K2 oil", "K1 expiry"));
}

TEST(DueList, leavesOutWhatIsWrittenOffOrOfNoKnownType) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "expiry")});
    due.stamped("K1", "flare", "2026-03-14").item.state = ItemState::WrittenOff;
    due.stamped("K2", "flare", "2026-03-14").item.state = ItemState::Missing;
    due.stamped("K3", "rocket", "2026-03-14");
    EXPECT_THAT(due.rows(), ElementsAre("K2 expiry"));
}

TEST(DueList, worstStandsFirst) {
    DueKit due;
    LifeRule remark = named(ruleOf(RuleKind::Stamped), "remark");
    remark.severity = Severity::Remark;
    LifeRule tolerated = named(ruleOf(RuleKind::Stamped), "tolerated");
    tolerated.tolerance = {Tolerance::Kind::Days, 60};
    LifeRule undatedStop = named(ruleOf(RuleKind::FromMade, 12), "undated stop");
    undatedStop.undated = Undated::Stop;
    due.type("a", {named(ruleOf(RuleKind::Stamped), "later")});
    due.type("b", {named(ruleOf(RuleKind::Stamped), "soon")});
    due.type("c", {named(ruleOf(RuleKind::FromMade, 12), "undated")});
    due.type("d", {tolerated});
    due.type("e", {remark});
    due.type("f", {named(ruleOf(RuleKind::Stamped), "stop")});
    due.type("g", {undatedStop});
    due.stamped("K1", "a", "2026-05-14");
    due.stamped("K2", "b", "2026-03-20");
    due.item("K3", "c");
    due.stamped("K4", "d", "2026-03-01");
    due.stamped("K5", "e", "2026-03-01");
    due.stamped("K6", "f", "2026-03-13");
    due.item("K7", "g");
    EXPECT_THAT(due.rows(), ElementsAre("K7 undated stop", "K6 stop", "K5 remark", "K4 tolerated",
                                        "K3 undated", "K2 soon", "K1 later"));
}

TEST(DueList, ofOneRankTheEarliestDayThenTheCodeThenTheRule) {
    DueKit due;
    due.type("flare", {named(ruleOf(RuleKind::Stamped), "z"), named(ruleOf(RuleKind::Stamped), "a")});
    due.stamped("K2", "flare", "2026-03-10");
    due.stamped("K1", "flare", "2026-03-10");
    due.stamped("K3", "flare", "2026-03-09");
    EXPECT_THAT(due.rows(), ElementsAre("K3 a", "K3 z", "K1 a", "K1 z", "K2 a", "K2 z"));
}

} // namespace
} // namespace core
