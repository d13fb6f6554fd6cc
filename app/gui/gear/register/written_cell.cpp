#include "app/gui/gear/register/written_cell.h"

#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/written_day.h"
#include "core/spreadsheet/workbook.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

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

/// So that "14 Tage", "14Tage" and "14 TAGE" are one.
QString compared(const QString& words) {
    return QString::fromStdString(core::foldName(words.toStdString())).remove(u' ');
}

/// As it is said in this language, as the contract spells it, or days as a number alone.
QString toleranceInSheet(const core::Column& column, const QString& typed) {
    const QString plain = compared(typed);
    for (const char* each : {"none", "end_of_month"})
        if (plain == compared(choiceInWords(column, each))) return QString::fromLatin1(each);
    static const QRegularExpression number(QStringLiteral("^(\\d{1,7})(.*)$"));
    const auto found = number.match(plain);
    if (!found.hasMatch()) return typed;
    const QString days = found.captured(1) + u'd', unit = found.captured(2);
    const bool isDays = unit.isEmpty() || unit == QLatin1String("day") || unit == QLatin1String("days") ||
                        plain == compared(choiceInWords(column, days.toStdString()));
    return isDays ? days : typed;
}

} // namespace

core::DayOrder dayOrderHere() {
    const QString shown = QLocale::system().dateFormat(QLocale::ShortFormat);
    const auto day = shown.indexOf('d'), month = shown.indexOf('M');
    return month >= 0 && month < day && !shown.startsWith('y') ? core::DayOrder::MonthFirst
                                                               : core::DayOrder::DayFirst;
}

QString asInSheet(const core::Column& column, const QString& typed) {
    if (column.type == core::CellType::Tolerance) return toleranceInSheet(column, typed);
    if (!isDayOrNumber(column.type)) return typed;
    const std::string plain = typed.trimmed().toStdString();
    const core::CellMeaning meaning =
        core::meaningOf({core::SheetCell::Kind::Text, plain}, column, dayOrderHere());
    // What says nothing in somebody's spreadsheet is no way to clear a cell here: it is refused as it stands.
    return QString::fromStdString(meaning.text.empty() || meaning.fault ? plain : meaning.text);
}

std::string asInSheet(core::SheetId id, std::string_view column, const QString& typed) {
    const core::Sheet& sheet = core::sheet(id);
    return asInSheet(sheet.column(column), typed).toStdString();
}

QString asTyped(const core::Column& column, const std::string& stored) {
    if (column.type == core::CellType::Tolerance) return choiceInWords(column, stored);
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
