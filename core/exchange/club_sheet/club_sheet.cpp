#include "core/exchange/club_sheet/club_sheet.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/exchange/club_sheet/missing_names.h"
#include "core/exchange/club_sheet/same_things.h"
#include "core/exchange/club_sheet/table_rows.h"
#include "core/exchange/import_planner.h"

#include <algorithm>
#include <array>
#include <fmt/ranges.h>
#include <tuple>

namespace core {
namespace {

constexpr std::array makeable{SheetId::KitTypes, SheetId::Sizes, SheetId::Places, SheetId::People};

/// The column of the table that a cell of a contract's file came from; null: from none.
const TableColumn* sourceOf(const TableLayout& layout, std::string_view column) {
    for (const std::string_view meaning :
         {column, column == "boat" || column == "place" ? homeMeaning : column,
          column == "kit_type" ? "substitutes" : column})
        if (const TableColumn* found = layout.meaning(meaning)) return found;
    return nullptr;
}

/// "Add it to kit_types.csv" helps nobody who has one spreadsheet.
Error inWordsOfTable(Error reason) {
    const auto toBeMade = [](const std::string& column, const std::string& name, SheetId id) {
        return Error{ErrorCode::NameToBeMade, {column, name, std::string(sheet(id).name())}};
    };
    if (reason.code == ErrorCode::ReferredSizeMissing)
        return toBeMade("size", reason.arguments[0], SheetId::Sizes);
    if (reason.code != ErrorCode::ReferredRowMissing) return reason;
    const Sheet* other = sheetOfFile(reason.arguments[2]);
    const bool isMakeable = other && std::find(makeable.begin(), makeable.end(), other->id) != makeable.end();
    if (isMakeable) return toBeMade(reason.arguments[0], reason.arguments[1], other->id);
    return {ErrorCode::NameNotInClub, {reason.arguments[0], reason.arguments[1]}};
}

/// Where each rejection stands in the table; what is said of all the things of one row, once.
std::vector<RejectedRow> placedIn(const TableLayout& layout, std::vector<RejectedRow> rows) {
    for (RejectedRow& row : rows) {
        row.file = layout.table;
        row.reason = inWordsOfTable(std::move(row.reason));
        if (const TableColumn* column = sourceOf(layout, row.column)) {
            row.column = column->heading;
            row.cell = cellAddress(column->at, row.row);
        }
    }
    const auto placeOf = [](const RejectedRow& row) {
        return std::tuple(row.row, row.cell.size(), row.cell);
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](const auto& a, const auto& b) { return placeOf(a) < placeOf(b); });
    const auto isSame = [&](const RejectedRow& a, const RejectedRow& b) {
        return placeOf(a) == placeOf(b) && a.reason == b.reason;
    };
    rows.erase(std::unique(rows.begin(), rows.end(), isSame), rows.end());
    return rows;
}

const SheetTable& tableOf(const Workbook& workbook, const std::string& name) {
    return *std::find_if(workbook.tables.begin(), workbook.tables.end(),
                         [&](const SheetTable& table) { return table.name == name; });
}

} // namespace

Result<ClubSheetPlan> planClubSheet(const Workbook& workbook, const ClubSheetChoices& choices,
                                    const RegisterRows& current, CalendarDay today, const MintTag& mintTag,
                                    const std::function<void(int done, int of)>& progress) {
    Result<TableLayout> layout = layoutOf(workbook, choices, current);
    if (!layout) return layout.error();
    RowsOfTable rows = rowsOf(tableOf(workbook, layout->table), *layout, choices, current);
    if (rows.refusal) return *rows.refusal;
    if (choices.sheet == SheetId::Items) findSameThings(rows.file, *layout, current, rows.rejections);

    std::vector<SheetFile> files = missingNames(rows.file, choices.make, current);
    const auto behind = std::find_if(files.begin(), files.end(),
                                     [&](const SheetFile& file) { return file.sheet->id > choices.sheet; });
    files.insert(behind, std::move(rows.file));
    ImportPlan plan = planFiles(files, std::move(rows.rejections), {current, today, mintTag, progress});
    plan.rejected = placedIn(*layout, std::move(plan.rejected));
    plan.warnings = placedIn(*layout, std::move(plan.warnings));
    return ClubSheetPlan{std::move(layout).value(), std::move(rows.words), std::move(plan)};
}

Result<std::vector<std::pair<std::string, std::string>>> columnsFrom(std::string_view text) {
    std::vector<std::pair<std::string, std::string>> columns;
    const Error unreadable{ErrorCode::ColumnsUnreadable, {shown(text)}};
    while (!text.empty()) {
        const auto equals = text.find('=');
        if (equals == std::string_view::npos) return unreadable;
        const auto comma = std::min(text.find(',', equals), text.size());
        const std::string_view heading = withoutOuterBlanks(text.substr(0, equals));
        if (heading.empty()) return unreadable;
        columns.emplace_back(heading, foldName(text.substr(equals + 1, comma - equals - 1)));
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return columns;
}

Result<WordMeanings> wordsFrom(const Sheet& sheet, std::string_view text) {
    WordMeanings words;
    while (!text.empty()) {
        const auto comma = std::min(text.find(','), text.size());
        const std::string_view one = text.substr(0, comma);
        const auto colon = std::min(one.find(':'), one.size());
        const auto equals = one.find('=', colon);
        if (equals == std::string_view::npos) return Error{ErrorCode::WordsUnreadable, {shown(one)}};
        const std::string column = foldName(one.substr(0, colon));
        const std::string_view word = withoutOuterBlanks(one.substr(colon + 1, equals - colon - 1)),
                               ours = withoutOuterBlanks(one.substr(equals + 1));
        if (word.empty() || ours.empty()) return Error{ErrorCode::WordsUnreadable, {shown(one)}};
        if (sheet.indexOf(column) < 0) {
            std::vector<std::string_view> columns;
            for (const Column& each : sheet.columns)
                columns.push_back(each.name);
            return Error{ErrorCode::NoSuchMeaning,
                         {shown(column), fmt::format("{}", fmt::join(columns, ", "))}};
        }
        for (const auto& [told, means] : words)
            if (told.first == column && foldName(told.second) == foldName(word) && means != ours)
                return Error{ErrorCode::WordsUnreadable, {shown(one)}}; // two meanings of one word
        words[{column, std::string(word)}] = ours;
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return words;
}

Result<std::set<SheetId>> sheetsToMakeFrom(std::string_view text) {
    std::set<SheetId> sheets;
    while (!text.empty()) {
        const auto comma = std::min(text.find(','), text.size());
        const std::string name = foldName(text.substr(0, comma));
        const auto found = std::find_if(makeable.begin(), makeable.end(),
                                        [&](SheetId id) { return sheet(id).name() == name; });
        if (found == makeable.end()) return Error{ErrorCode::MakeUnknown, {shown(text.substr(0, comma))}};
        sheets.insert(*found);
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return sheets;
}

} // namespace core
