#include "core/register/cell_values.h"
#include "core/register/typed_rows.h"

#include "core/base/store_failure.h"

#include <gtest/gtest.h>

namespace {

using core::Cells;
using core::SheetId;

/// Cells of a sheet by column name.
Cells cellsOf(SheetId id, const std::vector<std::pair<std::string_view, std::string>>& given) {
    const core::Sheet& sheet = core::sheet(id);
    Cells cells(sheet.columns.size());
    for (const auto& [column, text] : given)
        cells.at(static_cast<std::size_t>(sheet.indexOf(column))) = text;
    return cells;
}

TEST(TypedRows, emptyCellsReadAsTheContractsDefaults) {
    const auto type = core::kitTypeFrom(cellsOf(SheetId::KitTypes, {{"kit_type", "paddle"}}));
    EXPECT_EQ(type.name, "paddle");
    EXPECT_FALSE(type.worn);
    EXPECT_EQ(type.pack, 1);
    EXPECT_EQ(type.spares, 0);
    EXPECT_FALSE(type.price);

    const auto rule =
        core::lifeRuleFrom(cellsOf(SheetId::LifeRules, {{"rule", "printed"}, {"kind", "stamped"}}));
    EXPECT_EQ(rule.kind, core::RuleKind::Stamped);
    EXPECT_EQ(rule.severity, core::Severity::Stop);
    EXPECT_EQ(rule.leadDays, 30);
    EXPECT_EQ(rule.tolerance.kind, core::Tolerance::Kind::None);
    EXPECT_EQ(rule.undated, core::Undated::Remark);
    EXPECT_TRUE(rule.steps.empty());

    EXPECT_EQ(core::boatFrom(cellsOf(SheetId::Boats, {{"boat", "Heron"}})).priority, 1);
    const auto line = core::manifestLineFrom(cellsOf(SheetId::ManifestLines, {{"kit_type", "paddle"}}));
    EXPECT_EQ(line.quantity, 1);
    EXPECT_TRUE(line.required);
    EXPECT_TRUE(
        core::pointFrom(cellsOf(SheetId::Points, {{"phase", "launch"}, {"point", "bung"}, {"kind", "look"}}))
            .point.required);
    EXPECT_EQ(core::itemFrom(cellsOf(SheetId::Items, {{"code", "K"}})).state, core::ItemState::Serviceable);
    EXPECT_TRUE(
        core::serviceFrom(cellsOf(SheetId::Services, {{"rule", "look"}, {"day", "2026-03-14"}})).passed);
    const auto entry = core::logEntryFrom(cellsOf(SheetId::Log, {{"day", "2026-03-14"}, {"text", "torn"}}));
    EXPECT_EQ(entry.severity, core::Severity::Remark);
    EXPECT_FALSE(entry.closed);
}

TEST(TypedRows, filledCellsReadAsTheyStand) {
    const auto rule = core::lifeRuleFrom(cellsOf(SheetId::LifeRules, {{"part", "cylinder"},
                                                                      {"rule", "weight"},
                                                                      {"kind", "service_every"},
                                                                      {"n", "24"},
                                                                      {"steps", "108:12;120:6"},
                                                                      {"severity", "remark"},
                                                                      {"lead_days", "60"},
                                                                      {"tolerance", "14d"},
                                                                      {"strict", "yes"},
                                                                      {"undated", "ignore"},
                                                                      {"source", "example"}}));
    EXPECT_EQ(rule.part, "cylinder");
    EXPECT_EQ(rule.kind, core::RuleKind::ServiceEvery);
    EXPECT_EQ(rule.n, 24);
    ASSERT_EQ(rule.steps.size(), 2U);
    EXPECT_EQ(rule.steps[0].ageMonths, 108);
    EXPECT_EQ(rule.steps[1].n, 6);
    EXPECT_EQ(rule.severity, core::Severity::Remark);
    EXPECT_EQ(rule.leadDays, 60);
    EXPECT_EQ(rule.tolerance.days, 14);
    EXPECT_TRUE(rule.strict);
    EXPECT_EQ(rule.undated, core::Undated::Ignore);

    const auto item = core::itemFrom(
        cellsOf(SheetId::Items, {{"state", "written off"}, {"since", "2026-01-02"}, {"stamped", "2026-08"}}));
    EXPECT_EQ(item.state, core::ItemState::WrittenOff);
    EXPECT_EQ(item.since->iso(), "2026-01-02");
    EXPECT_EQ(item.stamped->lastDay().iso(), "2026-08-31");
    EXPECT_FALSE(item.made);

    const auto [phase, point] = core::pointFrom(cellsOf(
        SheetId::Points,
        {{"phase", "return"}, {"point", "water"}, {"kind", "measure"}, {"low", "-1.5"}, {"required", "no"}}));
    EXPECT_EQ(phase, "return");
    EXPECT_EQ(point.limits.low, -1.5);
    EXPECT_FALSE(point.limits.high);
    EXPECT_FALSE(point.required);

    const auto line = core::manifestLineFrom(
        cellsOf(SheetId::ManifestLines, {{"quantity", "0"}, {"substitutes", "oar;pole"}}));
    EXPECT_EQ(line.quantity, 0);
    EXPECT_EQ(line.substitutes, (std::vector<std::string>{"oar", "pole"}));

    const auto size =
        core::sizeFrom(cellsOf(SheetId::Sizes, {{"size", "M"}, {"mass_low_kg", "50"}, {"wanted", "4"}}));
    EXPECT_TRUE(size.massKg.holds(50));
    EXPECT_FALSE(size.massKg.holds(49.9));
    EXPECT_EQ(size.wanted, 4);

    const auto use =
        core::useFrom(cellsOf(SheetId::Use, {{"day", "2026-03"}, {"hours", "1.5"}, {"launches", "2"}}));
    EXPECT_EQ(use.day.iso(), "2026-03-01");
    EXPECT_EQ(use.hours, 1.5);
    EXPECT_EQ(use.launches, 2);

    const auto person = core::personFrom(cellsOf(SheetId::People, {{"person", "Ada"}, {"chest_cm", "92"}}));
    EXPECT_EQ(person.chestCm, 92);
    EXPECT_FALSE(person.massKg);

    EXPECT_EQ(
        core::happeningFrom(cellsOf(SheetId::Happenings, {{"event", "impact"}, {"day", "2025"}})).day.iso(),
        "2025-01-01");
    EXPECT_EQ(core::partFrom(cellsOf(SheetId::Parts, {{"part", "cylinder"}, {"made", "2020"}})).made->text(),
              "2020");
}

TEST(TypedRows, aNumberThatWasCountedUpIsWrittenWithoutItsResidue) {
    const std::vector<std::pair<double, std::string>> written{{0.1 + 0.2, "0.3"},
                                                              {0.8 - 0.7 - 0.1, "0"},
                                                              {-1e-17, "0"},
                                                              {5, "5"},
                                                              {100, "100"},
                                                              {1.25, "1.25"},
                                                              {1.0 / 3, "0.3333"},
                                                              {0.00005, "0.0001"},
                                                              {9999.9999, "9999.9999"},
                                                              {-2.5, "-2.5"},
                                                              {1e9, "1000000000"}};
    for (const auto& [number, text] : written) {
        EXPECT_EQ(core::numberText(number), text);
        EXPECT_TRUE(core::numberFrom(text)) << "what is written can be read";
    }
}

// An earlier program wrote the residue of such sums with an exponent, and facts are never changed.
TEST(TypedRows, theResidueInAnEarlierFactIsNothing) {
    const auto hours = [](const char* text) {
        return core::useFrom(cellsOf(SheetId::Use, {{"code", "K"}, {"day", "2026-03-14"}, {"hours", text}}))
            .hours;
    };
    EXPECT_EQ(hours("5.551115123125783e-17"), 0);
    EXPECT_EQ(hours("0.30000000000000004"), 0.1 + 0.2);
    EXPECT_THROW(hours("1e5"), core::StoreFailure);
    EXPECT_THROW(hours("5e-17 h"), core::StoreFailure);
}

// Design, the register as CSV: every choice of a column has a meaning, and each its own.
TEST(TypedRows, everyChoiceHasAMeaning) {
    std::vector<core::RuleKind> kinds;
    for (std::string_view kind : core::sheet(SheetId::LifeRules).columns[3].choices)
        kinds.push_back(core::lifeRuleFrom(cellsOf(SheetId::LifeRules, {{"kind", std::string(kind)}})).kind);
    EXPECT_EQ(kinds.size(), 9U);
    for (std::size_t i = 0; i < kinds.size(); ++i)
        EXPECT_EQ(static_cast<std::size_t>(kinds[i]), i);
    std::vector<core::ItemState> states;
    for (std::string_view state : core::sheet(SheetId::Items).columns[6].choices)
        states.push_back(core::itemFrom(cellsOf(SheetId::Items, {{"state", std::string(state)}})).state);
    EXPECT_EQ(states, (std::vector{core::ItemState::Serviceable, core::ItemState::Unserviceable,
                                   core::ItemState::Missing, core::ItemState::WrittenOff}));
}

} // namespace
