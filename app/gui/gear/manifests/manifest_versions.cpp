#include "app/gui/gear/manifests/manifest_versions.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct ManifestVersionsText {
    Q_DECLARE_TR_FUNCTIONS(Manifests)
};

constexpr std::size_t changesNamed = 3;

template <class Value>
QString changedInWords(const QString& what, const std::optional<Value>& before,
                       const std::optional<Value>& after) {
    if (!before) return ManifestVersionsText::tr("%1 added: %2").arg(what, inWords(*after));
    if (!after) return ManifestVersionsText::tr("%1 removed").arg(what);
    const QString now = inWords(*after);
    const QString then = inWords(*before);
    if (now == then) return ManifestVersionsText::tr("%1: another note").arg(what);
    return ManifestVersionsText::tr("%1: %2 instead of %3").arg(what, now, then);
}

QString changeInWords(const core::ManifestChange& change) {
    if (change.phase.empty()) {
        const auto& line = change.lineAfter ? change.lineAfter : change.lineBefore;
        return changedInWords(text(line->kitType), change.lineBefore, change.lineAfter);
    }
    const auto& point = change.pointAfter ? change.pointAfter : change.pointBefore;
    return changedInWords(
        ManifestVersionsText::tr("%1 (%2)").arg(text(point->name), phaseInWords(change.phase)),
        change.pointBefore, change.pointAfter);
}

/// The first three changes in words, and how many more there are.
QString changesInWords(const std::vector<core::ManifestChange>& changes) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(changes.size(), changesNamed); ++i)
        words << changeInWords(changes[i]);
    if (changes.size() > changesNamed)
        words << ManifestVersionsText::tr("and %1 more").arg(changes.size() - changesNamed);
    return withCapital(words.join(ManifestVersionsText::tr("; ")));
}

QString whoMade(const core::ManifestVersion& version) {
    if (!version.by.empty()) return ManifestVersionsText::tr("by %1").arg(text(version.by));
    // Only what is done in the program says when; an import's facts name neither a person nor a folder.
    return version.at ? ManifestVersionsText::tr("by nobody named")
                      : ManifestVersionsText::tr("by an import of sheets");
}

bool isAloneOnItsDay(const std::vector<core::ManifestVersion>& versions,
                     const core::ManifestVersion& version) {
    const core::CalendarDay day = version.since().localDay();
    return std::count_if(versions.begin(), versions.end(),
                         [&](const auto& each) { return each.since().localDay() == day; }) == 1;
}

} // namespace

std::vector<ListRow> versionLines(const ManifestAnswer& answer) {
    std::vector<ListRow> rows;
    for (auto version = answer.versions.rbegin(); version != answer.versions.rend(); ++version) {
        const bool isNow = version == answer.versions.rbegin();
        const bool isFirst = version + 1 == answer.versions.rend();
        const QString changes =
            isFirst ? ManifestVersionsText::tr("The first") : changesInWords(version->changes);
        QString what = ManifestVersionsText::tr("%1, %2").arg(changes, whoMade(*version));
        if (!isAloneOnItsDay(answer.versions, *version))
            what = ManifestVersionsText::tr("%1 · %2").arg(timeInWords(version->since()), what);
        ListRow row =
            plainRow(text(version->stamp), isNow ? Mark::Found : Mark::NotAsked,
                     isNow ? ManifestVersionsText::tr("holds now") : ManifestVersionsText::tr("earlier"),
                     inWords(version->since().localDay()), what);
        row.aside = isNow ? ManifestVersionsText::tr("now") : QString();
        row.isPressable = true;
        rows.push_back(row);
    }
    return rows;
}

QString aboutVersion(const ManifestAnswer& answer, const core::ManifestVersion& version,
                     core::CalendarDay today) {
    const auto next = std::find_if(answer.versions.begin(), answer.versions.end(),
                                   [&](const auto& each) { return each.stamp > version.stamp; });
    QString words = ManifestVersionsText::tr("Asked from %1").arg(inWords(version.since(), today));
    if (next != answer.versions.end())
        words = ManifestVersionsText::tr("%1 until %2").arg(words, inWords(next->since(), today));
    words = ManifestVersionsText::tr("%1; written %2.").arg(words, whoMade(version));
    const auto checks = answer.record.checksUnder(answer.owner, answer.versions, version);
    if (checks.empty()) return ManifestVersionsText::tr("%1 No check was signed by it.").arg(words);
    const core::ManifestCheck& last = checks.back();
    const QString signedChecks =
        counted(static_cast<int>(checks.size()), QT_TRANSLATE_N_NOOP("Words", "%n check was signed by it"),
                QT_TRANSLATE_N_NOOP("Words", "%n checks were signed by it"));
    return ManifestVersionsText::tr("%1 %2, the last of %3 at %4 by %5.")
        .arg(words, signedChecks, text(last.boat), inWords(last.at, today), text(last.by));
}

} // namespace app
