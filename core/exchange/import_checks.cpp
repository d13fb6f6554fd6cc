#include "core/exchange/import_checks.h"

#include "core/base/error_code.h"
#include "core/exchange/csv_cell.h"
#include "core/register/cell_values.h"
#include "core/register/typed_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>

namespace core {
namespace {

constexpr int mostPlaces = 1000;

/// One touched row under check.
class Check {
public:
    Check(ImportDraft& draft, Rejections& rejections, DraftRow& row)
        : m_draft(draft)
        , m_rejections(rejections)
        , m_row(row)
        , m_sheet(sheet(row.sheet)) {}

    void run() {
        switch (m_row.sheet) {
        case SheetId::KitTypes:
            return checkKitType();
        case SheetId::Boats:
            if (areGood({"check_every_days"}) && !cell("check_every_days").empty() &&
                number("check_every_days") < 1)
                reject("check_every_days", {ErrorCode::CheckedEveryNoDays});
            return;
        case SheetId::Sizes:
            checkRange("mass_low_kg", "mass_high_kg");
            return checkRange("chest_low_cm", "chest_high_cm");
        case SheetId::LifeRules:
            return checkLifeRule();
        case SheetId::ManifestLines:
            return checkLine();
        case SheetId::Points:
            requireCell("kind");
            return checkRange("low", "high");
        case SheetId::Items:
            requireCell("kit_type");
            return checkHome();
        default:
            return;
        }
    }

private:
    std::string_view cell(std::string_view column) const { return cellOf(m_sheet, m_row.cells, column); }
    std::string text(std::string_view column) const { return std::string(cell(column)); }
    double number(std::string_view column) const { return numberFrom(cell(column)).value_or(0); }

    bool areGood(std::initializer_list<std::string_view> columns) const {
        return std::none_of(columns.begin(), columns.end(),
                            [&](auto column) { return m_row.given->isFaulty(m_sheet.indexOf(column)); });
    }

    void reject(std::string_view column, Error reason) {
        m_rejections.add(m_sheet, *m_row.given, m_sheet.indexOf(column), std::move(reason));
    }

    void requireCell(std::string_view column) {
        if (cell(column).empty() && areGood({column}))
            reject(column, {ErrorCode::CellMissing, {std::string(column)}});
    }

    void checkRange(std::string_view low, std::string_view high) {
        if (!areGood({low, high}) || cell(low).empty() || cell(high).empty() || number(low) <= number(high))
            return;
        reject(low, {ErrorCode::RangeReversed, {std::string(low), text(low), std::string(high), text(high)}});
    }

    void checkKitType() {
        if (areGood({"pack"}) && number("pack") < 1) reject("pack", {ErrorCode::PackOfNothing});
        checkLinesAgree("worn");
        checkLinesAgree("personal");
    }

    /// Lines that the files touch are checked on their own, and blamed there.
    void checkLinesAgree(std::string_view column) {
        if (m_row.isNew() || cell(column) == cellOf(m_sheet, m_row.before, column)) return;
        for (const DraftRow& line : m_draft.all(SheetId::ManifestLines))
            if (!line.given && breaks(line, column))
                return reject(column, {ErrorCode::LineWouldDisagree,
                                       {shown(line.cell("kit_type")), std::string(column)}});
    }

    /// Would this kit type, as it is now to be, disagree with another of that line.
    bool breaks(const DraftRow& line, std::string_view column) const {
        const std::string key = keyOf(m_sheet, m_row.cells);
        std::vector<std::string> names = namesFrom(line.cell("substitutes"));
        names.push_back(line.cell("kit_type"));
        const bool isInIt =
            std::any_of(names.begin(), names.end(), [&](auto& n) { return foldName(n) == key; });
        return isInIt && std::any_of(names.begin(), names.end(), [&](auto& n) {
                   const DraftRow* other = m_draft.find(SheetId::KitTypes, foldName(n));
                   return other && cellOf(m_sheet, other->cells, column) != cell(column);
               });
    }

    void checkLine() {
        if (areGood({"quantity"}) && number("quantity") > mostPlaces)
            reject("quantity", {ErrorCode::LineTooLarge, {text("quantity"), std::to_string(mostPlaces)}});
        const DraftRow* own = m_draft.find(SheetId::KitTypes, foldName(cell("kit_type")));
        for (const std::string& name : namesFrom(cell("substitutes"))) {
            const DraftRow* substitute = m_draft.find(SheetId::KitTypes, foldName(name));
            if (!own || !substitute || !areGood({"substitutes"})) return;
            checkSubstitute(*own, *substitute);
        }
    }

