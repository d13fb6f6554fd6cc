#include "app/gui/gear/manifests/manifest_rows.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct ManifestRowsText {
    Q_DECLARE_TR_FUNCTIONS(Manifests)
};

using core::Difference;

QString yesOrNo(bool yes) {
    return yes ? ManifestRowsText::tr("yes") : ManifestRowsText::tr("no");
}

Mark markOf(Difference difference) {
    return difference == Difference::TakenAway ? Mark::NotAsked : Mark::Found;
}

/// Beside a row's mark: what is unlike the class, and nothing else.
QString inCell(const core::AskedLine& own) {
    if (own.difference == Difference::None && own.isOwn) return ManifestRowsText::tr("own, like its class");
    if (own.difference != Difference::Changed) return wordOf(own.difference);
    const core::ManifestLine& line = own.line;
    QString ofClass = ManifestRowsText::tr("another note");
    if (line.substitutes != own.ofClass->substitutes) ofClass = inWords(*own.ofClass);
    if (line.required != own.ofClass->required)
        ofClass =
            own.ofClass->required ? ManifestRowsText::tr("required") : ManifestRowsText::tr("not required");
    if (line.quantity != own.ofClass->quantity) ofClass = QString::number(own.ofClass->quantity);
    return ManifestRowsText::tr("class: %1").arg(ofClass);
}

QString inCell(const core::AskedPoint& own) {
    if (own.difference == Difference::None && own.isOwn) return ManifestRowsText::tr("own, like its class");
    return own.difference == Difference::Changed
               ? ManifestRowsText::tr("class: %1").arg(inWords(*own.ofClass))
               : wordOf(own.difference);
}

/// Which of the class's boats are asked something else of that thing: "not Dabchick".
template <class Asked>
QString boatsDiffering(const std::vector<std::pair<QString, core::Manifest>>& boats, const Asked& row,
                       std::vector<Asked> core::Manifest::*rows) {
    QStringList words;
    for (const auto& [name, manifest] : boats)
        for (const Asked& own : manifest.*rows)
            if (isSame(own, row) && own.difference != Difference::None) words << name;
    return words.isEmpty() ? QString() : ManifestRowsText::tr("not %1").arg(listed(words));
}

TableRow rowOf(const core::AskedLine& asked, const QString& last) {
    const core::ManifestLine& line = asked.line;
    return {text(line.kitType),
            std::nullopt,
            {},
            {text(line.kitType), QString::number(line.quantity), yesOrNo(line.required), last}};
}

TableRow rowOf(const core::AskedPoint& asked, const QString& last) {
    return {keyOf(asked),
            std::nullopt,
            {},
            {text(asked.point.name), phaseInWords(asked.phase), inWords(asked.point), last}};
}

void mark(TableRow& row, Mark mark, const QString& word) {
    row.mark = mark;
    row.markWord = word;
}

/// Rows of an earlier version; `changes`: what today asks differently.
template <class Asked, class Before, class After>
std::vector<TableRow> oldRows(const std::vector<Asked>& then, const std::vector<Asked>& today, Before isAsked,
                              After todayInWords) {
    std::vector<TableRow> rows;
    const auto find = [&](const std::vector<Asked>& in, const Asked& wanted) {
        const auto found = std::find_if(
            in.begin(), in.end(), [&](const Asked& each) { return isAsked(each) && isSame(each, wanted); });
        return found == in.end() ? nullptr : &*found;
    };
    for (const Asked& each : then) {
        if (!isAsked(each)) continue;
        const Asked* now = find(today, each);
        const QString differs = todayInWords(each, now);
        rows.push_back(rowOf(each, differs));
        if (!differs.isEmpty()) mark(rows.back(), Mark::Look, ManifestRowsText::tr("different today"));
    }
    for (const Asked& each : today) {
        if (!isAsked(each) || find(then, each)) continue;
        rows.push_back(rowOf(each, ManifestRowsText::tr("only today: %1").arg(rowOf(each, {}).cells[1])));
        TableRow& row = rows.back();
        row.cells[1] = row.cells[2] = QStringLiteral("–");
        mark(row, Mark::NotAsked, ManifestRowsText::tr("not asked then"));
    }
    return rows;
}

/// Rows of today's manifest; `unasked` takes the numbers out of a row that is taken away.
template <class Asked, class Unasked>
std::vector<TableRow> rowsToday(const ManifestAnswer& answer, std::vector<Asked> core::Manifest::*asked,
                                Unasked unasked) {
    std::vector<TableRow> rows;
    const auto boats = boatsOf(answer);
    for (const Asked& each : answer.now.*asked) {
        TableRow row = rowOf(each, inCell(each));
        if (each.difference == Difference::TakenAway) unasked(row);
        if (each.difference != Difference::None)
            mark(row, markOf(each.difference), wordOf(each.difference));
        else if (!each.isOwn)
            row.cells.back() = boatsDiffering(boats, each, asked);
        rows.push_back(row);
    }
    return rows;
}

} // namespace

std::vector<TableColumn> lineColumns(bool isOld) {
    return {{ManifestRowsText::tr("kit")},
            {ManifestRowsText::tr("number"), true},
            {ManifestRowsText::tr("required")},
            {isOld ? ManifestRowsText::tr("today") : ManifestRowsText::tr("difference")}};
}

std::vector<TableColumn> pointColumns(bool isOld) {
    return {{ManifestRowsText::tr("point")},
            {ManifestRowsText::tr("check")},
            {ManifestRowsText::tr("asked")},
            {isOld ? ManifestRowsText::tr("today") : ManifestRowsText::tr("difference")}};
}

std::vector<TableRow> lineRows(const ManifestAnswer& answer) {
    return rowsToday(answer, &core::Manifest::lines,
                     [](TableRow& row) { row.cells[1] = row.cells[2] = QStringLiteral("–"); });
}

std::vector<TableRow> pointRows(const ManifestAnswer& answer) {
    return rowsToday(answer, &core::Manifest::points, [](TableRow&) {});
}

std::vector<TableRow> lineRows(const core::Manifest& then, const core::Manifest& today) {
    return oldRows(
        then.lines, today.lines, [](const core::AskedLine& each) { return each.line.quantity > 0; },
        [](const core::AskedLine& old, const core::AskedLine* now) {
            if (!now) return ManifestRowsText::tr("not asked");
            if (core::asksTheSame(old.line, now->line)) return QString();
            return inWords(old.line) == inWords(now->line) ? ManifestRowsText::tr("another note")
                                                           : inWords(now->line);
        });
}

std::vector<TableRow> pointRows(const core::Manifest& then, const core::Manifest& today) {
    return oldRows(
        then.points, today.points, [](const core::AskedPoint&) { return true; },
        [](const core::AskedPoint& old, const core::AskedPoint* now) {
            if (!now) return ManifestRowsText::tr("not asked");
            if (core::asksTheSame(old.point, now->point)) return QString();
            return rowOf(old, {}).cells[2] == rowOf(*now, {}).cells[2] ? ManifestRowsText::tr("another note")
                                                                       : rowOf(*now, {}).cells[2];
        });
}

} // namespace app
