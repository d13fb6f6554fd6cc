#include "core/plan/replacement/replacement_plan.h"

#include "tests/core/plan/today.h"

#include <gtest/gtest.h>

namespace core {
namespace {

/// Two boats that want four each of a type whose life is five years, and the worked example's thirteen items;
/// four lost; 80 item-years in all.
class Replacement : public testing::Test {
protected:
    Replacement() {
        KitType& type = input.kitTypes["smoke"];
        type.name = "smoke";
        type.orderLeadDays = 84;
        LifeRule age;
        age.name = "age";
        age.kind = RuleKind::FromMade;
        age.n = 60;
        type.rules = {age};
        ManifestLine line;
        line.kitType = "smoke";
        line.quantity = 4;
        input.manifests = {{line}, {line}};
        for (const auto& [count, made] : std::vector<std::pair<int, std::string>>{{2, "2021-04-30"},
                                                                                  {3, "2022-03-31"},
                                                                                  {2, "2022-09-30"},
                                                                                  {3, "2023-06-30"},
                                                                                  {3, "2024-12-31"}})
            for (int i = 0; i < count; ++i)
                add(made, today.plusDays(-2000));
        for (int i = 0; i < 4; ++i) {
            add("2021-01-01", day("2025-06-01").plusDays(-805));
            input.items.back().item.state = i % 2 == 0 ? ItemState::Missing : ItemState::WrittenOff;
            input.items.back().item.why = "lost";
            input.items.back().item.since = day("2025-06-01");
        }
    }

    void add(const std::string& made, CalendarDay registered) {
        ItemRecord record;
        record.item.kitType = "smoke";
        record.item.made = known(made);
        record.item.registered = registered;
        input.items.push_back(record);
    }

    KitType& type() { return input.kitTypes["smoke"]; }
    ReplacementPlan plan() const { return planReplacement(input, question, today); }
    ReplacementRow row() const { return plan().rows.at(0); }

