#include "core/spreadsheet/date_format.h"
#include "core/spreadsheet/readers.h"
#include "core/spreadsheet/spreadsheet_fault.h"
#include "core/spreadsheet/table_builder.h"
#include "core/spreadsheet/xml_reader.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <map>
#include <optional>

namespace core {
namespace {

constexpr std::size_t mostStyles = 65'536; ///< beyond that a file is after the memory
constexpr int mostRepeats = std::numeric_limits<int>::max() / 2;

/// A number of rows or columns; as many as no sheet has are one like another.
int repeats(const XmlAttributes& attributes, std::string_view name) {
    return std::min(attributes.number(name, 1, std::numeric_limits<int>::max(), 1), mostRepeats);
}

/// OpenDocument 1.3 part 3, 16.29.10: which of day, month and year a date style has.
class DateStyles {
public:
    void start(std::string_view name, const XmlAttributes& attributes) {
        if (name == "date-style") m_open = {std::string(attributes["name"]), DayShown::None};
        if (m_open) m_open->second = std::max(m_open->second, shownBy(name));
        if (name == "style" && attributes.has("data-style-name")) addStyle(attributes);
    }
    void end(std::string_view name) {
        if (name != "date-style" || !m_open) return;
        if (m_formats.size() <= mostStyles) m_formats.insert(*m_open);
        m_open.reset();
    }
    DayShown of(std::string_view cellStyle) const {
        const auto found = m_styles.find(cellStyle);
        return found == m_styles.end() ? DayShown::Day : found->second;
    }

private:
    void addStyle(const XmlAttributes& attributes) {
        const auto found = m_formats.find(attributes["data-style-name"]);
        if (found == m_formats.end()) return;
        if (m_styles.size() > mostStyles) refuse(ErrorCode::SpreadsheetUnreadable);
        m_styles[std::string(attributes["name"])] = found->second;
    }

    static DayShown shownBy(std::string_view name) {
        if (name == "day") return DayShown::Day;
        if (name == "month") return DayShown::Month;
        return name == "year" ? DayShown::Year : DayShown::None;
    }

    std::optional<std::pair<std::string, DayShown>> m_open;
    std::map<std::string, DayShown, std::less<>> m_formats, m_styles;
};

class StylesPart : public XmlEvents {
public:
    explicit StylesPart(DateStyles& styles)
        : m_styles(styles) {}
    void start(std::string_view name, const XmlAttributes& attributes) override {
        m_styles.start(name, attributes);
    }
    void end(std::string_view name) override { m_styles.end(name); }

private:
    DateStyles& m_styles;
};

class ContentPart : public XmlEvents {
public:
    explicit ContentPart(DateStyles& styles)
        : m_styles(styles) {}

    void start(std::string_view name, const XmlAttributes& attributes) override {
        if (m_aside > 0 || isAside(name) || (name == "table" && m_table)) {
            ++m_aside;
            return;
        }
        m_styles.start(name, attributes);
        if (name == "table") {
            m_table.emplace(std::string(attributes["name"]), m_budget);
            m_row = 1;
            m_defaults.clear();
        } else if (m_table) {
            startInTable(name, attributes);
        }
    }

    void end(std::string_view name) override {
        if (m_aside > 0) {
            --m_aside;
            return;
        }
        m_styles.end(name);
        if (!m_table) return;
        if (name == "table-cell" && m_isInCell) endCell();
        if (name == "table-row") endRow();
        if (name == "table") {
            tables.push_back(m_table->take());
            m_table.reset();
        }
    }

    void text(std::string_view text) override {
        if (m_aside == 0 && m_isInCell && m_paragraphs > 0) m_text += text;
        if (m_text.size() > longestCell) refuse(ErrorCode::SpreadsheetUnreadable);
    }

    std::vector<SheetTable> tables;

private:
    struct RowCell {
        int column, times;
        SheetCell cell;
    };

    /// What is no cell of the sheet although it looks like one, or no text of its cell.
    static bool isAside(std::string_view name) {
        return name == "annotation" || name == "tracked-changes" || name == "dde-links" || name == "frame" ||
               name == "shapes" || name == "custom-shape";
    }

    void startInTable(std::string_view name, const XmlAttributes& attributes) {
        if (name == "table-column") {
            startColumn(attributes);
        } else if (name == "table-row") {
            m_column = 0;
            m_rowTimes = repeats(attributes, "number-rows-repeated");
            m_cells.clear();
        } else if (name == "table-cell" || name == "covered-table-cell") {
            startCell(attributes, name == "table-cell");
        } else if (m_isInCell) {
            startInCell(name, attributes);
        }
    }

