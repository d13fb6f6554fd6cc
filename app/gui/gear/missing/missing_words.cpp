#include "app/gui/gear/missing/missing_words.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct MissingWordsText {
    Q_DECLARE_TR_FUNCTIONS(MissingList)
};

using What = core::ChainLink::What;

const core::ChainLink* linkOf(const core::MissingItem& item, What what) {
    const auto found = std::find_if(item.chain.begin(), item.chain.end(),
                                    [&](const core::ChainLink& link) { return link.what == what; });
    return found == item.chain.end() ? nullptr : &*found;
}

bool areAmong(const std::vector<std::string>& some, const std::vector<std::string>& all) {
    return std::all_of(some.begin(), some.end(), [&](const std::string& name) {
        return std::find(all.begin(), all.end(), name) != all.end();
    });
}

QString howLong(const core::MissingItem& item, core::CalendarDay today) {
    if (!item.since) return MissingWordsText::tr("nobody knows since when");
    const int days = core::daysBetween(*item.since, today);
    if (days <= 0) return MissingWordsText::tr("since today");
    return MissingWordsText::tr("since %1, %2")
        .arg(inWords(*item.since),
             counted(days, QT_TRANSLATE_N_NOOP("Words", "%n day"), QT_TRANSLATE_N_NOOP("Words", "%n days")));
}

QString lostFrom(const core::MissingItem& item) {
    if (const core::ChainLink* seen = linkOf(item, What::Seen); seen && seen->where)
        return MissingWordsText::tr("last seen: %1").arg(text(seen->where->name));
    return item.boat.empty() ? MissingWordsText::tr("no check has seen it")
                             : MissingWordsText::tr("of %1").arg(text(item.boat));
}

Mark markOf(const core::ChainLink& link) {
    if (link.what == What::Seen || link.what == What::Returned) return Mark::Found;
    return link.what == What::Launched ? Mark::NotAsked : Mark::Look;
}

} // namespace

QString summaryOf(const std::vector<core::MissingItem>& missing) {
    if (missing.empty()) return MissingWordsText::tr("Nothing is missing.");
    const QString count =
        counted(static_cast<int>(missing.size()), QT_TRANSLATE_N_NOOP("Words", "%n item missing"),
                QT_TRANSLATE_N_NOOP("Words", "%n items missing"));
    const core::MissingItem& longest = missing.front();
    if (!longest.since) return MissingWordsText::tr("%1.").arg(count);
    return MissingWordsText::tr("%1. The longest: %2, since %3.")
        .arg(count, text(longest.kitType), inWords(*longest.since));
}

std::vector<ListRow> linesOf(const std::vector<core::MissingItem>& missing, core::CalendarDay today) {
    std::vector<ListRow> rows;
    for (const core::MissingItem& item : missing)
        rows.push_back(plainRow(
            text(item.item.id), Mark::StillToFind, MissingWordsText::tr("missing"), text(item.kitType),
            MissingWordsText::tr("%1 · %2").arg(howLong(item, today), lostFrom(item)), item.item));
    return rows;
}

std::vector<ListRow> chainOf(const core::MissingItem& item, core::CalendarDay today) {
    std::vector<ListRow> rows;
    for (const core::ChainLink& link : item.chain)
        rows.push_back(plainRow(QStringLiteral("link %1").arg(rows.size()), markOf(link), {},
                                withCapital(linkInWords(link, today))));
    return rows;
}

QStringList nextStepsOf(const core::MissingItem& item) {
    QStringList steps;
    const core::ChainLink* launched = linkOf(item, What::Launched);
    const core::ChainLink* seen = linkOf(item, What::Seen);
    const core::ChainLink* missed = linkOf(item, What::NotReturned);
    if (launched && !launched->by.empty())
        steps << MissingWordsText::tr("Ask %1, who took it out on %2.")
                     .arg(listed(launched->by),
                          text(launched->where ? launched->where->name : std::string()));
    if (missed && !missed->by.empty() && !(launched && areAmong(missed->by, launched->by)))
        steps << MissingWordsText::tr("Ask %1, who signed the check that did not see it.")
                     .arg(listed(missed->by));
    if (seen && seen->where)
        steps << MissingWordsText::tr("Look at %1, where it was seen last.").arg(text(seen->where->name));
    if (!item.boat.empty() && (!seen || seen->where != core::Location::boat(item.boat)))
        steps << MissingWordsText::tr("Look through %1 and what is stowed with it.").arg(text(item.boat));
    if (steps.isEmpty())
        steps << MissingWordsText::tr("No check has seen it: look through every boat and shelf.");
    return steps;
}

} // namespace app
