#include "core/exchange/club_sheet/table_rows.h"

#include "core/base/error_code.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/column_contents.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/exchange/csv_cell.h"
#include "core/register/cell_values.h"

#include <algorithm>
#include <map>
#include <unordered_set>

namespace core {
namespace {

constexpr int mostThings = 1000; ///< on one row; as many as are registered at once

class Reading {
public:
    Reading(const SheetTable& table, const TableLayout& layout, const ClubSheetChoices& choices,
            const RegisterRows& current)
        : m_table(table)
        , m_layout(layout)
        , m_choices(choices)
        , m_current(current)
        , m_sheet(sheet(choices.sheet)) {
        m_rows.file = {&m_sheet, {}, true};
        for (const auto& [word, ours] : choices.words) {
            m_wordPlaces[{word.first, plainWord(word.second)}] = m_rows.words.size();
            m_rows.words.push_back({word.first, word.second, ours});
        }
        if (isBySerial(m_sheet) && layout.meaning(serialMeaning)) readSerials(current);
        if (!layout.meaning(homeMeaning)) return;
        m_boats = foldedNames(current, SheetId::Boats);
        m_places = foldedNames(current, SheetId::Places);
    }

    RowsOfTable all() {
        for (const TableRow& row : m_table.rows)
            if (!m_rows.refusal && row.number > m_layout.headingRow && !isSkipped(row)) addRow(row);
        std::erase_if(m_rows.words, [](const WordApplied& word) { return word.rows == 0; });
        return std::move(m_rows);
    }

private:
    bool isSkipped(const TableRow& row) const {
        const auto says = [&](const TableColumn& c) { return !c.meaning.empty() && !row.at(c.at).isEmpty(); };
        if (std::none_of(m_layout.columns.begin(), m_layout.columns.end(), says)) return true;
        const SheetCell& first = row.cells.front().second;
        const bool isTitle = row.cells.size() == 1 && first.columns > 2;
        return isTitle || isSum(first.text) || isHeadingAgain(row);
    }

    static bool isSum(const std::string& text) {
        if (text.size() > 20) return false;
        const std::string word = plainWord(text);
        return word == "total" || word == "sum" || word == "summe" || word == "gesamt" || word == "insgesamt";
    }

    bool isHeadingAgain(const TableRow& row) const {
        int same = 0;
        for (const TableColumn& column : m_layout.columns) {
            if (column.meaning.empty() || row.at(column.at).isEmpty()) continue;
            if (foldName(row.at(column.at).text) != foldName(column.heading)) return false;
            ++same;
        }
        return same > 1;
    }

    void addRow(const TableRow& row) {
        GivenRow given;
        given.row = row.number;
        given.cells.resize(m_sheet.columns.size());
        given.faulty.resize(m_sheet.columns.size());
        int quantity = 1;
        for (const TableColumn& column : m_layout.columns) {
            if (column.meaning.empty()) continue;
            const SheetCell& cell = row.at(column.at);
            if (isOfItems() && column.meaning == quantityMeaning)
                quantity = quantityOf(cell, given);
            else if (isOfItems() && column.meaning == homeMeaning)
                readHome(cell, given);
            else if (isBySerial(m_sheet) && column.meaning == serialMeaning)
                continue; // when the tag has been read
            else
                read(cell, column, given);
        }
        nameBySerial(row, given);
        nameToldSize(row, given);
        if (isOfItems()) clearOtherHome(given);
        if (quantity > 1 && isOneThing(given))
            reject(given, quantityMeaning, {ErrorCode::QuantityOfOne, {std::to_string(quantity)}});
        const auto things = static_cast<std::size_t>(given.isRejected ? 1 : quantity);
        if (m_rows.file.rows.size() + things > mostTableRows) {
            m_rows.refusal = Error{ErrorCode::TooManyThings,
                                   {std::to_string(mostTableRows)},
                                   m_layout.table + '!' + cellAddress(row.cells.front().first, row.number)};
            return;
        }
        m_rows.file.rows.insert(m_rows.file.rows.end(), things, given);
    }

    /// Lines of a manifest have a quantity of their own.
    bool isOfItems() const { return m_sheet.id == SheetId::Items; }

    /// What has a home on the boat now is no longer at the place, and the other way round.
    void clearOtherHome(GivenRow& given) const {
        auto& boat = given.cells[static_cast<std::size_t>(m_sheet.indexOf("boat"))];
        auto& place = given.cells[static_cast<std::size_t>(m_sheet.indexOf("place"))];
        if (boat && !place)
            place.emplace();
        else if (place && !boat)
            boat.emplace();
    }

    bool isOneThing(const GivenRow& given) const {
        return !given.text(m_sheet.indexOf("code")).empty() || !given.text(m_sheet.indexOf("serial")).empty();
    }

    void read(const SheetCell& cell, const TableColumn& column, GivenRow& given) {
        const int index = m_sheet.indexOf(column.meaning);
        const Column& described = m_sheet.columns[static_cast<std::size_t>(index)];
        WordApplied* told = toldWord(cell, column);
        if (told) ++told->rows;
        const CellMeaning meaning =
            told ? CellMeaning{told->means} : meaningOf(cell, described, m_choices.days);
        if (meaning.fault == ErrorCode::DayAmbiguous) {
            if (!m_rows.refusal)
                m_rows.refusal = Error{ErrorCode::DayAmbiguous,
                                       {shown(meaning.text)},
                                       m_layout.table + '!' + cellAddress(column.at, given.row)};
            return;
        }
        if (meaning.fault) return rejectFault(given, column.meaning, meaning);
        CellReading reading = readCell(described, meaning.text);
        given.cells[static_cast<std::size_t>(index)] = std::move(reading.text);
        if (reading.fault) m_rows.rejections.add(m_sheet, given, index, std::move(*reading.fault));
    }

