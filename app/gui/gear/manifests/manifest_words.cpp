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

template <class Asked>
QString differenceInWords(const Asked& own) {
    if (own.difference == Difference::None)
        return own.isOwn ? ManifestText::tr("own, like its class") : QString();
    const QString word = wordOf(own.difference);
    return own.ofClass ? ManifestText::tr("%1; class: %2").arg(word, inWords(*own.ofClass)) : word;
}

/// Which of the class's boats ask that thing by a row of their own.
template <class Asked>
QStringList boatsWithOwnRow(const ManifestAnswer& answer, const Asked& row,
                            std::vector<Asked> core::Manifest::*rows) {
    QStringList names;
    for (const auto& [name, manifest] : boatsOf(answer))
        for (const Asked& own : manifest.*rows)
            if (isSame(own, row) && own.isOwn && own.difference != Difference::TakenAway) names << name;
    return names;
}

} // namespace

std::vector<std::pair<QString, core::Manifest>> boatsOf(const ManifestAnswer& answer) {
    std::vector<std::pair<QString, core::Manifest>> boats;
    if (answer.owner.kind == ManifestOwner::Kind::BoatClass)
        for (const std::string& boat : answer.record.boatsOf(answer.owner.name))
            boats.emplace_back(text(boat), answer.record.now({ManifestOwner::Kind::Boat, boat}));
    return boats;
}

bool isSame(const core::AskedLine& a, const core::AskedLine& b) {
    return core::foldName(a.line.kitType) == core::foldName(b.line.kitType);
}

bool isSame(const core::AskedPoint& a, const core::AskedPoint& b) {
    return a.phase == b.phase && core::foldName(a.point.name) == core::foldName(b.point.name);
}

QString wordOf(Difference difference) {
    switch (difference) {
    case Difference::Changed:
    case Difference::Added:
        return ManifestText::tr("own");
    case Difference::TakenAway:
        return ManifestText::tr("removed");
    case Difference::None:
        break;
    }
    return {};
}

ManifestAnswer answerOf(core::ManifestRecord record, ManifestOwner owner) {
    ManifestAnswer answer;
    answer.owner = std::move(owner);
    answer.record = std::move(record);
    answer.now = answer.record.now(answer.owner);
    answer.versions = answer.record.versionsOf(answer.owner);
    answer.hasBoat =
        answer.owner.kind == ManifestOwner::Kind::Boat || !answer.record.boatsOf(answer.owner.name).empty();
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
    if (!answer.hasBoat)
        return ManifestText::tr("%1. No boat has this class: nothing is asked by it.").arg(asked);
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

QString keyOf(const core::AskedLine& line) {
    return text(line.line.kitType);
}

QString keyOf(const core::AskedPoint& point) {
    return text(point.phase + '/' + point.point.name);
}

QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedLine& line) {
    return boatsWithOwnRow(answer, line, &core::Manifest::lines);
}

QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedPoint& point) {
    return boatsWithOwnRow(answer, point, &core::Manifest::points);
}

} // namespace app
