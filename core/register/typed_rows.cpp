#include "core/register/typed_rows.h"

#include "core/base/store_failure.h"
#include "core/register/cell_values.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <utility>

namespace core {
namespace {

template <class T, std::size_t size>
using Meanings = std::array<std::pair<std::string_view, T>, size>;

constexpr Meanings<RuleKind, 9> ruleKindMeanings{{
    {"stamped", RuleKind::Stamped},
    {"from_made", RuleKind::FromMade},
    {"from_first_use", RuleKind::FromFirstUse},
    {"year_end_from_made", RuleKind::YearEndFromMade},
    {"inspect_every", RuleKind::InspectEvery},
    {"service_every", RuleKind::ServiceEvery},
    {"every_hours", RuleKind::EveryHours},
    {"every_uses", RuleKind::EveryUses},
    {"after_event", RuleKind::AfterEvent},
}};
constexpr Meanings<Severity, 2> severityMeanings{{{"stop", Severity::Stop}, {"remark", Severity::Remark}}};
constexpr Meanings<Undated, 3> undatedWords{
    {{"stop", Undated::Stop}, {"remark", Undated::Remark}, {"ignore", Undated::Ignore}}};
constexpr Meanings<PointKind, 3> pointKindMeanings{
    {{"look", PointKind::Look}, {"measure", PointKind::Measure}, {"timed", PointKind::Timed}}};
constexpr Meanings<ItemState, 4> itemStateMeanings{{
    {nameOf(ItemState::Serviceable), ItemState::Serviceable},
    {nameOf(ItemState::Unserviceable), ItemState::Unserviceable},
    {nameOf(ItemState::Missing), ItemState::Missing},
    {nameOf(ItemState::WrittenOff), ItemState::WrittenOff},
}};

/// A number of the register. One with an exponent was left by summing hours up and taking them off again: it
/// is a split second, and nothing.
std::optional<double> storedNumber(std::string_view text) {
    if (const auto number = numberFrom(text)) return number;
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool isResidue = error == std::errc{} && end == text.data() + text.size() &&
                           std::abs(value) < 1e-4 && text.find('e') != std::string_view::npos;
    return isResidue ? std::optional(0.0) : std::nullopt;
}

/// Whether a cell that is not empty, or the default of one that is, can be read.
bool isReadable(const Column& column, std::string_view text) {
    switch (column.type) {
    case CellType::Number:
        return storedNumber(text).has_value();
    case CellType::Amount:
        return storedNumber(text).value_or(-1) >= 0;
    case CellType::Count:
        return countFrom(text).has_value();
    case CellType::YesNo:
        return text == "yes" || text == "no";
    case CellType::Choice:
        return column.offers(text);
    case CellType::Day:
    case CellType::ExactDay:
        return PartialDay::parse(text).has_value();
    case CellType::Steps:
        return stepsFrom(text).has_value();
    case CellType::Tolerance:
        return toleranceFrom(text).has_value();
    case CellType::Text:
    case CellType::Name:
    case CellType::Names:
    case CellType::Tag:
    case CellType::Gtin:
        return true;
    }
    return true;
}

/// Without these cells, which have no default, a row says nothing.
bool isNeeded(SheetId id, std::string_view column) {
    switch (id) {
    case SheetId::LifeRules:
        return column == "kind";
    case SheetId::Points:
        return column == "kind" || column == "phase";
    case SheetId::Services:
    case SheetId::Happenings:
    case SheetId::Use:
    case SheetId::Log:
        return column == "day";
    default:
        return false;
    }
}

/// The key cells, as they are spelled.
std::string nameOfRow(const Sheet& sheet, const Cells& cells) {
    std::string name;
    for (std::size_t i = 0; i < static_cast<std::size_t>(sheet.keyColumns); ++i)
        if (!cells[i].empty()) name += (name.empty() ? "" : " / ") + cells[i];
    return name;
}

/// A row's cells by column name, each of them one that this program understands.
class Row {
public:
    Row(SheetId id, const Cells& cells)
        : m_sheet(sheet(id))
        , m_cells(cells) {
        requireReadable(m_sheet, cells);
    }

