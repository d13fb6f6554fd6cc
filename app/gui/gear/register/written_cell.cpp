#include "app/gui/gear/register/written_cell.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/written_day.h"
#include "core/spreadsheet/workbook.h"

#include <QCoreApplication>
#include <QLocale>

namespace app {
namespace {

struct WrittenCellText {
    Q_DECLARE_TR_FUNCTIONS(WrittenCell)
};

bool isDayOrNumber(core::CellType type) {
    switch (type) {
    case core::CellType::Day:
    case core::CellType::ExactDay:
    case core::CellType::Count:
    case core::CellType::Number:
    case core::CellType::Amount:
        return true;
    default:
        return false;
    }
}

} // namespace

core::DayOrder dayOrderHere() {
    const QString shown = QLocale::system().dateFormat(QLocale::ShortFormat);
    const auto day = shown.indexOf('d'), month = shown.indexOf('M');
    return month >= 0 && month < day && !shown.startsWith('y') ? core::DayOrder::MonthFirst
                                                               : core::DayOrder::DayFirst;
}

QString asInSheet(const core::Column& column, const QString& typed) {
    if (!isDayOrNumber(column.type)) return typed;
    const std::string plain = typed.trimmed().toStdString();
    const core::CellMeaning meaning =
        core::meaningOf({core::SheetCell::Kind::Text, plain}, column, dayOrderHere());
    // What says nothing in somebody's spreadsheet is no way to clear a cell here: it is refused as it stands.
    return QString::fromStdString(meaning.text.empty() || meaning.fault ? plain : meaning.text);
}

std::string asInSheet(core::SheetId id, std::string_view column, const QString& typed) {
    const core::Sheet& sheet = core::sheet(id);
    return asInSheet(sheet.columns[static_cast<std::size_t>(sheet.indexOf(column))], typed).toStdString();
}

QString asTyped(const core::Column& column, const std::string& stored) {
    QString shown = text(stored);
    if (column.type == core::CellType::Number || column.type == core::CellType::Amount)
        shown.replace('.', QCoreApplication::translate("Words", "."));
    return shown;
}

QString understoodDay(const QString& typed) {
    const core::WrittenDay written = core::dayAsWritten(typed.trimmed().toStdString(), dayOrderHere());
    const auto day = core::PartialDay::parse(written.text);
    return day ? WrittenCellText::tr("is %1").arg(inWords(*day)) : QString();
}

} // namespace app
