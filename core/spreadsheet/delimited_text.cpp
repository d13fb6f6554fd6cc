#include "core/spreadsheet/readers.h"
#include "core/spreadsheet/spreadsheet_fault.h"
#include "core/spreadsheet/table_builder.h"

#include <algorithm>
#include <limits>
#include <map>

namespace core {
namespace {

constexpr int rowsLookedAt = 60; ///< rows by which one separator is told from another

/// Reads records by one separator. As people's programs write them: a quote mark within a cell that does not
/// begin with one is text.
class Records {
public:
    Records(std::string_view text, char separator)
        : m_text(text)
        , m_separator(separator) {}

    /// False: there is none left.
    bool next(std::vector<std::string>& cells) {
        cells.clear();
        if (m_at == m_text.size()) return false;
        ++m_number;
        while (true) {
            put(cells, cell());
            if (m_at == m_text.size()) return true;
            const char c = m_text[m_at++];
            if (c == m_separator) continue;
            if (c == '\r' && m_at < m_text.size() && m_text[m_at] == '\n') ++m_at;
            return true;
        }
    }
    int number() const { return m_number; }
    bool isOpen() const { return m_isOpen; } ///< a cell began with a quote mark and never ended

private:
    bool ends(char c) const { return c == m_separator || c == '\n' || c == '\r'; }

    /// Of what stands beyond the last column, one cell tells.
    static void put(std::vector<std::string>& cells, std::string cell) {
        if (cells.size() <= mostTableColumns)
            cells.push_back(std::move(cell));
        else if (!cell.empty())
            cells.back() = std::move(cell);
    }

    std::string cell() {
        std::string cell;
        if (m_at < m_text.size() && m_text[m_at] == '"') cell = quoted();
        while (m_at < m_text.size() && !ends(m_text[m_at]))
            cell += m_text[m_at++];
        return cell;
    }

    std::string quoted() {
        std::string cell;
        for (++m_at; m_at < m_text.size(); ++m_at) {
            if (m_text[m_at] != '"') {
                cell += m_text[m_at];
            } else if (m_at + 1 < m_text.size() && m_text[m_at + 1] == '"') {
                cell += m_text[m_at++];
            } else {
                ++m_at;
                return cell;
            }
        }
        m_isOpen = true;
        return cell;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_number = 0;
    bool m_isOpen = false;
};

/// How many of the first rows have the number of cells that most of them have, if that is more than one.
int evenRows(std::string_view text, char separator) {
    Records records(text, separator);
    std::vector<std::string> cells;
    std::map<std::size_t, int> counts;
    for (int i = 0; i < rowsLookedAt && records.next(cells); ++i)
        if (cells.size() > 1) ++counts[cells.size()];
    int most = 0;
    for (const auto& [size, count] : counts)
        most = std::max(most, count);
    return most;
}

char separatorOf(std::string_view text) {
    char best = ',';
    int most = 0;
    for (char separator : {'\t', ';', ','})
        if (const int even = evenRows(text, separator); even > most) {
            best = separator;
            most = even;
        }
    return best;
}

} // namespace

SheetTable readDelimited(std::string_view bytes, const std::string& name) {
    const std::string whole = decodedText(bytes);
    std::string_view text = whole;
    const bool saysIt = text.size() > 5 && text.starts_with("sep=") && (text[5] == '\r' || text[5] == '\n');
    const char separator = saysIt ? text[4] : separatorOf(text);

    TableBudget budget;
    TableBuilder table(name, budget);
    Records records(text, separator);
    std::vector<std::string> cells;
    if (saysIt) records.next(cells); // keeps its number
    while (records.next(cells))
        for (std::size_t i = 0; i < cells.size(); ++i)
            table.add(records.number(), static_cast<int>(std::min<std::size_t>(i, mostTableColumns)),
                      {SheetCell::Kind::Text, std::move(cells[i])});
    if (records.isOpen()) refuse(ErrorCode::CsvQuoteOpen);
    return table.take();
}

} // namespace core