    std::string text(std::string_view column) const { return std::string(cellOf(m_sheet, m_cells, column)); }
    bool yes(std::string_view column) const { return cellOf(m_sheet, m_cells, column) == "yes"; }

    std::optional<double> number(std::string_view column) const {
        return storedNumber(cellOf(m_sheet, m_cells, column));
    }

    int count(std::string_view column) const {
        return static_cast<int>(std::lround(number(column).value_or(0)));
    }

    std::optional<int> optionalCount(std::string_view column) const {
        return number(column) ? std::optional(count(column)) : std::nullopt;
    }

    std::optional<PartialDay> day(std::string_view column) const {
        return PartialDay::parse(cellOf(m_sheet, m_cells, column));
    }

    std::optional<CalendarDay> firstDay(std::string_view column) const {
        const auto given = day(column);
        return given ? std::optional(given->firstDay()) : std::nullopt;
    }

    Range range(std::string_view low, std::string_view high) const { return {number(low), number(high)}; }

    template <class T, std::size_t size>
    T oneOf(std::string_view column, const Meanings<T, size>& meanings) const {
        const auto cell = cellOf(m_sheet, m_cells, column);
        const auto found =
            std::find_if(meanings.begin(), meanings.end(), [&](auto& m) { return m.first == cell; });
        return found->second;
    }

private:
    const Sheet& m_sheet;
    const Cells& m_cells;
};

} // namespace

bool lacksNeededCell(const Sheet& sheet, const Cells& cells) {
    for (std::size_t i = 0; i < sheet.columns.size(); ++i)
        if (cells[i].empty() && sheet.columns[i].byDefault.empty() &&
            isNeeded(sheet.id, sheet.columns[i].name))
            return true;
    return false;
}

std::optional<CellFault> faultOf(const Sheet& sheet, const Cells& cells) {
    for (std::size_t i = 0; i < sheet.columns.size(); ++i) {
        const Column& column = sheet.columns[i];
        const std::string_view text = cells[i].empty() ? column.byDefault : std::string_view(cells[i]);
        if (text.empty() ? isNeeded(sheet.id, column.name) : !isReadable(column, text))
            return CellFault{column.name, cells[i]};
    }
    return std::nullopt;
}

void requireReadable(const Sheet& sheet, const Cells& cells) {
    if (const auto fault = faultOf(sheet, cells))
        throw StoreFailure(unreadableCell(
            {std::string(sheet.file), nameOfRow(sheet, cells), std::string(fault->column)}, {}, fault->text));
}

std::string_view cellOf(const Sheet& sheet, const Cells& cells, std::string_view column) {
    const int index = sheet.indexOf(column);
    assert(index >= 0);
    const auto at = static_cast<std::size_t>(index);
    return cells[at].empty() ? sheet.columns[at].byDefault : std::string_view(cells[at]);
}

KitType kitTypeFrom(const Cells& cells) {
    const Row row(SheetId::KitTypes, cells);
    KitType type;
    type.name = row.text("kit_type");
    type.worn = row.yes("worn");
    type.personal = row.yes("personal");
    type.orderLeadDays = row.count("order_lead_days");
    type.pack = row.count("pack");
    type.price = row.number("price");
    type.spares = row.count("spares");
    return type;
}

Size sizeFrom(const Cells& cells) {
    const Row row(SheetId::Sizes, cells);
    Size size;
    size.name = row.text("size");
    size.massKg = row.range("mass_low_kg", "mass_high_kg");
    size.chestCm = row.range("chest_low_cm", "chest_high_cm");
    if (row.number("wanted")) size.wanted = row.count("wanted");
    size.source = row.text("source");
    return size;
}

LifeRule lifeRuleFrom(const Cells& cells) {
    const Row row(SheetId::LifeRules, cells);
    LifeRule rule;
    rule.part = row.text("part");
    rule.name = row.text("rule");
    rule.kind = row.oneOf("kind", ruleKindMeanings);
    rule.n = row.number("n").value_or(0);
    rule.steps = stepsFrom(row.text("steps")).value();
    rule.event = row.text("event");
    rule.severity = row.oneOf("severity", severityMeanings);
    rule.leadDays = row.count("lead_days");
    rule.tolerance = toleranceFrom(row.text("tolerance")).value();
    rule.strict = row.yes("strict");
    rule.undated = row.oneOf("undated", undatedWords);
    rule.source = row.text("source");
    return rule;
}

ClubPlace placeFrom(const Cells& cells) {
    const Row row(SheetId::Places, cells);
    return {row.text("place"), row.text("tag"), row.firstDay("until"), row.text("note")};
}

Boat boatFrom(const Cells& cells) {
    const Row row(SheetId::Boats, cells);
    return {row.text("boat"),
            row.text("boat_class"),
            row.text("tag"),
            row.text("place"),
            row.number("priority").value_or(1),
            row.optionalCount("check_every_days"),
            row.firstDay("until"),
            row.text("note")};
}

ManifestLine manifestLineFrom(const Cells& cells) {
    const Row row(SheetId::ManifestLines, cells);
    return {row.text("kit_type"), row.count("quantity"), row.yes("required"),
            namesFrom(row.text("substitutes")), row.text("note")};
}

PhasePoint pointFrom(const Cells& cells) {
    const Row row(SheetId::Points, cells);
    return {row.text("phase"),
            {row.text("point"), row.oneOf("kind", pointKindMeanings), row.text("unit"),
             row.range("low", "high"), row.yes("required"), row.text("note")}};
}

Person personFrom(const Cells& cells) {
    const Row row(SheetId::People, cells);
    return {row.text("person"),     row.text("tag"),       row.text("role"), row.number("mass_kg"),
            row.number("chest_cm"), row.firstDay("until"), row.text("note")};
}

Item itemFrom(const Cells& cells) {
    const Row row(SheetId::Items, cells);
    Item item;
    item.id = row.text("code");
    item.tag = item.id;
    item.kitType = row.text("kit_type");
    item.size = row.text("size");
    item.boat = row.text("boat");
    item.place = row.text("place");
    item.person = row.text("person");
    item.state = row.oneOf("state", itemStateMeanings);
    item.since = row.firstDay("since");
    item.why = row.text("why");
    item.made = row.day("made");
    item.firstUse = row.day("first_use");
    item.stamped = row.day("stamped");
    item.registered = row.day("registered");
    item.maker = row.text("maker");
    item.gtin = row.text("gtin");
    item.serial = row.text("serial");
    item.batch = row.text("batch");
    item.note = row.text("note");
    return item;
}

Part partFrom(const Cells& cells) {
    const Row row(SheetId::Parts, cells);
    return {row.text("part"), row.day("made"), row.day("first_use"), row.day("stamped")};
}

ServiceRecord serviceFrom(const Cells& cells) {
    const Row row(SheetId::Services, cells);
    return {row.text("part"), row.text("rule"), row.firstDay("day").value(), std::nullopt, row.yes("passed")};
}

Happening happeningFrom(const Cells& cells) {
    const Row row(SheetId::Happenings, cells);
    return {row.text("event"), row.firstDay("day").value(), std::nullopt};
}

Use useFrom(const Cells& cells) {
    const Row row(SheetId::Use, cells);
    return {row.firstDay("day").value(), row.number("hours").value_or(0), row.number("launches").value_or(0)};
}

LogEntry logEntryFrom(const Cells& cells) {
    const Row row(SheetId::Log, cells);
    return {{},
            row.text("boat"),
            {row.text("code"), row.text("code")},
            row.firstDay("day").value(),
            row.text("text"),
            row.oneOf("severity", severityMeanings),
            row.text("by"),
            row.firstDay("closed"),
            row.text("closing")};
}

std::optional<ItemState> itemStateFrom(std::string_view text) {
    const auto found = std::find_if(itemStateMeanings.begin(), itemStateMeanings.end(),
                                    [&](const auto& each) { return each.first == text; });
    return found == itemStateMeanings.end() ? std::nullopt : std::optional(found->second);
}

std::string_view nameOf(RuleKind kind) {
    return ruleKindMeanings[static_cast<std::size_t>(kind)].first;
}

std::string_view nameOf(PointKind kind) {
    return pointKindMeanings[static_cast<std::size_t>(kind)].first;
}

} // namespace core
