#include "app/gui/gear/manifests/manifest_words.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct ManifestText {
    Q_DECLARE_TR_FUNCTIONS(Manifests)
};

using core::Difference;
using core::ManifestOwner;

constexpr std::size_t changesNamed = 3;

QString linesCounted(std::size_t count) {
    return counted(static_cast<int>(count), QT_TRANSLATE_N_NOOP("Words", "%n line"),
                   QT_TRANSLATE_N_NOOP("Words", "%n lines"));
}

QString pointsCounted(std::size_t count) {
    return counted(static_cast<int>(count), QT_TRANSLATE_N_NOOP("Words", "%n point"),
                   QT_TRANSLATE_N_NOOP("Words", "%n points"));
}

template <class Asked>
int differing(const std::vector<Asked>& rows) {
    return static_cast<int>(std::count_if(
        rows.begin(), rows.end(), [](const Asked& each) { return each.difference != Difference::None; }));
}

int differing(const core::Manifest& manifest) {
    return differing(manifest.lines) + differing(manifest.points);
}

int linesAsked(const core::Manifest& manifest) {
    return static_cast<int>(std::count_if(manifest.lines.begin(), manifest.lines.end(),
                                          [](const auto& each) { return each.line.quantity > 0; }));
}

QString yesOrNo(bool yes) {
    return yes ? ManifestText::tr("yes") : ManifestText::tr("no");
}

Mark markOf(Difference difference) {
    return difference == Difference::TakenAway ? Mark::NotAsked : Mark::Found;
}

QString markWordOf(Difference difference) {
    switch (difference) {
    case Difference::Changed:
    case Difference::Added:
        return ManifestText::tr("own");
    case Difference::TakenAway:
        return ManifestText::tr("taken away");
    case Difference::None:
        break;
    }
    return {};
}

/// Beside a row's mark: what is unlike the class, and nothing else.
QString inCell(const core::AskedLine& own) {
    if (own.difference == Difference::None && own.isOwn) return ManifestText::tr("own, like its class");
    if (own.difference != Difference::Changed) return markWordOf(own.difference);
    const core::ManifestLine& line = own.line;
    QString ofClass = ManifestText::tr("another note");
    if (line.substitutes != own.ofClass->substitutes) ofClass = inWords(*own.ofClass);
    if (line.required != own.ofClass->required)
        ofClass = own.ofClass->required ? ManifestText::tr("required") : ManifestText::tr("not required");
    if (line.quantity != own.ofClass->quantity) ofClass = QString::number(own.ofClass->quantity);
    return ManifestText::tr("class: %1").arg(ofClass);
}

QString inCell(const core::AskedPoint& own) {
    if (own.difference == Difference::None && own.isOwn) return ManifestText::tr("own, like its class");
    return own.difference == Difference::Changed ? ManifestText::tr("class: %1").arg(inWords(*own.ofClass))
                                                 : markWordOf(own.difference);
}

template <class Asked>
QString differenceInWords(const Asked& own) {
    if (own.difference == Difference::None)
        return own.isOwn ? ManifestText::tr("own, like its class") : QString();
    const QString word = markWordOf(own.difference);
    return own.ofClass ? ManifestText::tr("%1; class: %2").arg(word, inWords(*own.ofClass)) : word;
}

/// Which of the class's boats ask that thing by a row of their own.
template <class Asked, class Rows>
QStringList boatsWithOwnRow(const std::vector<std::pair<QString, core::Manifest>>& boats, const Asked& row,
                            Rows rowsOf, bool (*isSame)(const Asked&, const Asked&)) {
    QStringList names;
    for (const auto& [name, manifest] : boats)
        for (const Asked& own : rowsOf(manifest))
            if (isSame(own, row) && own.isOwn && own.difference != Difference::TakenAway) names << name;
    return names;
}

/// Which of the class's boats are asked something else of that thing: "not Dabchick".
template <class Asked, class Rows>
QString boatsDiffering(const std::vector<std::pair<QString, core::Manifest>>& boats, const Asked& row,
                       Rows rowsOf, bool (*isSame)(const Asked&, const Asked&)) {
    QStringList words;
    for (const auto& [name, manifest] : boats)
        for (const Asked& own : rowsOf(manifest))
            if (isSame(own, row) && own.difference != Difference::None) words << name;
    return words.isEmpty() ? QString() : ManifestText::tr("not %1").arg(listed(words));
}