    /// Of which somebody said what it means; null: no such word.
    WordApplied* toldWord(const SheetCell& cell, const TableColumn& column) {
        if (m_wordPlaces.empty() || cell.isEmpty()) return nullptr;
        const auto found = m_wordPlaces.find({column.meaning, plainWord(oneLine(cell.text))});
        return found == m_wordPlaces.end() ? nullptr : &m_rows.words[found->second];
    }

    /// A size that a word was said to mean may have another name by now, which its kit type tells.
    void nameToldSize(const TableRow& row, GivenRow& given) {
        const int size = m_sheet.indexOf("size"), kitType = m_sheet.indexOf("kit_type");
        const TableColumn* column = m_layout.meaning("size");
        if (size < 0 || kitType < 0 || !column || !toldWord(row.at(column->at), *column)) return;
        auto& cell = given.cells[static_cast<std::size_t>(size)];
        if (cell) cell = m_current.nameNow(Named::Size, *cell, given.text(kitType));
    }

    void rejectFault(GivenRow& given, std::string_view column, const CellMeaning& meaning) {
        const bool isUnsaved = *meaning.fault == ErrorCode::CellUnsaved;
        reject(given, column,
               {*meaning.fault, isUnsaved ? std::vector<std::string>{} : std::vector{shown(meaning.text)}});
    }

    void reject(GivenRow& given, std::string_view column, Error reason) {
        m_rows.rejections.add(m_sheet.file, given.row, column, std::move(reason));
        given.isRejected = true;
        if (const int index = m_sheet.indexOf(column); index >= 0)
            given.faulty[static_cast<std::size_t>(index)] = true;
    }

    int quantityOf(const SheetCell& cell, GivenRow& given) {
        static const Column column{quantityMeaning, CellType::Count};
        const CellMeaning meaning = meaningOf(cell, column, {});
        if (meaning.fault) {
            rejectFault(given, quantityMeaning, meaning);
            return 1;
        }
        if (meaning.text.empty()) return 1;
        const auto number = numberFrom(meaning.text);
        const int quantity = number && *number >= 0 && *number <= mostThings ? static_cast<int>(*number) : -1;
        if (quantity == number) return quantity;
        reject(given, quantityMeaning,
               {ErrorCode::QuantityUnreadable, {shown(meaning.text), std::to_string(mostThings)}});
        return 1;
    }

    void readHome(const SheetCell& cell, GivenRow& given) {
        static const Column column{homeMeaning, CellType::Text};
        const CellMeaning meaning = meaningOf(cell, column, {});
        if (meaning.fault) return rejectFault(given, homeMeaning, meaning);
        CellReading reading = readCell(column, meaning.text);
        if (reading.fault) return reject(given, homeMeaning, std::move(*reading.fault));
        if (!reading.text) return;
        const std::string key = foldName(*reading.text);
        const bool isBoat = m_boats.contains(key);
        if (isBoat || m_places.contains(key) || m_choices.make.contains(SheetId::Places))
            given.cells[static_cast<std::size_t>(m_sheet.indexOf(isBoat ? "boat" : "place"))] = *reading.text;
        else
            reject(given, homeMeaning, {ErrorCode::HomeUnknown, {shown(*reading.text)}});
    }

    void readSerials(const RegisterRows& current) {
        const Sheet& items = sheet(SheetId::Items);
        const auto serial = static_cast<std::size_t>(items.indexOf("serial"));
        for (const Cells& item : current.all(SheetId::Items))
            if (!item[serial].empty()) m_idsOfSerial[foldName(item[serial])].push_back(item[0]);
    }

    /// A row without a tag is about the one item of its serial.
    void nameBySerial(const TableRow& row, GivenRow& given) {
        const TableColumn* column = isBySerial(m_sheet) ? m_layout.meaning(serialMeaning) : nullptr;
        if (!column || !given.text(0).empty() || given.isFaulty(0)) return;
        static const Column described{serialMeaning, CellType::Text};
        const CellMeaning meaning = meaningOf(row.at(column->at), described, {});
        if (meaning.fault) return rejectFault(given, serialMeaning, meaning);
        const auto found = m_idsOfSerial.find(foldName(meaning.text));
        const std::size_t things = found == m_idsOfSerial.end() ? 0 : found->second.size();
        if (things == 1) {
            given.cells[0] = found->second.front();
            return;
        }
        reject(given, serialMeaning,
               {things == 0 ? ErrorCode::SerialUnknown : ErrorCode::SerialOfSeveral, {shown(meaning.text)}});
        given.faulty[0] = true; // that no tag is given is no fault besides
    }

    const SheetTable& m_table;
    const TableLayout& m_layout;
    const ClubSheetChoices& m_choices;
    const RegisterRows& m_current;
    const Sheet& m_sheet;
    std::unordered_set<std::string> m_boats, m_places;
    std::map<std::string, std::vector<std::string>> m_idsOfSerial; ///< by serial, folded
    /// By column and word as words are compared: its place in the words of `m_rows`.
    std::map<std::pair<std::string, std::string>, std::size_t> m_wordPlaces;
    RowsOfTable m_rows;
};

} // namespace

RowsOfTable rowsOf(const SheetTable& table, const TableLayout& layout, const ClubSheetChoices& choices,
                   const RegisterRows& current) {
    return Reading(table, layout, choices, current).all();
}

} // namespace core
