#include "core/exchange/csv_import.h"

#include "core/register/typed_rows.h"
#include "tests/core/exchange/exchange_support.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>
#include <set>

namespace {

using core::SheetId;

class DemoClub : public testing::Test {
protected:
    DemoClub() {
        int minted = 0;
        auto planned =
            core::planImport(THOLEPIN_DEMO_CLUB, rows, *core::CalendarDay::parse("2026-03-14"),
                             [&](core::TagClass tagClass) { return support::tagCode(tagClass, ++minted); });
        EXPECT_TRUE(planned) << support::described(planned.error());
        if (planned) plan = *planned;
        rows.apply(plan.changes);
    }

    core::Item itemWith(std::string_view column, const std::string& value) const {
        const auto found = rows.where(SheetId::Items, column, value);
        EXPECT_EQ(found.size(), 1U) << column << ' ' << value;
        return core::itemFrom(found.at(0));
    }

    support::MapRegister rows;
    core::ImportPlan plan;
};

TEST_F(DemoClub, importsWithoutARejectedRow) {
    EXPECT_EQ(support::describe(plan), "");
    EXPECT_EQ(plan.accepted.size(), 14U);
    EXPECT_EQ(rows.all(SheetId::Items).size(), 63U);
    EXPECT_EQ(rows.all(SheetId::People).size(), 8U);
}

TEST_F(DemoClub, hasThreeBoatsOfTwoClasses) {
    std::set<std::string> classes;
    for (const core::Cells& cells : rows.all(SheetId::Boats))
        classes.insert(core::boatFrom(cells).boatClass);
    EXPECT_EQ(rows.all(SheetId::Boats).size(), 3U);
    EXPECT_EQ(classes, (std::set<std::string>{"inflatable", "skiff"}));
}

/// What demo/README.md tells of it.
TEST_F(DemoClub, tellsItsStory) {
    const core::Item knife = itemWith("state", "missing");
    EXPECT_EQ(knife.kitType, "knife");
    EXPECT_EQ(knife.boat, "Dabchick");

    const auto jackets = rows.where(SheetId::Items, "boat", "Bittern");
    std::multiset<std::string> sizes;
    for (const core::Cells& cells : jackets)
        if (const core::Item item = core::itemFrom(cells); item.kitType == "life jacket")
            sizes.insert(item.size);
    EXPECT_EQ(sizes, (std::multiset<std::string>{"M", "S"}));
    const auto small = rows.find(SheetId::Sizes, "life jacket\x1Fs");
    const auto tobin = rows.find(SheetId::People, "tobin ashe");
    ASSERT_TRUE(small && tobin);
    EXPECT_FALSE(core::sizeFrom(*small).massKg.holds(core::personFrom(*tobin).massKg.value()));

    EXPECT_LT(itemWith("batch", "R22-11").stamped->lastDay(), *core::CalendarDay::parse("2026-03-14"));
    EXPECT_EQ(itemWith("serial", "IJ-202").note, "went off in the reeds");
    EXPECT_EQ(rows.all(SheetId::Log).size(), 6U);
}

} // namespace
