#include "core/spreadsheet/readers.h"
#include "core/spreadsheet/spreadsheet_fault.h"
#include "core/spreadsheet/table_builder.h"
#include "core/spreadsheet/xlsx_parts.h"
#include "core/spreadsheet/xml_reader.h"

#include <charconv>
#include <limits>
#include <optional>

namespace core {
namespace {

constexpr int mostCellsInRow = 16'384; ///< of .xlsx; a row of more, empty ones too, is after the time
constexpr int largestIndex = std::numeric_limits<int>::max() - 1;

struct Place {
    int row = 0; ///< from 1
    int column = 0;
};

/// `B7`, `$B$7`.
Place placeFrom(std::string_view address) {
    Place place;
    std::size_t at = 0;
    const auto skipDollar = [&] { at += at < address.size() && address[at] == '$' ? 1 : 0; };
    skipDollar();
    for (; at < address.size() && address[at] >= 'A' && address[at] <= 'Z' && place.column < 100'000; ++at)
        place.column = place.column * 26 + (address[at] - 'A' + 1);
    skipDollar();
    place.row = wholeNumber(address.substr(at), 1, largestIndex);
    if (place.column == 0) refuse(ErrorCode::SpreadsheetUnreadable);
    --place.column;
    return place;
}

/// Digits as they stand in the file: a full stop, perhaps an exponent, whatever the machine's language.
std::optional<double> numberOf(const std::string& text) {
    double number = 0;
    const auto [end, failure] = std::from_chars(text.data(), text.data() + text.size(), number);
    return failure == std::errc() && end == text.data() + text.size() ? std::optional(number) : std::nullopt;
}

/// What all sheets of a workbook share.
struct Shared {
    std::vector<std::string> texts;
    std::vector<XlsxFormat> formats;
    bool from1904 = false;
};

class SheetPart : public XmlEvents {
public:
    SheetPart(const Shared& shared, TableBuilder& table)
        : m_shared(shared)
        , m_table(table) {}

    void start(std::string_view name, const XmlAttributes& attributes) override {
        if (name == "row")
            startRow(attributes);
        else if (name == "c")
            startCell(attributes);
        else if (name == "f")
            m_isFormula = true;
        else if (name == "rPh")
            m_isAloud = true;
        else if (name == "mergeCell")
            merge(attributes["ref"]);
        m_isValue = name == "v" || (name == "t" && !m_isAloud);
    }

    void end(std::string_view name) override {
        if (name == "c" && m_isInCell) {
            m_table.add(m_row, m_column, cell());
            m_isInCell = false;
        }
        if (name == "rPh") m_isAloud = false;
        m_isValue = false;
    }

    void text(std::string_view text) override {
        if (m_isInCell && m_isValue) m_value += text;
        if (m_value.size() > longestCell) refuse(ErrorCode::SpreadsheetUnreadable);
    }

private:
    void startRow(const XmlAttributes& attributes) {
        m_row = attributes.number("r", 1, largestIndex, m_row == largestIndex ? m_row : m_row + 1);
        m_column = -1;
    }

    void startCell(const XmlAttributes& attributes) {
        if (attributes.has("r")) {
            const Place place = placeFrom(attributes["r"]);
            if (place.row != m_row) refuse(ErrorCode::SpreadsheetUnreadable);
            m_column = place.column;
        } else if (++m_column >= mostCellsInRow) {
            refuse(ErrorCode::SpreadsheetUnreadable);
        }
        m_type = attributes["t"];
        m_style = static_cast<std::size_t>(attributes.number("s", 0, largestIndex, 0));
        m_value.clear();
        m_isFormula = false;
        m_isInCell = true;
    }

    void merge(std::string_view range) {
        const auto colon = range.find(':');
        if (colon == std::string_view::npos) return;
        const Place from = placeFrom(range.substr(0, colon));
        const Place to = placeFrom(range.substr(colon + 1));
        m_table.merge(from.row, from.column, to.row - from.row + 1, to.column - from.column + 1);
    }

    SheetCell cell() {
        using Kind = SheetCell::Kind;
        if (m_value.empty() && m_isFormula && m_type != "str") return {Kind::Unsaved, {}};
        if (m_value.empty()) return {};
        if (m_type == "s") {
            const int index = wholeNumber(m_value, 0, largestIndex);
            if (static_cast<std::size_t>(index) >= m_shared.texts.size())
                refuse(ErrorCode::SpreadsheetUnreadable);
            return {Kind::Text, m_shared.texts[static_cast<std::size_t>(index)]};
        }
        if (m_type == "str" || m_type == "inlineStr") return {Kind::Text, m_value};
        if (m_type == "b") return {Kind::YesNo, m_value == "1" || m_value == "true" ? "yes" : "no"};
        if (m_type == "e") return {Kind::Fault, m_value};
        if (m_type == "d") return {Kind::Day, m_value.substr(0, 10)};
        return number();
    }

    SheetCell number() {
        const auto number = numberOf(m_value);
        if (!number) refuse(ErrorCode::SpreadsheetUnreadable);
        static const XlsxFormat general;
        const XlsxFormat& format = m_style < m_shared.formats.size() ? m_shared.formats[m_style] : general;
        if (format.shown != DayShown::None)
            if (const auto day = isoDayOf(*number, m_shared.from1904))
                return {SheetCell::Kind::Day, asShown(*day, format.shown)};
        return {SheetCell::Kind::Number, numberAsShown(*number, format.zeros)};
    }

    const Shared& m_shared;
    TableBuilder& m_table;
    int m_row = 0;
    int m_column = -1;
    std::string m_type, m_value;
    std::size_t m_style = 0;
    bool m_isInCell = false, m_isValue = false, m_isFormula = false, m_isAloud = false;
};

std::string mainPartOf(const PackedFile& file) {
    for (const auto& [id, relation] : xlsxRelationsOf(file, {}))
        if (relation.type == "officeDocument") return relation.target;
    return "xl/workbook.xml";
}

} // namespace

std::vector<SheetTable> readXlsx(const PackedFile& file) {
    const std::string mainPart = mainPartOf(file);
    const XlsxBook book = xlsxBookOf(file, mainPart);
    const auto relations = xlsxRelationsOf(file, mainPart);
    Shared shared{{}, {}, book.from1904};
    for (const auto& [id, relation] : relations) {
        if (relation.type == "sharedStrings") shared.texts = xlsxTextsOf(file, relation.target);
        if (relation.type == "styles") shared.formats = xlsxFormatsOf(file, relation.target);
    }
    TableBudget budget;
    std::vector<SheetTable> tables;
    for (const XlsxSheet& sheet : book.sheets) {
        const auto relation = relations.find(sheet.relation);
        if (relation == relations.end() || relation->second.type != "worksheet") continue; // a chart
        TableBuilder table(sheet.name, budget);
        if (sheet.isHidden) table.hide();
        SheetPart part(shared, table);
        readXml(file.part(relation->second.target), part);
        tables.push_back(table.take());
    }
    return tables;
}

} // namespace core
