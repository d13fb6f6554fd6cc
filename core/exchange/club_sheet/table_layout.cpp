#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/club_sheet/column_contents.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/exchange/sheet_file.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>

namespace core {
namespace {

constexpr std::size_t headingsWithin = 60; ///< rows among which the headings are

bool isSameHeading(std::string_view a, std::string_view b) {
    return foldName(plainWord(a)) == foldName(plainWord(b)) && !plainWord(a).empty();
}

std::string headingsOf(const TableLayout& layout) {
    std::string list;
    for (const TableColumn& column : layout.columns)
        list += (list.empty() ? "" : ", ") + shown(column.heading);
    return list;
}

/// The columns of a row of headings, each with a name of its own.
std::vector<TableColumn> columnsOf(const TableRow& row) {
    std::vector<TableColumn> columns;
    std::set<std::string> names;
    for (const auto& [at, cell] : row.cells) {
        std::string name;
        if (cell.text.size() <= longestName) name = withoutOuterBlanks(cell.text);
        std::replace(name.begin(), name.end(), '\n', ' ');
        if (name.empty()) name = columnLetters(at);
        if (!names.insert(foldName(name)).second)
            names.insert(foldName(name += " (" + columnLetters(at) + ")"));
        columns.push_back({at, std::move(name), {}});
    }
    return columns;
}

/// Gives each heading the surest meaning that is still free.
void guessByHeadings(std::vector<TableColumn>& columns, const Sheet& sheet, const std::set<int>& chosen,
                     std::set<std::string> taken) {
    struct Guess {
        int rank;
        TableColumn* column;
        std::string_view meaning;
    };
    std::vector<Guess> guesses;
    for (TableColumn& column : columns)
        if (!chosen.contains(column.at))
            for (const HeadingMeaning& each : meaningsOf(column.heading, sheet))
                guesses.push_back({each.rank, &column, each.meaning});
    std::stable_sort(guesses.begin(), guesses.end(),
                     [](const Guess& a, const Guess& b) { return a.rank < b.rank; });
    for (const Guess& guess : guesses)
        if (guess.column->meaning.empty() && taken.insert(std::string(guess.meaning)).second)
            guess.column->meaning = guess.meaning;
}

/// Lays what was chosen over the columns; which of them that was.
std::set<int> choose(std::vector<TableColumn>& columns, const ClubSheetChoices& choices) {
    std::set<int> chosen;
    for (const auto& [heading, meaning] : choices.columns)
        for (TableColumn& column : columns)
            if (isSameHeading(column.heading, heading) && chosen.insert(column.at).second) {
                column.meaning = meaning;
                break;
            }
    return chosen;
}

std::set<std::string> meaningsIn(const std::vector<TableColumn>& columns) {
    std::set<std::string> meanings;
    for (const TableColumn& column : columns)
        if (!column.meaning.empty()) meanings.insert(column.meaning);
    return meanings;
}

/// A row taken for the headings, with what is known of them.
struct Candidate {
    const SheetTable* table = nullptr;
    std::size_t row = 0;
    std::vector<TableColumn> columns = {};
    std::set<int> chosen = {};
    std::size_t known = 0;
};

/// A row of headings with those of the row above it, where that has a heading over several of its columns.
TableRow withHeadingsAbove(const SheetTable& table, std::size_t at) {
    TableRow row = table.rows[at];
    if (at == 0 || table.rows[at - 1].number != row.number - 1) return row;
    const auto& above = table.rows[at - 1].cells;
    const auto spans = [](const auto& each) { return each.second.columns > 1; };
    if (std::none_of(above.begin(), above.end(), spans)) return row;
    for (const auto& each : above)
        if (!spans(each) && row.at(each.first).isEmpty()) row.cells.push_back(each);
    std::sort(row.cells.begin(), row.cells.end(), [](auto& a, auto& b) { return a.first < b.first; });
    return row;
}

Candidate candidateOf(const SheetTable& table, std::size_t row, const ClubSheetChoices& choices) {
    Candidate candidate{&table, row, columnsOf(withHeadingsAbove(table, row))};
    candidate.chosen = choose(candidate.columns, choices);
    guessByHeadings(candidate.columns, sheet(choices.sheet), candidate.chosen, meaningsIn(candidate.columns));
    candidate.known = meaningsIn(candidate.columns).size() + 2 * candidate.chosen.size();
    return candidate;
}

/// The row with the most known headings; of several, the first.
Candidate bestRowOf(const SheetTable& table, const ClubSheetChoices& choices) {
    Candidate best{&table};
    for (std::size_t row = 0; row < std::min(table.rows.size(), headingsWithin); ++row)
        if (Candidate each = candidateOf(table, row, choices); each.known > best.known)
            best = std::move(each);
    return best;
}

/// The sheet and row that are taken, whether anything is known of its headings or not.
Result<Candidate> bestOf(const Workbook& workbook, const ClubSheetChoices& choices) {
    Candidate best;
    bool isThere = choices.table.empty();
    std::vector<std::string> names;
    for (const SheetTable& table : workbook.tables) {
        names.push_back(shown(table.name));
        const bool isNamed = foldName(table.name) == foldName(choices.table);
        isThere = isThere || isNamed;
        if (choices.table.empty() ? table.isHidden : !isNamed) continue;
        Candidate each = bestRowOf(table, choices);
        if (!best.table || each.known > best.known) best = std::move(each);
    }
    if (!isThere)
        return Error{ErrorCode::NoSuchTable,
                     {shown(choices.table), fmt::format("{}", fmt::join(names, ", "))}};
    if (!best.table) best.table = &workbook.tables.front(); // all are hidden
    return best;
}

Error withoutHeadings(const Candidate& best, const ClubSheetChoices& choices) {
    return {ErrorCode::TableWithoutHeadings,
            {shown(best.table->name), fmt::format("{}", fmt::join(allMeanings(sheet(choices.sheet)), ", "))}};
}

/// Columns below which something stands although they have no heading.
void addUnheaded(Candidate& best) {
    std::map<int, bool> heads;
    for (const TableColumn& column : best.columns)
        heads[column.at] = true;
    std::set<int> without;
    for (std::size_t row = best.row + 1; row < best.table->rows.size(); ++row)
        for (const auto& [at, cell] : best.table->rows[row].cells)
            if (!heads.contains(at)) without.insert(at);
    for (int at : without)
        best.columns.push_back({at, columnLetters(at), {}});
    std::stable_sort(best.columns.begin(), best.columns.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
}

void addAllColumns(Candidate& best, const ClubSheetChoices& choices) {
    addUnheaded(best);
    best.chosen = choose(best.columns, choices); // those without a heading are known by their letter
}

TableLayout layoutIn(Candidate& best) {
    return {best.table->name, best.table->rows[best.row].number, std::move(best.columns)};
}

Outcome checkChoices(const TableLayout& layout, const ClubSheetChoices& choices) {
    const Sheet& sheet = core::sheet(choices.sheet);
    const std::vector<std::string_view> meanings = allMeanings(sheet);
    for (const auto& choice : choices.columns) {
        const std::string& heading = choice.first;
        const std::string& meaning = choice.second;
        const bool isThere = std::any_of(layout.columns.begin(), layout.columns.end(),
                                         [&](auto& c) { return isSameHeading(c.heading, heading); });
        if (!isThere) return Error{ErrorCode::NoSuchHeading, {shown(heading), headingsOf(layout)}};
        if (!meaning.empty() && std::find(meanings.begin(), meanings.end(), meaning) == meanings.end())
            return Error{ErrorCode::NoSuchMeaning,
                         {shown(meaning), fmt::format("{}", fmt::join(meanings, ", "))}};
    }
    std::map<std::string, const TableColumn*> by;
    for (const TableColumn& column : layout.columns)
        if (const auto [first, isNew] = by.emplace(column.meaning, &column);
            !isNew && !column.meaning.empty())
            return Error{ErrorCode::MeaningTwice,
                         {column.meaning, shown(first->second->heading), shown(column.heading)}};
    return Done{};
}

/// The columns without which no row says what it is about.
Outcome checkKey(const TableLayout& layout, const Sheet& sheet) {
    const auto require = [&](std::string_view column) -> Outcome {
        if (layout.meaning(column)) return Done{};
        return Error{ErrorCode::TableWithoutColumn, {std::string(column), headingsOf(layout)}};
    };
    if (sheet.id == SheetId::Items) return layout.meaning("code") ? Outcome(Done{}) : require("kit_type");
    const bool hasSerial = isBySerial(sheet) && layout.meaning(serialMeaning);
    for (int key = hasSerial ? 1 : 0; key < sheet.keyColumns; ++key)
        if (!mayBeEmpty(sheet, key))
            if (const auto there = require(sheet.columns[static_cast<std::size_t>(key)].name); !there)
                return there;
    return Done{};
}

Error at(Error error, const std::string& table) {
    error.where = table;
    return error;
}

} // namespace

const TableColumn* TableLayout::meaning(std::string_view meaning) const {
    const auto found = std::find_if(columns.begin(), columns.end(),
                                    [&](const auto& each) { return each.meaning == meaning; });
    return found == columns.end() ? nullptr : &*found;
}

Result<TableLayout> layoutOf(const Workbook& workbook, const ClubSheetChoices& choices,
                             const RegisterRows& current) {
    Result<Candidate> best = bestOf(workbook, choices);
    if (!best) return best.error();
    if (best->known == 0) return withoutHeadings(*best, choices);
    addAllColumns(*best, choices);
    TableLayout layout = layoutIn(*best);
    if (const Outcome checked = checkChoices(layout, choices); !checked)
        return at(checked.error(), layout.table);
    guessByContents(layout.columns, *best->table, best->row + 1, best->chosen,
                    {sheet(choices.sheet), current});
    if (const Outcome checked = checkKey(layout, sheet(choices.sheet)); !checked)
        return at(checked.error(), layout.table);
    return layout;
}

Result<TableLayout> layoutToChooseFrom(const Workbook& workbook, const ClubSheetChoices& choices,
                                       const RegisterRows& current) {
    Result<Candidate> best = bestOf(workbook, choices);
    if (!best) return best.error();
    if (best->known == 0) best = candidateOf(*best->table, 0, choices);
    addAllColumns(*best, choices);
    TableLayout layout = layoutIn(*best);
    guessByContents(layout.columns, *best->table, best->row + 1, best->chosen,
                    {sheet(choices.sheet), current});
    return layout;
}

std::vector<std::string_view> meaningsToChooseFrom(SheetId id) {
    return allMeanings(sheet(id));
}

} // namespace core
