#include "core/plan/lasting/kit_life.h"

#include "tests/core/plan/today.h"

#include <gtest/gtest.h>

namespace core {
namespace {

/// Items of one type whose lives are the NIST failures, in days.
class KitLives : public testing::Test {
protected:
    KitLives() {
        type.name = "tow line";
        for (const int days : {54, 187, 216, 240, 244, 335, 361, 373, 375, 386})
            add(days, ItemState::WrittenOff, "worn");
        for (int i = 0; i < 10; ++i)
            add(500, ItemState::Serviceable);
    }

    Item& add(int days, ItemState state, const std::string& why = {}) {
        ItemRecord record;
        record.item.kitType = type.name;
        record.item.state = state;
        record.item.why = why;
        record.item.firstUse = PartialDay(today.plusDays(-days));
        if (state != ItemState::Serviceable) record.item.since = today;
        items.push_back(record);
        return items.back().item;
    }

    KitLife life() const { return kitLivesOf({{type.name, type}}, items, today).at(0); }

    KitType type;
    std::vector<ItemRecord> items;
};

TEST_F(KitLives, areThoseOfThePublishedFailures) {
    // NIST/SEMATECH e-Handbook 8.4.1.3: the curve falls by .05 at each failure.
    const KitLife found = life();
    EXPECT_EQ(found.lives, 20);
    EXPECT_EQ(found.endings(), 10);
    EXPECT_EQ(found.stillHere, 10);
    ASSERT_EQ(found.curve.steps().size(), 10U);
    for (std::size_t i = 0; i < 10; ++i)
        EXPECT_NEAR(found.curve.steps()[i].lasting, 1 - .05 * static_cast<double>(i + 1), 1e-12);
    EXPECT_EQ(found.curve.medianDays(), 386);
    ASSERT_TRUE(found.weibull);
    EXPECT_NEAR(found.weibull->shape, 1.720797, 5e-7);
    EXPECT_NEAR(found.weibull->scale, 606.52756, 5e-5);
}

TEST_F(KitLives, needFiveEndingsForAFit) {
    items.erase(items.begin() + 5, items.begin() + 10);
    EXPECT_TRUE(life().weibull);
    items.erase(items.begin());
    EXPECT_FALSE(life().weibull);
    EXPECT_EQ(life().curve.steps().size(), 4U) << "the curve stands all the same";
}

TEST_F(KitLives, countWhatTheRuleEndedAsLastingAtLeastSoLong) {
    add(450, ItemState::WrittenOff, "expired");
    EXPECT_EQ(life().endings(), 10);
    EXPECT_EQ(life().expired, 1);
    EXPECT_EQ(life().lives, 21);
    add(450, ItemState::WrittenOff, "damaged");
    EXPECT_EQ(life().wornOut, 11);
    add(450, ItemState::WrittenOff);
    EXPECT_EQ(life().wornOut, 12) << "no reason given";
    add(450, ItemState::WrittenOff, "lost");
    add(450, ItemState::Missing);
    EXPECT_EQ(life().lost, 2);
    EXPECT_EQ(life().endings(), 14);
    add(450, ItemState::Unserviceable);
    EXPECT_EQ(life().stillHere, 11);
}

TEST_F(KitLives, countNothingOfWhatWasRegisteredByMistake) {
    add(450, ItemState::WrittenOff, "mistake");
    EXPECT_EQ(life().lives, 20);
    EXPECT_EQ(life().leftOut, 0);
    EXPECT_EQ(life().endings(), 10);
    items.erase(items.begin(), items.end() - 1);
    EXPECT_TRUE(kitLivesOf({{type.name, type}}, items, today).empty()) << "nothing is of the type";
}

TEST_F(KitLives, leaveOutWhatHasNoKnownLife) {
    add(450, ItemState::WrittenOff, "worn").since.reset();
    EXPECT_EQ(life().leftOut, 1);
    add(450, ItemState::Serviceable).firstUse.reset();
    EXPECT_EQ(life().leftOut, 2);
    EXPECT_EQ(life().lives, 20);
    Item& made = add(450, ItemState::Serviceable);
    made.firstUse.reset();
    made.registered = known("2025-12-01");
    made.made = known("2020-01");
    EXPECT_EQ(life().lives, 21) << "from made, before registration";
    EXPECT_TRUE(life().curve.at(2000));
    made.made.reset();
    EXPECT_FALSE(life().curve.at(2000));
}

TEST_F(KitLives, standBesideTheRules) {
    LifeRule retire;
    retire.name = "retire";
    retire.kind = RuleKind::FromFirstUse;
    retire.n = 12; // 365.25 days: seven have ended by then
    LifeRule longer = retire, stamped = retire, remark = retire;
    longer.name = "longer";
    longer.n = 120;
    stamped.kind = RuleKind::Stamped;
    remark.severity = Severity::Remark;
    type.rules = {retire, longer, stamped, remark};
    const auto allowed = life().allowed;
    ASSERT_EQ(allowed.size(), 2U);
    EXPECT_EQ(allowed[0].rule, "retire");
    ASSERT_TRUE(allowed[0].record);
    EXPECT_NEAR(allowed[0].record->lasting, .65, 1e-12);
    EXPECT_LT(allowed[0].record->low, .65);
    EXPECT_GT(allowed[0].record->high, .65);
    EXPECT_EQ(allowed[1].months, 120);
    EXPECT_FALSE(allowed[1].record) << "nothing is that old";
}

TEST_F(KitLives, areListedByKitType) {
    KitType other = type, unused = type;
    other.name = "knife";
    unused.name = "whistle";
    items.push_back(items.back());
    items.back().item.kitType = "knife";
    const auto lives = kitLivesOf({{"tow line", type}, {"knife", other}, {"whistle", unused}}, items, today);
    ASSERT_EQ(lives.size(), 2U);
    EXPECT_EQ(lives[0].kitType, "knife");
    EXPECT_EQ(lives[1].kitType, "tow line");
}

} // namespace
} // namespace core