    void startColumn(const XmlAttributes& attributes) {
        const int times = repeats(attributes, "number-columns-repeated");
        for (int i = 0; i < times && m_defaults.size() < mostTableColumns; ++i)
            m_defaults.emplace_back(attributes["default-cell-style-name"]);
    }

    void startCell(const XmlAttributes& attributes, bool isCell) {
        m_times = repeats(attributes, "number-columns-repeated");
        if (!isCell) return skipColumns();
        m_value = attributes;
        m_text.clear();
        m_paragraphs = 0;
        m_isInCell = true;
        const int rows = repeats(attributes, "number-rows-spanned");
        const int columns = repeats(attributes, "number-columns-spanned");
        if (rows > 1 || columns > 1) m_table->merge(m_row, m_column, rows, columns);
    }

    void startInCell(std::string_view name, const XmlAttributes& attributes) {
        if (name == "p" && ++m_paragraphs > 1) m_text += '\n';
        if (name == "s") m_text.append(static_cast<std::size_t>(attributes.number("c", 0, 10'000, 1)), ' ');
        if (name == "tab") m_text += '\t';
        if (name == "line-break") m_text += '\n';
    }

    void skipColumns() { m_column = std::min(mostRepeats - m_times, m_column) + m_times; }

    void endCell() {
        SheetCell cell = read();
        if (!cell.isEmpty()) m_cells.push_back({m_column, m_times, std::move(cell)});
        if (m_cells.size() > mostTableColumns) endRow(); // which refuses it
        skipColumns();
        m_isInCell = false;
    }

    void endRow() {
        for (int row = 0; row < m_rowTimes && !m_cells.empty(); ++row)
            for (const RowCell& cell : m_cells)
                for (int i = 0; i < cell.times; ++i)
                    m_table->add(m_row + row, cell.column + i, cell.cell);
        m_row = std::min(mostRepeats - m_rowTimes, m_row) + m_rowTimes;
    }

    SheetCell read() {
        using Kind = SheetCell::Kind;
        const std::string_view type = m_value["value-type"];
        if (type == "date") return {Kind::Day, day()};
        if (type == "boolean") return {Kind::YesNo, m_value["boolean-value"] == "true" ? "yes" : "no"};
        if (type == "float" || type == "currency") return {Kind::Number, number()};
        std::string text(m_value.has("string-value") ? std::string(m_value["string-value"]) : m_text);
        const bool isFault = m_value.has("formula") && (text.starts_with('#') || text.starts_with("Err:"));
        if (isFault) return {Kind::Fault, std::move(text)};
        if (type.empty() && text.empty() && m_value.has("formula")) return {Kind::Unsaved, {}};
        return text.empty() ? SheetCell{} : SheetCell{Kind::Text, std::move(text)};
    }

    std::string day() const {
        const auto column = static_cast<std::size_t>(m_column);
        const std::string_view own = m_value["style-name"];
        const std::string_view style =
            own.empty() && column < m_defaults.size() ? std::string_view(m_defaults[column]) : own;
        return asShown(std::string(m_value["date-value"].substr(0, 10)), m_styles.of(style));
    }

    std::string number() const {
        double value = 0;
        const std::string_view text = m_value["value"];
        const auto [end, failure] = std::from_chars(text.data(), text.data() + text.size(), value);
        if (failure != std::errc() || end != text.data() + text.size())
            refuse(ErrorCode::SpreadsheetUnreadable);
        return numberAsShown(value);
    }

    DateStyles& m_styles;
    TableBudget m_budget;
    std::optional<TableBuilder> m_table;
    std::vector<std::string> m_defaults; ///< the columns' styles of cells
    std::vector<RowCell> m_cells;
    XmlAttributes m_value;
    std::string m_text;
    int m_row = 1, m_column = 0, m_times = 1, m_rowTimes = 1, m_paragraphs = 0, m_aside = 0;
    bool m_isInCell = false;
};

/// Whether the manifest names a part that is encrypted (OpenDocument 1.3 part 2, 4.4).
class Manifest : public XmlEvents {
public:
    void start(std::string_view name, const XmlAttributes&) override {
        isEncrypted = isEncrypted || name == "encryption-data";
    }
    void end(std::string_view) override {}

    bool isEncrypted = false;
};

} // namespace

std::vector<SheetTable> readOds(const PackedFile& file) {
    Manifest manifest;
    if (file.has("META-INF/manifest.xml")) readXml(file.part("META-INF/manifest.xml"), manifest);
    if (manifest.isEncrypted) refuse(ErrorCode::SpreadsheetProtected);
    DateStyles styles;
    StylesPart stylesPart(styles);
    if (file.has("styles.xml")) readXml(file.part("styles.xml"), stylesPart);
    ContentPart content(styles);
    readXml(file.part("content.xml"), content);
    return std::move(content.tables);
}

} // namespace core