    ReplacementInput input;
    ReplacementQuestion question;
};

TEST_F(Replacement, ofTheWorkedExample) {
    const ReplacementRow found = row();
    EXPECT_EQ(found.wanted, 8);
    EXPECT_EQ(found.stock, 13);
    EXPECT_EQ(found.record.losses, 4);
    EXPECT_EQ(found.record.itemYears(), 80);
    EXPECT_EQ(found.firstShort, day("2027-04-01"));
    EXPECT_EQ(found.lastGood, day("2027-03-31"));
    EXPECT_EQ(found.orderBy, day("2026-12-23")); // 84 + 14 days before
    EXPECT_FALSE(found.late);
    EXPECT_EQ(found.quantity, 5);
    ASSERT_EQ(found.chances.size(), 6U);
    EXPECT_EQ(found.chances[2].day, day("2027-04-01"));
    EXPECT_EQ(found.chances[2].counting, 8);
    EXPECT_NEAR(found.chances[2].p, .3766094159, 5e-11);
}

TEST_F(Replacement, withAGivenRateIsThatOfThePlainWorkedExample) {
    question.prior = {1e-12, 1e-12}; // the record alone: Gamma(4, 80)
    question.marginDays = 0;
    EXPECT_EQ(row().orderBy, day("2027-01-06"));
    EXPECT_EQ(row().quantity, 5);
    question.marginDays = 30;
    EXPECT_EQ(row().orderBy, day("2026-12-07"));
    question.coverMonths = 21; // to 2029-01-01
    EXPECT_EQ(row().quantity, 8);
}

TEST_F(Replacement, isOrderedInWholePacks) {
    type().pack = 4;
    EXPECT_EQ(row().quantity, 8);
    type().pack = 5;
    EXPECT_EQ(row().quantity, 5);
    type().price = 19.99;
    EXPECT_DOUBLE_EQ(row().cost.value(), 99.95);
    EXPECT_EQ(plan().budget.at(0).year, 2026);
    EXPECT_DOUBLE_EQ(plan().budget.at(0).cost, 99.95);
}

TEST_F(Replacement, isLateWhenTheOrderByDayIsPast) {
    type().orderLeadDays = 400;
    EXPECT_EQ(row().orderBy, day("2026-02-10"));
    EXPECT_FALSE(row().late);
    type().orderLeadDays = 440;
    EXPECT_EQ(row().orderBy, day("2026-01-01"));
    EXPECT_FALSE(row().late) << "today is not too late";
    type().orderLeadDays = 441;
    EXPECT_TRUE(row().late);
    EXPECT_EQ(row().orderBy, day("2025-12-31"));
    EXPECT_EQ(row().budgetYear, 2026) << "last year's money is spent";
    EXPECT_EQ(plan().budget.at(0).year, 2026);
}

TEST_F(Replacement, isLateWhenShortToday) {
    input.manifests.push_back(input.manifests[0]);
    input.manifests.push_back(input.manifests[0]); // 16 wanted, 13 there
    EXPECT_EQ(row().firstShort, today);
    EXPECT_EQ(row().lastGood, day("2025-12-31"));
    EXPECT_TRUE(row().late);
    // Eleven still count at the cover's end: with 7 more P is .0691803848, with 8 .0216195816 (scipy 1.10).
    EXPECT_EQ(row().quantity, 8);
}

TEST_F(Replacement, hasNoQuantityWhenNewKitFallsDueWithinTheCover) {
    type().rules[0].n = 11;
    for (ItemRecord& record : input.items)
        record.item.made = today;
    EXPECT_EQ(row().firstShort, day("2026-12-02"));
    EXPECT_EQ(row().quantity, std::nullopt);
    EXPECT_EQ(row().cost, std::nullopt);
    question.coverMonths = 10;
    EXPECT_GT(row().quantity.value(), 0) << "a shorter cover can be had";
}

TEST_F(Replacement, isNothingToOrderWhenNothingRunsShort) {
    question.months = 14;
    type().price = 5;
    EXPECT_EQ(row().firstShort, std::nullopt);
    EXPECT_EQ(row().orderBy, std::nullopt);
    EXPECT_EQ(row().quantity, 0);
    EXPECT_EQ(row().cost, 0);
    EXPECT_FALSE(plan().runsShort());
    EXPECT_TRUE(plan().budget.empty());
    question.months = 15; // its last day is 2027-04-01
    EXPECT_EQ(row().firstShort, day("2027-04-01"));
    EXPECT_TRUE(plan().runsShort());
}

TEST_F(Replacement, wantsWhatRequiredLinesAskAndSpares) {
    type().spares = 2;
    EXPECT_EQ(row().wanted, 10);
    input.manifests[0][0].required = false;
    EXPECT_EQ(row().wanted, 6);
    input.manifests.clear();
    EXPECT_EQ(row().wanted, 2);
    type().spares = 0;
    EXPECT_TRUE(plan().rows.empty()) << "nobody wants any";
}

TEST_F(Replacement, ofASizedTypeIsForEachSizeThatIsWanted) {
    Size medium, large, unasked;
    medium.name = "M";
    medium.wanted = 3;
    large.name = "L";
    large.wanted = 1;
    unasked.name = "S";
    type().sizes = {large, medium, unasked};
    type().spares = 5;
    for (int i = 0; i < 4; ++i)
        input.items[static_cast<std::size_t>(i)].item.size = i == 0 ? "L" : "M";
    const auto rows = plan().rows;
    ASSERT_EQ(rows.size(), 2U);
    for (const ReplacementRow& each : rows) {
        EXPECT_EQ(each.wanted, each.size == "M" ? 3 : 1) << "spares add nothing to a size";
        EXPECT_EQ(each.stock, each.size == "M" ? 3 : 1) << "items without a size belong to no row";
        EXPECT_EQ(each.record.losses, 4) << "sizes share their record";
        EXPECT_EQ(each.record.itemYears(), 80);
    }
}

TEST_F(Replacement, countsWhatIsServiceableAndInDateToday) {
    input.items[0].item.state = ItemState::Unserviceable;
    EXPECT_EQ(row().stock, 12);
    input.items[1].item.made = known("2020-12-31"); // good to 2025-12-31
    EXPECT_EQ(row().stock, 11);
    input.items[1].item.made = known("2021-01-01"); // good to 2026-01-01
    EXPECT_EQ(row().stock, 12);
    input.items[2].item.made.reset();
    EXPECT_EQ(row().stock, 12) << "undated is a remark";
    type().rules[0].undated = Undated::Stop;
    EXPECT_EQ(row().stock, 11) << "undated counts on no day";
}

TEST_F(Replacement, putsWhatMustBeOrderedFirstInFront) {
    KitType early = type(), never = type();
    early.name = "zinc";
    early.orderLeadDays = 500;
    never.name = "anchor";
    never.rules.clear();
    never.spares = 0;
    input.kitTypes["zinc"] = early;
    input.kitTypes["anchor"] = never;
    ManifestLine line = input.manifests[0][0];
    line.kitType = "anchor";
    line.quantity = 1;
    input.manifests[0].push_back(line);
    line.kitType = "zinc";
    input.manifests[0].push_back(line);
    for (int i = 0; i < 13; ++i) {
        input.items.push_back(input.items[static_cast<std::size_t>(i)]);
        input.items.back().item.kitType = i < 6 ? "zinc" : "anchor";
    }
    std::vector<std::string> order;
    for (const ReplacementRow& each : plan().rows)
        order.push_back(each.kitType);
    EXPECT_EQ(order, (std::vector<std::string>{"zinc", "smoke", "anchor"}));
}

TEST_F(Replacement, advisesSparesForTheLeadTime) {
    // Eight items for 84 days at Gamma(4.5, 90): mean .092, P(0) = (90/91.84)^4.5 = .9134, P(≤1) = .9958.
    EXPECT_EQ(row().sparesAdvised, 1);
    question.confidence = .91;
    EXPECT_EQ(row().sparesAdvised, 0);
    question.confidence = .999;
    EXPECT_EQ(row().sparesAdvised, 2);
    type().orderLeadDays = 0;
    EXPECT_EQ(row().sparesAdvised, 0);
}

} // namespace
} // namespace core
