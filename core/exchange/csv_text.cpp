#include "core/exchange/csv_text.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"

#include <algorithm>
#include <csv.h>

namespace core {
namespace {

/// Gathers what libcsv reports. It reports CR and LF each, so that blank lines can be counted; CRLF is one
/// line end.
class Gathering {
public:
    explicit Gathering(CsvText& text)
        : m_text(text) {}

    void addCell(const void* bytes, std::size_t size) {
        m_cells.emplace_back(static_cast<const char*>(bytes), size);
        m_last = 0;
    }

    void endLine(int terminator) {
        const bool secondHalf = terminator == '\n' && m_last == '\r' && m_cells.empty();
        m_last = terminator;
        if (secondHalf) return;
        const auto isBlank = [](const std::string& cell) { return withoutOuterBlanks(cell).empty(); };
        if (!std::all_of(m_cells.begin(), m_cells.end(), isBlank))
            m_text.records.push_back({m_row, std::move(m_cells)});
        m_cells.clear();
        ++m_row;
    }

    int row() const { return m_row; }

private:
    CsvText& m_text;
    std::vector<std::string> m_cells;
    int m_row = 1;
    int m_last = 0;
};

void onCell(void* bytes, std::size_t size, void* gathering) {
    static_cast<Gathering*>(gathering)->addCell(bytes, size);
}

void onLine(int terminator, void* gathering) {
    static_cast<Gathering*>(gathering)->endLine(terminator);
}

/// libcsv takes blanks off unquoted cells unless it is told that there are none (RFC 4180: "spaces are part
/// of a field").
int noBlanks(unsigned char) {
    return 0;
}

} // namespace

CsvText readCsv(std::string_view bytes) {
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (bytes.starts_with(byteOrderMark)) bytes.remove_prefix(byteOrderMark.size());

    CsvText text;
    Gathering gathering(text);
    csv_parser parser{};
    csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL);
    csv_set_space_func(&parser, noBlanks);
    const std::size_t read = csv_parse(&parser, bytes.data(), bytes.size(), onCell, onLine, &gathering);
    if (read != bytes.size()) {
        text.faultRow = gathering.row();
        text.fault = ErrorCode::CsvQuoteInCell;
    } else if (csv_fini(&parser, onCell, onLine, &gathering) != 0) {
        text.faultRow = gathering.row();
        text.fault = ErrorCode::CsvQuoteOpen;
    }
    csv_free(&parser);
    return text;
}

std::string csvCell(std::string_view text) {
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
    std::string quoted = "\"";
    for (char c : text)
        quoted.append(c == '"' ? 2 : 1, c);
    return quoted + '"';
}

} // namespace core
