#include "app/gui/gear/spreadsheet/sheet_reading.h"

#include "core/base/error_code.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "core/spreadsheet/workbook.h"

#include <algorithm>
#include <cstddef>

namespace app {

using core::SheetId;

const std::vector<SheetId>& kindsOfRows() {
    static const std::vector kinds{
        SheetId::Items, SheetId::People,     SheetId::Boats,         SheetId::Places, SheetId::KitTypes,
        SheetId::Sizes, SheetId::LifeRules,  SheetId::ManifestLines, SheetId::Points, SheetId::Services,
        SheetId::Parts, SheetId::Happenings, SheetId::Use,           SheetId::Log};
    return kinds;
}

const std::vector<SheetId>& madeOnTheWay() {
    static const std::vector made{SheetId::KitTypes, SheetId::Sizes, SheetId::Places, SheetId::People};
    return made;
}

bool mayLack(SheetId kind, SheetId other) {
    const auto& columns = core::sheet(kind).columns;
    if (other == SheetId::Sizes) return kind == SheetId::Items;
    return std::any_of(columns.begin(), columns.end(),
                       [&](const core::Column& column) { return column.refersTo == other && kind != other; });
}

SheetId likelyKind(const core::Club& club, const core::Workbook& book) {
    SheetId best = SheetId::Items;
    std::ptrdiff_t most = 0;
    for (const SheetId kind : kindsOfRows()) {
        core::ClubSheetChoices choices;
        choices.sheet = kind;
        const auto layout = club.register_().layoutOf(book, choices);
        if (!layout) continue;
        const auto known =
            std::count_if(layout->columns.begin(), layout->columns.end(),
                          [](const core::TableColumn& column) { return !column.meaning.empty(); });
        if (known > most) {
            most = known;
            best = kind;
        }
    }
    return best;
}

PlannedSheet plannedSheet(core::Club& club, const core::Workbook& book, const core::ClubSheetChoices& choices,
                          core::CalendarDay today) {
    PlannedSheet planned;
    if (auto layout = club.register_().layoutToChooseFrom(book, choices)) planned.layout = std::move(*layout);
    planned.told = club.register_().toldWords(choices.sheet);
    auto plan = club.register_().importClubSheet(book, choices, today, true);
    if (plan)
        planned.plan = std::move(*plan);
    else
        planned.error = plan.error();
    return planned;
}

std::vector<std::pair<std::string, std::string>> unknownWords(const core::ClubSheetPlan& plan,
                                                              const core::Workbook& book) {
    std::vector<std::pair<std::string, std::string>> words;
    const auto table =
        std::find_if(book.tables.begin(), book.tables.end(),
                     [&](const core::SheetTable& each) { return each.name == plan.layout.table; });
    if (table == book.tables.end()) return words;
    for (const core::RejectedRow& rejected : plan.plan.rejected) {
        if (rejected.reason.code != core::ErrorCode::CellNotAChoice) continue;
        const auto column =
            std::find_if(plan.layout.columns.begin(), plan.layout.columns.end(),
                         [&](const core::TableColumn& each) { return each.heading == rejected.column; });
        const auto row =
            std::lower_bound(table->rows.begin(), table->rows.end(), rejected.row,
                             [](const core::TableRow& each, int number) { return each.number < number; });
        if (column == plan.layout.columns.end() || row == table->rows.end()) continue;
        const std::string& word = row->at(column->at).text;
        const bool isKnown = std::any_of(words.begin(), words.end(), [&](const auto& each) {
            return each.first == column->meaning && core::foldName(each.second) == core::foldName(word);
        });
        if (!isKnown) words.emplace_back(column->meaning, word);
    }
    return words;
}

} // namespace app