bool isSameLine(const core::AskedLine& a, const core::AskedLine& b) {
    return core::foldName(a.line.kitType) == core::foldName(b.line.kitType);
}

bool isSamePoint(const core::AskedPoint& a, const core::AskedPoint& b) {
    return a.phase == b.phase && core::foldName(a.point.name) == core::foldName(b.point.name);
}

std::vector<std::pair<QString, core::Manifest>> boatsOf(const ManifestAnswer& answer) {
    std::vector<std::pair<QString, core::Manifest>> boats;
    if (answer.owner.kind == ManifestOwner::Kind::BoatClass)
        for (const std::string& boat : answer.record.boatsOf(answer.owner.name))
            boats.emplace_back(text(boat), answer.record.now({ManifestOwner::Kind::Boat, boat}));
    return boats;
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
std::vector<TableRow> oldRows(const std::vector<Asked>& then, const std::vector<Asked>& today,
                              bool (*isSame)(const Asked&, const Asked&), Before isAsked,
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
        if (!differs.isEmpty()) mark(rows.back(), Mark::Look, ManifestText::tr("different today"));
    }
    for (const Asked& each : today) {
        if (!isAsked(each) || find(then, each)) continue;
        rows.push_back(rowOf(each, ManifestText::tr("only today: %1").arg(rowOf(each, {}).cells[1])));
        TableRow& row = rows.back();
        row.cells[1] = row.cells[2] = QStringLiteral("–");
        mark(row, Mark::NotAsked, ManifestText::tr("not asked then"));
    }
    return rows;
}

template <class Value>
QString changedInWords(const QString& what, const std::optional<Value>& before,
                       const std::optional<Value>& after) {
    if (!before) return ManifestText::tr("%1 added: %2").arg(what, inWords(*after));
    if (!after) return ManifestText::tr("%1 taken away").arg(what);
    const QString now = inWords(*after);
    const QString then = inWords(*before);
    if (now == then) return ManifestText::tr("%1: another note").arg(what);
    return ManifestText::tr("%1: %2 instead of %3").arg(what, now, then);
}

QString changeInWords(const core::ManifestChange& change) {
    if (change.phase.empty()) {
        const auto& line = change.lineAfter ? change.lineAfter : change.lineBefore;
        return changedInWords(text(line->kitType), change.lineBefore, change.lineAfter);
    }
    const auto& point = change.pointAfter ? change.pointAfter : change.pointBefore;
    return changedInWords(ManifestText::tr("%1 (%2)").arg(text(point->name), phaseInWords(change.phase)),
                          change.pointBefore, change.pointAfter);
}

/// The first three changes in words, and how many more there are.
QString changesInWords(const std::vector<core::ManifestChange>& changes) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(changes.size(), changesNamed); ++i)
        words << changeInWords(changes[i]);
    if (changes.size() > changesNamed)
        words << ManifestText::tr("and %1 more").arg(changes.size() - changesNamed);
    return withCapital(words.join(ManifestText::tr("; ")));
}

QString whoMade(const core::ManifestVersion& version) {
    if (!version.by.empty()) return ManifestText::tr("by %1").arg(text(version.by));
    // Only what is done in the program says when; an import's facts name neither a person nor a folder.
    return version.at ? ManifestText::tr("by nobody named") : ManifestText::tr("by an import of sheets");
}

bool isAloneOnItsDay(const std::vector<core::ManifestVersion>& versions,
                     const core::ManifestVersion& version) {
    const core::CalendarDay day = version.since().localDay();
    return std::count_if(versions.begin(), versions.end(),
                         [&](const auto& each) { return each.since().localDay() == day; }) == 1;
}

} // namespace

ManifestAnswer answerOf(core::ManifestRecord record, ManifestOwner owner) {
    ManifestAnswer answer{.owner = std::move(owner), .record = std::move(record), .now = {}, .versions = {}};
    answer.now = answer.record.now(answer.owner);
    answer.versions = answer.record.versionsOf(answer.owner);
    return answer;
}