    void checkSubstitute(const DraftRow& own, const DraftRow& substitute) {
        const Sheet& kitTypes = sheet(SheetId::KitTypes);
        for (std::string_view column : {"worn", "personal"})
            if (cellOf(kitTypes, own.cells, column) != cellOf(kitTypes, substitute.cells, column))
                return reject("substitutes",
                              {ErrorCode::SubstituteDisagrees,
                               {shown(substitute.cells[0]), shown(own.cells[0]), std::string(column)}});
    }

    void checkLifeRule() {
        requireCell("kind");
        if (cell("kind").empty() || !areGood({"kind"})) return;
        checkCounted();
        checkSteps();
        const bool waits = cell("kind") == "after_event";
        if (areGood({"event"}) && waits && cell("event").empty()) reject("event", {ErrorCode::EventMissing});
        if (areGood({"event"}) && !waits && !cell("event").empty())
            reject("event", {ErrorCode::EventNotWaitedFor});
    }

    bool isKind(std::initializer_list<std::string_view> kinds) const {
        return std::find(kinds.begin(), kinds.end(), cell("kind")) != kinds.end();
    }

    static bool isWhole(double value) { return value == std::floor(value); }

    void checkCounted() {
        if (!areGood({"n"})) return;
        if (isKind({"stamped", "after_event"})) {
            if (!cell("n").empty()) reject("n", {ErrorCode::RuleCountsNothing, {text("kind")}});
        } else if (number("n") <= 0) {
            reject("n", {ErrorCode::RuleNeedsNumber, {text("kind")}});
        } else if (!isWhole(number("n")) && !isKind({"every_hours"})) {
            reject("n", {ErrorCode::RuleNeedsWholeNumber, {text("n"), text("kind")}});
        } else if (!isKind({"every_hours", "every_uses"}) && number("n") > 12000) {
            reject("n", {ErrorCode::RuleNumberTooLarge, {text("n")}});
        }
    }

    void checkSteps() {
        if (!areGood({"steps"}) || cell("steps").empty()) return;
        if (!isKind({"inspect_every", "service_every", "every_hours", "every_uses"}))
            return reject("steps", {ErrorCode::RuleWithoutSteps, {text("kind")}});
        const auto steps = stepsFrom(cell("steps")).value();
        const bool whole =
            std::all_of(steps.begin(), steps.end(), [](auto& step) { return isWhole(step.n); });
        const bool small =
            std::all_of(steps.begin(), steps.end(), [](auto& step) { return step.n <= 12000; });
        if ((!whole || !small) && !isKind({"every_hours"}))
            reject("steps", {ErrorCode::StepsNotWhole, {text("kind")}});
    }

    void checkHome() {
        if (!areGood({"boat", "place"}) || cell("boat").empty() || cell("place").empty()) return;
        const bool placeGiven = !m_row.given->text(m_sheet.indexOf("place")).empty();
        reject(placeGiven ? "place" : "boat",
               {ErrorCode::ItemWithTwoHomes, {shown(cell("boat")), shown(cell("place"))}});
    }

    ImportDraft& m_draft;
    Rejections& m_rejections;
    DraftRow& m_row;
    const Sheet& m_sheet;
};

/// Rejects touched rows whose cells in `columns` are those of another row already; rows with an empty one are
/// let be.
void checkUnique(ImportDraft& draft, Rejections& rejections, SheetId id,
                 std::initializer_list<std::string_view> columns, ErrorCode taken) {
    const Sheet& sheet = core::sheet(id);
    std::unordered_map<std::string, const DraftRow*> holders;
    const auto valueOf = [&](const DraftRow& row) {
        std::string value;
        for (std::string_view column : columns) {
            if (row.cell(column).empty()) return std::string();
            value += row.cell(column) + '\x1F';
        }
        return value;
    };
    for (const DraftRow& row : draft.all(id))
        if (!row.given && !row.isNew()) holders.emplace(valueOf(row), &row);
    for (DraftRow* row : draft.touched(id)) {
        const std::string value = valueOf(*row);
        const auto [holder, isFirst] = holders.emplace(value, row);
        if (isFirst || value.empty()) continue;
        const std::string_view column = *(columns.end() - 1);
        rejections.add(sheet, *row->given, sheet.indexOf(column),
                       {taken, {shown(holder->second->cells[0]), shown(row->cell(column))}});
    }
}

} // namespace

void checkRows(ImportDraft& draft, Rejections& rejections) {
    for (const Sheet& sheet : allSheets())
        for (DraftRow* row : draft.touched(sheet.id))
            Check(draft, rejections, *row).run();
    checkUnique(draft, rejections, SheetId::Places, {"tag"}, ErrorCode::TagTaken);
    checkUnique(draft, rejections, SheetId::Boats, {"tag"}, ErrorCode::TagTaken);
    checkUnique(draft, rejections, SheetId::People, {"tag"}, ErrorCode::TagTaken);
    checkUnique(draft, rejections, SheetId::Items, {"gtin", "serial"}, ErrorCode::SerialTaken);
}

} // namespace core
