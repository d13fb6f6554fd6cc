#include "core/exchange/club_sheet/column_contents.h"

#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/csv_cell.h"

#include <algorithm>
#include <functional>
#include <map>
#include <unordered_set>

namespace core {
namespace {

constexpr std::size_t contentsWithin = 500; ///< rows

class Guesses {
public:
    Guesses(const SheetTable& table, std::size_t first, const KnownNames& known)
        : m_table(table)
        , m_first(first)
        , m_known(known) {}

    /// Empty: nothing of those that are free.
    std::string_view meaningOf(int at, const std::set<std::string>& taken) {
        for (const Column& column : m_known.sheet.columns)
            if (!taken.contains(std::string(column.name)) && isWatched(column) &&
                fits(at, [&](const std::string& text) { return belongs(column, text); }))
                return column.name;
        return {};
    }

    bool isHome(int at) {
        if (m_known.sheet.id != SheetId::Items) return false;
        return fits(at, [&](const std::string& text) {
            const std::string name = foldName(text);
            return namesIn(SheetId::Boats).contains(name) || namesIn(SheetId::Places).contains(name);
        });
    }

private:
    static bool isWatched(const Column& column) {
        return column.type == CellType::Tag || column.type == CellType::Gtin ||
               column.type == CellType::Choice || (column.type == CellType::Name && column.refersTo);
    }

    bool belongs(const Column& column, const std::string& text) {
        if (column.type == CellType::Choice) return isChoiceWord(column, text);
        if (column.type == CellType::Name) return namesIn(*column.refersTo).contains(foldName(text));
        const CellReading reading = readCell(column, text);
        return reading.text && !reading.text->empty() && !reading.fault;
    }

    const std::unordered_set<std::string>& namesIn(SheetId id) {
        const auto found = m_names.find(id);
        return found != m_names.end() ? found->second : m_names[id] = foldedNames(m_known.current, id);
    }

    bool fits(int at, const std::function<bool(const std::string&)>& belongs) const {
        std::size_t filled = 0, good = 0;
        for (std::size_t row = m_first; row < std::min(m_table.rows.size(), m_first + contentsWithin);
             ++row) {
            const SheetCell& cell = m_table.rows[row].at(at);
            if (cell.isEmpty()) continue;
            ++filled;
            good += belongs(oneLine(cell.text)) ? 1 : 0;
            if (filled - good > contentsWithin / 5) return false;
        }
        return good > 0 && good * 5 >= filled * 4;
    }

    const SheetTable& m_table;
    std::size_t m_first;
    const KnownNames& m_known;
    std::map<SheetId, std::unordered_set<std::string>> m_names;
};

} // namespace

std::unordered_set<std::string> foldedNames(const RegisterRows& current, SheetId id) {
    std::unordered_set<std::string> names;
    for (const Cells& cells : current.all(id))
        names.insert(foldName(cells[0]));
    return names;
}

void guessByContents(std::vector<TableColumn>& columns, const SheetTable& table, std::size_t first,
                     const std::set<int>& chosen, const KnownNames& known) {
    std::set<std::string> taken;
    for (const TableColumn& column : columns)
        taken.insert(column.meaning);
    const bool hasHome = taken.contains("home") || taken.contains("boat") || taken.contains("place");
    Guesses guesses(table, first, known);
    for (TableColumn& column : columns) {
        if (!column.meaning.empty() || chosen.contains(column.at)) continue;
        const bool isHome = !hasHome && !taken.contains("home") && guesses.isHome(column.at);
        column.meaning = isHome ? homeMeaning : guesses.meaningOf(column.at, taken);
        taken.insert(column.meaning);
    }
}

} // namespace core