QString summaryOf(const ManifestAnswer& answer) {
    const QString asked =
        ManifestText::tr("%1: %2 and %3")
            .arg(text(answer.owner.name), linesCounted(static_cast<std::size_t>(linesAsked(answer.now))),
                 pointsCounted(answer.now.points.size()));
    if (answer.owner.kind == ManifestOwner::Kind::Boat) {
        const int different = differing(answer.now);
        return different
                   ? ManifestText::tr("%1; %2 unlike its class, %3.")
                         .arg(asked)
                         .arg(different)
                         .arg(text(answer.now.boatClass))
                   : ManifestText::tr("%1, all as its class, %2.").arg(asked, text(answer.now.boatClass));
    }
    QStringList boats;
    for (const auto& [name, manifest] : boatsOf(answer)) {
        const int different = differing(manifest);
        boats << (different ? ManifestText::tr("%1 (%2 own)").arg(name).arg(different) : name);
    }
    return ManifestText::tr("%1. Boats: %2.").arg(asked, boats.join(ManifestText::tr(", ")));
}

QString inWords(const core::ManifestLine& line) {
    QString words = QString::number(line.quantity);
    if (!line.required) words = ManifestText::tr("%1, not required").arg(words);
    QStringList substitutes;
    for (const std::string& name : line.substitutes)
        substitutes << text(name);
    return substitutes.isEmpty()
               ? words
               : ManifestText::tr("%1, or %2").arg(words, substitutes.join(ManifestText::tr(", ")));
}

QString inWords(const core::BoatPoint& point) {
    QString words = rangeInWords(point, WithUnit::Yes);
    const bool hasUnit = point.kind == core::PointKind::Measure && !point.unit.empty();
    if (words.isEmpty())
        words = hasUnit ? ManifestText::tr("in %1").arg(text(point.unit)) : kindInWords(point.kind);
    return point.required ? words : ManifestText::tr("%1, not required").arg(words);
}

QString kindInWords(core::PointKind kind) {
    switch (kind) {
    case core::PointKind::Measure:
        return ManifestText::tr("a measure");
    case core::PointKind::Timed:
        return ManifestText::tr("timed");
    case core::PointKind::Look:
        break;
    }
    return ManifestText::tr("a look");
}

QString phaseInWords(const std::string& phase) {
    return phase == "return" ? ManifestText::tr("return") : ManifestText::tr("launch");
}

QString differenceOf(const core::AskedLine& line) {
    return differenceInWords(line);
}

QString differenceOf(const core::AskedPoint& point) {
    return differenceInWords(point);
}

QString keyOf(const core::AskedPoint& point) {
    return text(point.phase + '/' + point.point.name);
}

QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedLine& line) {
    return boatsWithOwnRow(
        boatsOf(answer), line, [](const auto& m) { return m.lines; }, isSameLine);
}

QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedPoint& point) {
    return boatsWithOwnRow(
        boatsOf(answer), point, [](const auto& m) { return m.points; }, isSamePoint);
}

std::vector<TableColumn> lineColumns(bool isOld) {
    return {{ManifestText::tr("kit")},
            {ManifestText::tr("number"), true},
            {ManifestText::tr("required")},
            {isOld ? ManifestText::tr("today") : ManifestText::tr("difference")}};
}

std::vector<TableColumn> pointColumns(bool isOld) {
    return {{ManifestText::tr("point")},
            {ManifestText::tr("check")},
            {ManifestText::tr("asked")},
            {isOld ? ManifestText::tr("today") : ManifestText::tr("difference")}};
}

std::vector<TableRow> lineRows(const ManifestAnswer& answer) {
    std::vector<TableRow> rows;
    const auto boats = boatsOf(answer);
    for (const core::AskedLine& line : answer.now.lines) {
        rows.push_back(rowOf(line, inCell(line)));
        if (line.difference == Difference::TakenAway)
            rows.back().cells[1] = rows.back().cells[2] = QStringLiteral("–");
        if (line.difference != Difference::None)
            mark(rows.back(), markOf(line.difference), markWordOf(line.difference));
        else if (!line.isOwn)
            rows.back().cells.back() = boatsDiffering(
                boats, line, [](const auto& m) { return m.lines; }, isSameLine);
    }
    return rows;
}

