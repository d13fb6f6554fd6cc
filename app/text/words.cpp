#include "app/text/words.h"
#include "app/text/text.h"

#include "core/tag/tag_code.h"
#include "scanner/seen_code.h"

#include <QCoreApplication>

#include <array>
#include <cmath>
#include <ctime>

namespace app {
namespace {

struct WordsText {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString monthInWords(int month) {
    static constexpr std::array<const char*, 12> names{
        QT_TRANSLATE_NOOP("Words", "January"),   QT_TRANSLATE_NOOP("Words", "February"),
        QT_TRANSLATE_NOOP("Words", "March"),     QT_TRANSLATE_NOOP("Words", "April"),
        QT_TRANSLATE_NOOP("Words", "May"),       QT_TRANSLATE_NOOP("Words", "June"),
        QT_TRANSLATE_NOOP("Words", "July"),      QT_TRANSLATE_NOOP("Words", "August"),
        QT_TRANSLATE_NOOP("Words", "September"), QT_TRANSLATE_NOOP("Words", "October"),
        QT_TRANSLATE_NOOP("Words", "November"),  QT_TRANSLATE_NOOP("Words", "December")};
    return WordsText::tr(names[static_cast<std::size_t>(month - 1)]);
}

} // namespace

QString inWords(core::CalendarDay day) {
    //: a day: %1 day of the month, %2 month, %3 year
    return WordsText::tr("%1 %2 %3").arg(day.day()).arg(monthInWords(day.month())).arg(day.year());
}

QString inWords(const core::PartialDay& day) {
    const core::CalendarDay first = day.firstDay();
    if (day.isExact()) return inWords(first);
    if (first.month() != day.lastDay().month()) return QString::number(first.year());
    //: a month: %1 month, %2 year
    return WordsText::tr("%1 %2").arg(monthInWords(first.month())).arg(first.year());
}

QString inWords(core::Instant at, core::CalendarDay today) {
    const core::CalendarDay day = at.localDay();
    if (day == today) return WordsText::tr("%1 today").arg(timeInWords(at));
    if (day.plusDays(1) == today) return WordsText::tr("%1 yesterday").arg(timeInWords(at));
    return WordsText::tr("%1 on %2").arg(timeInWords(at), inWords(day));
}

QString daysAgoInWords(int days) {
    return counted(days, QT_TRANSLATE_N_NOOP("Words", "%n day ago"),
                   QT_TRANSLATE_N_NOOP("Words", "%n days ago"));
}

QString timeInWords(core::Instant at) {
    const auto seconds = static_cast<std::time_t>(at.millis() / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    return QStringLiteral("%1:%2")
        .arg(local.tm_hour, 2, 10, QLatin1Char('0'))
        .arg(local.tm_min, 2, 10, QLatin1Char('0'));
}

QString secondsInWords(double seconds) {
    const int whole = static_cast<int>(std::floor(seconds));
    return QStringLiteral("%1:%2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

QString rangeInWords(const core::BoatPoint& point, WithUnit withUnit) {
    if (point.kind == core::PointKind::Look) return {};
    const bool isTimed = point.kind == core::PointKind::Timed;
    const auto number = [&](double value) { return isTimed ? secondsInWords(value) : numberInWords(value); };
    const auto& [low, high] = point.limits;
    QString range;
    if (low && high)
        range = WordsText::tr("%1 to %2").arg(number(*low), number(*high));
    else if (low)
        range = WordsText::tr("at least %1").arg(number(*low));
    else if (high)
        range = WordsText::tr("at most %1").arg(number(*high));
    if (range.isEmpty() || withUnit == WithUnit::No) return range;
    const QString unit = isTimed ? WordsText::tr("min") : text(point.unit);
    return unit.isEmpty() ? range : range + QLatin1Char(' ') + unit;
}

QString wornTagInWords(std::optional<double> print) {
    if (!print || *print >= scanner::wornPrint) return {};
    return WordsText::tr("its tag is wearing out: print a new one");
}

QString codeInWords(const std::string& code) {
    const auto tag = core::TagCode::exact(code);
    return text(tag ? tag->grouped() : code);
}

QString numberInWords(double value, int decimals) {
    QString text = QString::number(value, 'f', decimals);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    if (text == QLatin1String("-0")) return QStringLiteral("0");
    //: the mark between whole and part of a number
    return text.replace(QLatin1Char('.'), WordsText::tr("."));
}

QString listed(const QStringList& words) {
    if (words.size() < 2) return words.join(QString());
    //: the end of a list: everything but the last, and the last
    return WordsText::tr("%1 and %2")
        .arg(words.mid(0, words.size() - 1).join(WordsText::tr(", ")), words.last());
}

QString listed(const std::vector<std::string>& words) {
    QStringList list;
    for (const std::string& word : words)
        list << text(word);
    return listed(list);
}

QString withCapital(const QString& sentence) {
    return sentence.isEmpty() ? sentence : sentence.at(0).toUpper() + sentence.mid(1);
}

QString counted(int n, const char* one, const char* many) {
    return QCoreApplication::translate("Words", n == 1 ? one : many, nullptr, n);
}

} // namespace app
