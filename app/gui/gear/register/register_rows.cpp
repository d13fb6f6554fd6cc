#include "app/gui/gear/register/register_rows.h"

#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/plain_text.h"
#include "core/club/club_register.h"

#include <QCoreApplication>

namespace app {
namespace {

using core::Cells;
using core::SheetId;

struct RegisterRowsText {
    Q_DECLARE_TR_FUNCTIONS(RegisterRows)
};

constexpr SheetId sheetsOfPage[] = {SheetId::Boats,    SheetId::People, SheetId::Places,
                                    SheetId::KitTypes, SheetId::Sizes,  SheetId::LifeRules};

std::string cellOf(SheetId sheet, const Cells& cells, std::string_view column) {
    const int at = core::sheet(sheet).indexOf(column);
    return at < 0 ? std::string() : cells[static_cast<std::size_t>(at)];
}

/// The columns that a table has room for; all are in the form.
std::vector<std::string_view> shownColumns(SheetId sheet) {
    if (sheet == SheetId::Boats) return {"boat", "boat_class", "place", "check_every_days", "tag", "until"};
    if (sheet == SheetId::People) return {"person", "role", "mass_kg", "chest_cm", "tag", "until"};
    return {"place", "note", "tag", "until"};
}

QString cellInWords(SheetId sheet, const core::Column& column, const std::string& cell) {
    if (cell.empty()) return {};
    if (column.type == core::CellType::Tag) return codeInWords(cell);
    const QString words = choiceInWords(column, cell), unit = unitOf(sheet, column.name);
    return unit.isEmpty() ? words : RegisterRowsText::tr("%1 %2").arg(words, unit);
}

RegisterRow plainRowOf(SheetId sheet, const Cells& cells) {
    RegisterRow row{sheet, cells, {keyOfRow(sheet, cells), std::nullopt, {}, {}}};
    for (const std::string_view name : shownColumns(sheet)) {
        const int at = core::sheet(sheet).indexOf(name);
        row.shown.cells << cellInWords(sheet, core::sheet(sheet).columns[static_cast<std::size_t>(at)],
                                       cells[static_cast<std::size_t>(at)]);
    }
    return row;
}

QString kitTypeInShort(const Cells& cells) {
    QStringList words;
    if (cellOf(SheetId::KitTypes, cells, "worn") == "yes") words << RegisterRowsText::tr("worn");
    if (cellOf(SheetId::KitTypes, cells, "personal") == "yes")
        words << RegisterRowsText::tr("each has their own");
    if (const auto price = cellOf(SheetId::KitTypes, cells, "price"); !price.empty())
        words << RegisterRowsText::tr("price %1").arg(text(price));
    if (const auto note = cellOf(SheetId::KitTypes, cells, "note"); !note.empty()) words << text(note);
    return words.join(RegisterRowsText::tr(", "));
}

QString fromTo(const std::string& low, const std::string& high, const QString& unit) {
    if (low.empty() && high.empty()) return {};
    if (low.empty()) return RegisterRowsText::tr("at most %1 %2").arg(text(high), unit);
    if (high.empty()) return RegisterRowsText::tr("at least %1 %2").arg(text(low), unit);
    return RegisterRowsText::tr("%1 to %2 %3").arg(text(low), text(high), unit);
}

QString sizeInShort(const Cells& cells) {
    const auto cell = [&](std::string_view column) { return cellOf(SheetId::Sizes, cells, column); };
    QStringList words{
        fromTo(cell("mass_low_kg"), cell("mass_high_kg"), unitOf(SheetId::Sizes, "mass_low_kg")),
        fromTo(cell("chest_low_cm"), cell("chest_high_cm"), unitOf(SheetId::Sizes, "chest_low_cm"))};
    if (!cell("wanted").empty()) words << RegisterRowsText::tr("%1 wanted").arg(text(cell("wanted")));
    words.removeAll(QString());
    return words.join(RegisterRowsText::tr(", "));
}

/// What the rule asks, without what follows.
QString beginningInShort(const std::string& kind, const QString& count, const QString& event) {
    if (kind == "stamped") return RegisterRowsText::tr("ends on the day stamped on it");
    if (kind == "from_made") return RegisterRowsText::tr("ends %1 after it was made").arg(count);
    if (kind == "from_first_use") return RegisterRowsText::tr("ends %1 after its first use").arg(count);
    if (kind == "year_end_from_made")
        return RegisterRowsText::tr("ends with the year %1 after it was made").arg(count);
    if (kind == "inspect_every") return RegisterRowsText::tr("inspect every %1").arg(count);
    if (kind == "service_every") return RegisterRowsText::tr("service every %1").arg(count);
    if (kind == "every_hours") return RegisterRowsText::tr("look at it every %1 of use").arg(count);
    if (kind == "every_uses") return RegisterRowsText::tr("look at it every %1").arg(count);
    if (kind == "after_event") return RegisterRowsText::tr("look at it after: %1").arg(event);
    return text(kind);
}

RegisterRow rowBeneath(SheetId sheet, const Cells& cells) {
    const bool isSize = sheet == SheetId::Sizes;
    QString name = isSize ? RegisterRowsText::tr("size %1").arg(text(cells[1])) : text(cells[2]);
    if (!isSize && !cells[1].empty())
        name = RegisterRowsText::tr("%1: %2").arg(text(cells[1]), text(cells[2]));
    return {sheet,
            cells,
            {keyOfRow(sheet, cells),
             std::nullopt,
             {},
             {"      " + name, isSize ? sizeInShort(cells) : ruleInShort(cells)}}};
}

std::vector<RegisterRow> kitTypeRows(const RegisterSheets& sheets) {
    std::map<std::string, std::vector<RegisterRow>> beneath; // by folded kit type
    for (const SheetId sheet : {SheetId::Sizes, SheetId::LifeRules})
        if (const auto found = sheets.find(sheet); found != sheets.end())
            for (const Cells& cells : found->second)
                beneath[core::foldName(cells[0])].push_back(rowBeneath(sheet, cells));
    std::vector<RegisterRow> rows;
    const auto kitTypes = sheets.find(SheetId::KitTypes);
    if (kitTypes == sheets.end()) return rows;
    for (const Cells& cells : kitTypes->second) {
        rows.push_back({SheetId::KitTypes,
                        cells,
                        {keyOfRow(SheetId::KitTypes, cells),
                         std::nullopt,
                         {},
                         {text(cells[0]), kitTypeInShort(cells)}}});
        auto& own = beneath[core::foldName(cells[0])];
        rows.insert(rows.end(), own.begin(), own.end());
    }
    return rows;
}

} // namespace

RegisterSheets readSheets(const core::ClubRegister& register_) {
    RegisterSheets sheets;
    for (const SheetId sheet : sheetsOfPage)
        sheets[sheet] = register_.rows(sheet);
    return sheets;
}

QString keyOfRow(SheetId sheet, const Cells& cells) {
    const core::Sheet& described = core::sheet(sheet);
    return QString::fromStdString(std::string(described.table) + '\x1E' + core::keyOf(described, cells));
}

std::vector<RegisterRow> rowsOf(const RegisterSheets& sheets, SheetId shown) {
    if (shown == SheetId::KitTypes) return kitTypeRows(sheets);
    std::vector<RegisterRow> rows;
    if (const auto found = sheets.find(shown); found != sheets.end())
        for (const Cells& cells : found->second)
            rows.push_back(plainRowOf(shown, cells));
    return rows;
}

std::vector<TableColumn> columnsOf(SheetId shown) {
    if (shown == SheetId::KitTypes)
        return {{RegisterRowsText::tr("kit type, size, life rule")}, {RegisterRowsText::tr("what it says")}};
    std::vector<TableColumn> columns;
    for (const std::string_view name : shownColumns(shown))
        columns.push_back({columnInWords(shown, name)});
    return columns;
}

QString headingOf(SheetId sheet, const Cells& cells) {
    if (sheet == SheetId::Sizes)
        return RegisterRowsText::tr("%1, size %2").arg(withCapital(text(cells[0])), text(cells[1]));
    if (sheet == SheetId::LifeRules)
        return cells[1].empty()
                   ? RegisterRowsText::tr("%1: %2").arg(withCapital(text(cells[0])), text(cells[2]))
                   : RegisterRowsText::tr("%1, %2: %3")
                         .arg(withCapital(text(cells[0])), text(cells[1]), text(cells[2]));
    return withCapital(text(cells[0]));
}

QString ruleInShort(const Cells& rule) {
    const auto cell = [&](std::string_view column) { return cellOf(SheetId::LifeRules, rule, column); };
    const std::string kind = cell("kind");
    const QString count = RegisterRowsText::tr("%1 %2").arg(text(cell("n")), countedBy(kind)).trimmed();
    const QString words = beginningInShort(kind, count, text(cell("event")));
    return cell("severity") == "remark" ? RegisterRowsText::tr("%1; a remark").arg(words) : words;
}

} // namespace app
