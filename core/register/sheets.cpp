#include "core/register/sheets.h"

#include "core/base/plain_text.h"
#include "core/register/item.h"

#include <algorithm>

namespace core {
namespace {

using Choices = std::array<std::string_view, 2>;
constexpr Choices severities{"stop", "remark"};
constexpr Choices phases{"launch", "return"};
constexpr std::array<std::string_view, 3> undatedMeanings{"stop", "remark", "ignore"};
constexpr std::array<std::string_view, 3> pointKinds{"look", "measure", "timed"};
constexpr std::array<std::string_view, 3> roles{"crew", "driver", "gear officer"};
constexpr std::array<std::string_view, 5> reasons{"lost", "damaged", "worn", "expired", byMistake};
constexpr std::array<std::string_view, 9> ruleKinds{
    "stamped",       "from_made",   "from_first_use", "year_end_from_made", "inspect_every",
    "service_every", "every_hours", "every_uses",     "after_event"};

constexpr Column text(std::string_view name) {
    return {name, CellType::Text};
}
constexpr Column cell(std::string_view name, CellType type, std::string_view byDefault = {}) {
    return {name, type, std::nullopt, byDefault};
}
constexpr Column choice(std::string_view name, std::span<const std::string_view> choices,
                        std::string_view byDefault = {}) {
    return {name, CellType::Choice, std::nullopt, byDefault, choices};
}
constexpr Column nameOf(std::string_view name, SheetId sheet) {
    return {name, CellType::Name, sheet};
}
constexpr Column tag(std::string_view name, char tagClass) {
    return {name, CellType::Tag, std::nullopt, {}, {}, tagClass};
}
constexpr Column lastDay(std::string_view name) {
    return {name, CellType::ExactDay, std::nullopt, {}, {}, 0, false, true};
}
constexpr Column measureOfPerson(std::string_view name) {
    return {name, CellType::Amount, std::nullopt, {}, {}, 0, true};
}
constexpr Column itemCode() {
    return {"code", CellType::Tag, SheetId::Items, {}, {}, 'K'};
}

constexpr std::array places{text("place"), tag("tag", 'S'), lastDay("until"), text("note")};
constexpr std::array kitTypes{
    text("kit_type"),
    cell("worn", CellType::YesNo, "no"),
    cell("personal", CellType::YesNo, "no"),
    cell("order_lead_days", CellType::Count),
    cell("pack", CellType::Count, "1"),
    cell("price", CellType::Amount),
    cell("spares", CellType::Count, "0"),
    text("note"),
};
constexpr std::array sizes{
    nameOf("kit_type", SheetId::KitTypes),  text("size"),
    cell("mass_low_kg", CellType::Amount),  cell("mass_high_kg", CellType::Amount),
    cell("chest_low_cm", CellType::Amount), cell("chest_high_cm", CellType::Amount),
    cell("wanted", CellType::Count),        text("source"),
};
constexpr std::array lifeRules{
    nameOf("kit_type", SheetId::KitTypes),
    text("part"),
    text("rule"),
    choice("kind", ruleKinds),
    cell("n", CellType::Amount),
    cell("steps", CellType::Steps),
    text("event"),
    choice("severity", severities, "stop"),
    cell("lead_days", CellType::Count, "30"),
    cell("tolerance", CellType::Tolerance, "none"),
    cell("strict", CellType::YesNo, "no"),
    choice("undated", undatedMeanings, "remark"),
    text("source"),
};
constexpr std::array boats{
    text("boat"),
    text("boat_class"),
    tag("tag", 'B'),
    nameOf("place", SheetId::Places),
    cell("priority", CellType::Amount, "1"),
    cell("check_every_days", CellType::Count),
    lastDay("until"),
    text("note"),
};
constexpr std::array manifestLines{
    text("boat_class"),
    nameOf("boat", SheetId::Boats),
    nameOf("kit_type", SheetId::KitTypes),
    cell("quantity", CellType::Count, "1"),
    cell("required", CellType::YesNo, "yes"),
    Column{"substitutes", CellType::Names, SheetId::KitTypes},
    text("note"),
};
constexpr std::array points{
    text("boat_class"),
    nameOf("boat", SheetId::Boats),
    choice("phase", phases),
    text("point"),
    choice("kind", pointKinds),
    text("unit"),
    cell("low", CellType::Number),
    cell("high", CellType::Number),
    cell("required", CellType::YesNo, "yes"),
    text("note"),
};
constexpr std::array people{
    text("person"),
    tag("tag", 'P'),
    choice("role", roles),
    measureOfPerson("mass_kg"),
    measureOfPerson("chest_cm"),
    lastDay("until"),
    text("note"),
};
constexpr std::array items{
    tag("code", 'K'),
    nameOf("kit_type", SheetId::KitTypes),
    text("size"),
    nameOf("boat", SheetId::Boats),
    nameOf("place", SheetId::Places),
    nameOf("person", SheetId::People),
    choice("state", itemStateNames, "serviceable"),
    cell("since", CellType::ExactDay),
    choice("why", reasons),
    cell("made", CellType::Day),
    cell("first_use", CellType::Day),
    cell("stamped", CellType::Day),
    cell("registered", CellType::Day),
    text("maker"),
    cell("gtin", CellType::Gtin),
    text("serial"),
    text("batch"),
    text("note"),
};
constexpr std::array parts{
    itemCode(),
    text("part"),
    cell("made", CellType::Day),
    cell("first_use", CellType::Day),
    cell("stamped", CellType::Day),
    text("serial"),
    text("note"),
};
constexpr std::array services{
    itemCode(),
    text("part"),
    text("rule"),
    cell("day", CellType::Day),
    cell("passed", CellType::YesNo, "yes"),
    text("by"),
    text("note"),
};
constexpr std::array happenings{itemCode(), text("event"), cell("day", CellType::Day), text("note")};
constexpr std::array use{
    itemCode(),
    cell("day", CellType::Day),
    cell("hours", CellType::Amount),
    cell("launches", CellType::Count),
};
constexpr std::array log{
    nameOf("boat", SheetId::Boats),           itemCode(), cell("day", CellType::ExactDay),    text("text"),
    choice("severity", severities, "remark"), text("by"), cell("closed", CellType::ExactDay), text("closing"),
};

constexpr std::array<Sheet, sheetCount> contract{{
    {SheetId::Places, "places.csv", "place", 1, places},
    {SheetId::KitTypes, "kit_types.csv", "kit_type", 1, kitTypes, false, true, true},
    {SheetId::Sizes, "sizes.csv", "size", 2, sizes, false, true, true},
    {SheetId::LifeRules, "life_rules.csv", "life_rule", 3, lifeRules, false, true},
    {SheetId::Boats, "boats.csv", "boat", 1, boats},
    {SheetId::ManifestLines, "manifest_lines.csv", "manifest_line", 3, manifestLines, true, true},
    {SheetId::Points, "points.csv", "point", 4, points, true, true},
    {SheetId::People, "people.csv", "person", 1, people},
    {SheetId::Items, "items.csv", "item", 1, items},
    {SheetId::Parts, "parts.csv", "part", 2, parts},
    {SheetId::Services, "services.csv", "service", 4, services},
    {SheetId::Happenings, "happenings.csv", "happening", 3, happenings},
    {SheetId::Use, "use.csv", "use_record", 2, use, false, true},
    {SheetId::Log, "log.csv", "log_entry", 4, log},
}};

struct NamedRow {
    Named named;
    std::string_view column;
    std::optional<SheetId> sheet;
};

constexpr std::array<NamedRow, namedCount> namedRows{{{Named::Boat, "boat", SheetId::Boats},
                                                      {Named::Place, "place", SheetId::Places},
                                                      {Named::Person, "person", SheetId::People},
                                                      {Named::KitType, "kit_type", SheetId::KitTypes},
                                                      {Named::Size, "size", SheetId::Sizes},
                                                      {Named::BoatClass, "boat_class", std::nullopt}}};

} // namespace

std::string_view nameOf(Named named) {
    return namedRows[static_cast<std::size_t>(named)].column;
}

std::optional<Named> namedFrom(std::string_view name) {
    for (const NamedRow& each : namedRows)
        if (each.column == name) return each.named;
    return std::nullopt;
}

std::optional<SheetId> sheetOf(Named named) {
    return namedRows[static_cast<std::size_t>(named)].sheet;
}

std::optional<Named> namedIn(const Sheet& sheet, int column) {
    const Column& described = sheet.columns[static_cast<std::size_t>(column)];
    for (const NamedRow& each : namedRows)
        if (described.refersTo ? described.refersTo == each.sheet : described.name == each.column)
            return each.named;
    return std::nullopt;
}

int Sheet::indexOf(std::string_view column) const {
    const auto found =
        std::find_if(columns.begin(), columns.end(), [&](const Column& c) { return c.name == column; });
    return found == columns.end() ? -1 : static_cast<int>(found - columns.begin());
}

const Column& Sheet::column(std::string_view name) const {
    return columns[static_cast<std::size_t>(indexOf(name))];
}

bool Column::offers(std::string_view choice) const {
    return std::find(choices.begin(), choices.end(), choice) != choices.end();
}

const Sheet& sheet(SheetId id) {
    return contract[static_cast<std::size_t>(id)];
}

std::span<const Sheet> allSheets() {
    return contract;
}

const Sheet* sheetOfFile(std::string_view file) {
    const auto found =
        std::find_if(contract.begin(), contract.end(), [&](const Sheet& s) { return s.file == file; });
    return found == contract.end() ? nullptr : &*found;
}

const Sheet* sheetOfName(std::string_view name) {
    const auto found =
        std::find_if(contract.begin(), contract.end(), [&](const Sheet& s) { return s.name() == name; });
    return found == contract.end() ? nullptr : &*found;
}

const Sheet* sheetOfTable(std::string_view table) {
    const auto found =
        std::find_if(contract.begin(), contract.end(), [&](const Sheet& s) { return s.table == table; });
    return found == contract.end() ? nullptr : &*found;
}

std::string RegisterRows::nameNow(Named, const std::string& name, const std::string&) const {
    return name;
}

std::string RegisterRows::codeOfTag(const std::string& tag) const {
    return tag;
}

std::string keyOf(const Sheet& sheet, const Cells& cells) {
    std::string key;
    for (int i = 0; i < sheet.keyColumns; ++i) {
        if (i > 0) key += '\x1F';
        key += foldName(cells[static_cast<std::size_t>(i)]);
    }
    return key;
}

} // namespace core
