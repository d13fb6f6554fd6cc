#include "app/cli/commands/reports.h"

#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <cmath>

namespace app {
namespace {

void sayHead(const CheckReport& report, const std::vector<std::string>& people) {
    const core::CheckAnswer& answer = report.answer;
    sayLine(outcomeOf(answer) + QLatin1Char('.'));
    QString head = QStringLiteral("%1 · %2 · %3")
                       .arg(text(answer.location.name), nameInWords(answer.phase), inWords(answer.today));
    if (!people.empty()) head += QStringLiteral(" · ") + listed(people);
    head += report.signedBy.empty() ? QStringLiteral(" · not signed, it stays open")
                                    : QStringLiteral(" · signed by %1").arg(text(report.signedBy));
    if (!report.urgent.empty()) head += QStringLiteral(", urgent: ") + text(report.urgent);
    sayLine(head);
}

/// A heading over its rows, both left out when there is nothing to say.
void saySection(const QString& heading, const QStringList& rows) {
    if (rows.isEmpty()) return;
    sayLine(QString());
    sayLine(heading);
    for (const QString& row : rows)
        sayLine(QStringLiteral("  ") + row);
}

QStringList logRows(const core::CheckAnswer& answer) {
    QStringList rows;
    for (const core::LogEntry& entry : answer.logOpen)
        rows << QStringLiteral("▲ “%1” %2%3")
                    .arg(text(entry.text), inWords(entry.day),
                         entry.by.empty() ? QString() : QStringLiteral(", ") + text(entry.by));
    return rows;
}

QStringList toFindRows(const core::CheckAnswer& answer) {
    QStringList rows;
    for (const core::LineAnswer& line : answer.lines) {
        if (line.counted >= line.wanted) continue;
        QString row = QStringLiteral("◯ %1").arg(text(line.line.kitType));
        if (line.wanted > 1) row += QStringLiteral("  %1 of %2").arg(line.counted).arg(line.wanted);
        if (!line.withoutPeople.empty()) row += QStringLiteral("  for %1").arg(listed(line.withoutPeople));
        if (!line.line.required) row += QStringLiteral("  (not required)");
        rows << row;
    }
    return rows;
}

QStringList lookRows(const core::CheckAnswer& answer) {
    QStringList rows;
    for (const core::Finding& finding : answer.findings)
        if (finding.kind != core::FindingKind::Missing) // they stand above, as what is still to find
            rows << QStringLiteral("▲ ") + reasonOf(finding);
    return rows;
}

QStringList foundRows(const core::CheckAnswer& answer) {
    QStringList rows;
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& item : line.items) {
            if (!item.counts) continue;
            QString row = QStringLiteral("■ %1  %2").arg(text(item.kitType), codeInWords(item.item.tag));
            if (!item.wornBy.empty()) row += QStringLiteral("  %1").arg(text(item.wornBy));
            if (item.due) row += QStringLiteral("  due %1").arg(inWords(*item.due));
            rows << row;
            if (const QString worn = wornTagInWords(item.print); !worn.isEmpty())
                rows << QStringLiteral("    ") + worn;
        }
    return rows;
}

QStringList pointRows(const core::CheckAnswer& answer) {
    QStringList rows;
    for (const core::PointAnswer& point : answer.points) {
        const bool done = point.state == core::PointState::Done;
        const bool open = point.state == core::PointState::Open;
        QString row = (done   ? QStringLiteral("■ ")
                       : open ? QStringLiteral("◯ ")
                              : QStringLiteral("▲ ")) +
                      text(point.point.name);
        if (point.value && point.point.kind != core::PointKind::Look)
            row += QStringLiteral("  %1 %2").arg(
                numberInWords(*point.value),
                point.point.kind == core::PointKind::Timed ? QStringLiteral("s") : text(point.point.unit));
        if (point.afloat)
            row += QStringLiteral("  about %1 kPa afloat, a first estimate")
                       .arg(numberInWords(std::round(*point.afloat * 10) / 10));
        rows << row;
    }
    return rows;
}

QStringList unreadRows(const std::vector<std::string>& unread) {
    QStringList rows;
    for (const std::string& code : unread)
        rows << QStringLiteral("– ") + text(code);
    return rows;
}

} // namespace

void sayCheck(const CheckReport& report, const std::vector<std::string>& people) {
    const core::CheckAnswer& answer = report.answer;
    sayHead(report, people);
    saySection(QStringLiteral("the log"), logRows(answer));
    saySection(QStringLiteral("still to find"), toFindRows(answer));
    saySection(QStringLiteral("look at this"), lookRows(answer));
    saySection(QStringLiteral("found"), foundRows(answer));
    saySection(QStringLiteral("points"), pointRows(answer));
    saySection(QStringLiteral("read, and nothing counted for it"), unreadRows(report.unread));
    sayLine(QString());
    for (const QString& caution : checkCautions(answer))
        sayLine(caution);
}

void sayStocktake(const CheckReport& report) {
    const core::CheckAnswer& answer = report.answer;
    int wanted = 0;
    for (const core::LineAnswer& line : answer.lines)
        wanted += line.wanted;
    sayLine(QStringLiteral("Seen: %1 of %2 that should be at %3.")
                .arg(answer.score.required)
                .arg(counted(wanted, "%n item", "%n items"), text(answer.location.name)));
    sayLine(report.signedBy.empty() ? QStringLiteral("Not signed, it stays open.")
                                    : QStringLiteral("Signed by %1.").arg(text(report.signedBy)));
    QStringList rows;
    for (const core::Finding& finding : answer.findings)
        rows << QStringLiteral("▲ ") + reasonOf(finding);
    saySection(QStringLiteral("look at this"), rows);
    saySection(QStringLiteral("found"), foundRows(answer));
    saySection(QStringLiteral("read, and nothing counted for it"), unreadRows(report.unread));
    sayLine(QString());
    sayLine(scanCaution());
}

} // namespace app