std::vector<TableRow> pointRows(const ManifestAnswer& answer) {
    std::vector<TableRow> rows;
    const auto boats = boatsOf(answer);
    for (const core::AskedPoint& point : answer.now.points) {
        rows.push_back(rowOf(point, inCell(point)));
        if (point.difference != Difference::None)
            mark(rows.back(), markOf(point.difference), markWordOf(point.difference));
        else if (!point.isOwn)
            rows.back().cells.back() = boatsDiffering(
                boats, point, [](const auto& m) { return m.points; }, isSamePoint);
    }
    return rows;
}

std::vector<TableRow> lineRows(const core::Manifest& then, const core::Manifest& today) {
    return oldRows(
        then.lines, today.lines, isSameLine,
        [](const core::AskedLine& each) { return each.line.quantity > 0; },
        [](const core::AskedLine& old, const core::AskedLine* now) {
            if (!now) return ManifestText::tr("not asked");
            if (core::asksTheSame(old.line, now->line)) return QString();
            return inWords(old.line) == inWords(now->line) ? ManifestText::tr("another note")
                                                           : inWords(now->line);
        });
}

std::vector<TableRow> pointRows(const core::Manifest& then, const core::Manifest& today) {
    return oldRows(
        then.points, today.points, isSamePoint, [](const core::AskedPoint&) { return true; },
        [](const core::AskedPoint& old, const core::AskedPoint* now) {
            if (!now) return ManifestText::tr("not asked");
            if (core::asksTheSame(old.point, now->point)) return QString();
            return rowOf(old, {}).cells[2] == rowOf(*now, {}).cells[2] ? ManifestText::tr("another note")
                                                                       : rowOf(*now, {}).cells[2];
        });
}

std::vector<ListRow> versionLines(const ManifestAnswer& answer) {
    std::vector<ListRow> rows;
    for (auto version = answer.versions.rbegin(); version != answer.versions.rend(); ++version) {
        const bool isNow = version == answer.versions.rbegin();
        const bool isFirst = version + 1 == answer.versions.rend();
        const QString changes = isFirst ? ManifestText::tr("The first") : changesInWords(version->changes);
        QString what = ManifestText::tr("%1, %2").arg(changes, whoMade(*version));
        if (!isAloneOnItsDay(answer.versions, *version))
            what = ManifestText::tr("%1 · %2").arg(timeInWords(version->since()), what);
        ListRow row = plainRow(text(version->stamp), isNow ? Mark::Found : Mark::NotAsked,
                               isNow ? ManifestText::tr("holds now") : ManifestText::tr("earlier"),
                               inWords(version->since().localDay()), what);
        row.aside = isNow ? ManifestText::tr("now") : QString();
        row.isPressable = true;
        rows.push_back(row);
    }
    return rows;
}

QString aboutVersion(const ManifestAnswer& answer, const core::ManifestVersion& version,
                     core::CalendarDay today) {
    const auto next = std::find_if(answer.versions.begin(), answer.versions.end(),
                                   [&](const auto& each) { return each.stamp > version.stamp; });
    QString words = ManifestText::tr("Asked from %1").arg(inWords(version.since(), today));
    if (next != answer.versions.end())
        words = ManifestText::tr("%1 until %2").arg(words, inWords(next->since(), today));
    words = ManifestText::tr("%1; written %2.").arg(words, whoMade(version));
    const auto checks = answer.record.checksUnder(answer.owner, answer.versions, version);
    if (checks.empty()) return ManifestText::tr("%1 No check was signed by it.").arg(words);
    const core::ManifestCheck& last = checks.back();
    const QString signedChecks =
        counted(static_cast<int>(checks.size()), QT_TRANSLATE_N_NOOP("Words", "%n check was signed by it"),
                QT_TRANSLATE_N_NOOP("Words", "%n checks were signed by it"));
    return ManifestText::tr("%1 %2, the last of %3 at %4 by %5.")
        .arg(words, signedChecks, text(last.boat), inWords(last.at, today), text(last.by));
}

} // namespace app
