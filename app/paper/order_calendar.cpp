#include "app/paper/order_sheet.h"

#include "app/text/plan_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QString>
#include <QUuid>

#include <algorithm>

namespace app {
namespace {

struct OrderCalendarText {
    Q_DECLARE_TR_FUNCTIONS(OrderCalendar)
};

constexpr std::size_t longestLine = 75; // octets without the line end (RFC 5545, 3.1)

bool startsCharacter(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

/// One content line, folded between characters.
void addLine(std::string& calendar, std::string line) {
    while (line.size() > longestLine) {
        std::size_t cut = longestLine;
        while (cut > 1 && !startsCharacter(line[cut]))
            --cut;
        calendar += line.substr(0, cut) + "\r\n";
        line = ' ' + line.substr(cut);
    }
    calendar += line + "\r\n";
}

/// A value of type TEXT (RFC 5545, 3.3.11); what is no character of it stands as `\x1b`.
std::string escaped(const QString& text) {
    std::string value;
    for (const char byte : textOfLines(text).toStdString()) {
        if (byte == '\n')
            value += "\\n";
        else if (byte == '\\' || byte == ';' || byte == ',')
            value += std::string{'\\', byte};
        else
            value += byte;
    }
    return value;
}

std::string basicDay(core::CalendarDay day) {
    std::string text = day.iso();
    text.erase(std::remove(text.begin(), text.end(), '-'), text.end());
    return text;
}

/// `20260314T064000Z` of `2026-03-14T06:40:00.000Z`.
std::string basicInstant(core::Instant at) {
    std::string text = at.iso().substr(0, 19) + 'Z';
    text.erase(std::remove_if(text.begin(), text.end(), [](char c) { return c == '-' || c == ':'; }),
               text.end());
    return text;
}

/// An event of a whole day.
struct Event {
    std::string uid;
    core::CalendarDay day;
    QString summary;
    QString description;
};

std::string uidOf(const std::string& club, const std::string& kitType, const std::string& size) {
    // Any namespace will do, if it stays the same.
    static const QUuid orders(QStringLiteral("6f0c3c52-3f0e-4d0b-9a53-8a1c6f6d2f11"));
    QByteArray name;
    for (const std::string& part : {club, kitType, size})
        name.append(part.data(), static_cast<qsizetype>(part.size())).append('\0');
    return QUuid::createUuidV5(orders, name).toString(QUuid::WithoutBraces).toStdString();
}

Event orderOf(const std::string& club, const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    const QString about =
        QStringLiteral("%1, %2").arg(shortInWords(row, plan.today), orderInWords(row, plan));
    return {uidOf(club, row.kitType, row.size), std::max(*row.orderBy, plan.today),
            QStringLiteral("%1: %2").arg(kitInWords(row), quantityInWords(row)),
            withCapital(about) + QStringLiteral(".\n") + questionInWords(plan)};
}

Event planAnew(const std::string& club, const core::ReplacementPlan& plan) {
    return {uidOf(club, {}, {}), plan.end, OrderCalendarText::tr("Nothing runs short until today: plan anew"),
            questionInWords(plan)};
}

void addEvent(std::string& calendar, const Event& event, core::Instant madeAt) {
    addLine(calendar, "BEGIN:VEVENT");
    addLine(calendar, "UID:" + event.uid);
    addLine(calendar, "DTSTAMP:" + basicInstant(madeAt));
    addLine(calendar, "DTSTART;VALUE=DATE:" + basicDay(event.day));
    addLine(calendar, "DTEND;VALUE=DATE:" + basicDay(event.day.plusDays(1)));
    addLine(calendar, "SUMMARY:" + escaped(event.summary));
    addLine(calendar, "DESCRIPTION:" + escaped(event.description));
    addLine(calendar, "TRANSP:TRANSPARENT");
    addLine(calendar, "END:VEVENT");
}

} // namespace

std::string orderCalendar(const std::string& club, const core::ReplacementPlan& plan, core::Instant madeAt) {
    std::string calendar;
    addLine(calendar, "BEGIN:VCALENDAR");
    addLine(calendar, "VERSION:2.0");
    addLine(calendar, "PRODID:-//Tholepin//Replacement plan//EN");
    for (const core::ReplacementRow& row : plan.rows)
        if (row.runsShort()) addEvent(calendar, orderOf(club, row, plan), madeAt);
    if (!plan.runsShort()) addEvent(calendar, planAnew(club, plan), madeAt); // empty it would be none
    addLine(calendar, "END:VCALENDAR");
    return calendar;
}

} // namespace app
