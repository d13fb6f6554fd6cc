#include "app/text/sentences.h"

#include "app/text/register_words.h"
#include "app/text/rule_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

using core::DueState;
using core::Finding;
using core::FindingKind;

struct FindingSentencesText {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

/// "the tow line K7Q2 4RMX 1P"; a finding about a line of the manifest has no code.
QString theItem(const Finding& finding) {
    if (finding.item.tag.empty()) return FindingSentencesText::tr("the %1").arg(text(finding.kitType));
    if (finding.kitType.empty())
        return FindingSentencesText::tr("the tag %1").arg(codeInWords(finding.item.tag));
    return FindingSentencesText::tr("the %1 %2").arg(text(finding.kitType), codeInWords(finding.item.tag));
}

QString sinceClause(const Finding& finding) {
    return finding.since ? FindingSentencesText::tr(" since %1").arg(inWords(*finding.since)) : QString();
}

bool isStop(const Finding& finding) {
    return finding.severity == core::Severity::Stop;
}

/// A rule that is passed is a stop or a remark for the item, whatever the item does to the line.
QString whatToDoAboutRule(const Finding& finding, const QString& remedy, const QString& other) {
    const core::RuleDue& due = *finding.due;
    if (due.state == DueState::WithinTolerance)
        return FindingSentencesText::tr("it still counts within the tolerance: %1 now").arg(remedy);
    if (due.severity == core::Severity::Remark)
        return FindingSentencesText::tr("by the club's rule it still counts: %1").arg(remedy);
    return other;
}

QString passedSentence(const Finding& finding, const QString& fault, const QString& remedy,
                       const QString& other) {
    const core::RuleDue& due = *finding.due;
    const auto& last = due.lastGoodDay ? due.lastGoodDay : due.due;
    const QString day =
        last ? FindingSentencesText::tr(", its last good day was %1").arg(inWords(*last)) : QString();
    //: %1 the item, %2 "is out of date", %3 the rule, %4 the last good day, %5 how it is counted, %6 what to
    //: do
    return FindingSentencesText::tr("%1 %2 by %3%4 (%5); %6.")
        .arg(theItem(finding), fault, theRule(due), day, explanationOf(due),
             whatToDoAboutRule(finding, remedy, other));
}

QString outOfDate(const Finding& finding) {
    return passedSentence(finding, FindingSentencesText::tr("is out of date"),
                          FindingSentencesText::tr("plan its replacement"),
                          FindingSentencesText::tr("take it out of the boat and bring one that is in date"));
}

QString serviceOverdue(const Finding& finding) {
    return passedSentence(finding, FindingSentencesText::tr("is overdue"),
                          FindingSentencesText::tr("have it looked at and recorded"),
                          FindingSentencesText::tr("have it looked at and recorded, or bring another"));
}

QString undated(const Finding& finding) {
    const core::RuleDue& due = *finding.due;
    const QString remedy = FindingSentencesText::tr("write that day in the register");
    return FindingSentencesText::tr("%1 cannot be judged by %2: %3 is not known (%4); %5.")
        .arg(theItem(finding), theRule(due), whatItCountsFrom(due.rule.kind), explanationOf(due),
             whatToDoAboutRule(finding, remedy,
                               FindingSentencesText::tr("write that day in the register or bring another")));
}

QString dueSoon(const Finding& finding) {
    const core::RuleDue& due = *finding.due;
    const QString day = due.due ? inWords(*due.due) : FindingSentencesText::tr("soon");
    return FindingSentencesText::tr("%1 falls due on %2 by %3 (%4); plan for it.")
        .arg(theItem(finding), day, theRule(due), explanationOf(due));
}

QString missing(const Finding& finding) {
    if (!finding.item.tag.empty()) // of a stocktake: this one thing, not a line's
        return FindingSentencesText::tr("%1 was not seen here: look for it; signing marks it as missing.")
            .arg(theItem(finding));
    const QString kit = text(finding.kitType);
    QString whom;
    if (!finding.people.empty()) whom = FindingSentencesText::tr(" for %1").arg(listed(finding.people));
    if (finding.quantity == 1)
        return FindingSentencesText::tr("%1%2 not seen: find it, or bring another that counts.")
            .arg(kit, whom);
    return FindingSentencesText::tr("%1 × %2%3 not seen: find them, or bring others that count.")
        .arg(finding.quantity)
        .arg(kit, whom);
}

QString noFit(const Finding& finding) {
    const QString size =
        finding.size.empty() ? QString() : FindingSentencesText::tr(" (seen: %1)").arg(text(finding.size));
    return FindingSentencesText::tr(
               "no %1 that fits was seen for %2%3: bring a size that fits; the label and a fit test decide.")
        .arg(text(finding.kitType), listed(finding.people), size);
}

QString wrongSize(const Finding& finding) {
    return FindingSentencesText::tr(
               "%1 in size %2 fits nobody named on board by the club's table: bring a size that fits; the "
               "label and a fit "
               "test decide.")
        .arg(theItem(finding), text(finding.size));
}

QString fitNotChecked(const Finding& finding) {
    if (finding.people.empty())
        return FindingSentencesText::tr(
            "nobody is named, so no fit was checked: name the driver and the crew, or try each on.");
    return FindingSentencesText::tr(
               "the fit of what %1 wears was not checked, because a measure or a size is not known: try it "
               "on.")
        .arg(listed(finding.people));
}

QString personNotChecked(const Finding& finding) {
    if (finding.kitType.empty())
        return FindingSentencesText::tr(
            "nobody is named, so whose kit it is was not checked: name the driver and the crew.");
    return FindingSentencesText::tr(
               "nobody is named, so whose %1 it is was not checked: name the driver and the crew.")
        .arg(text(finding.kitType));
}

QString otherPerson(const Finding& finding) {
    if (finding.people.empty())
        return FindingSentencesText::tr("%1 belongs to nobody named on board: each takes their own.")
            .arg(theItem(finding));
    return FindingSentencesText::tr("%1 belongs to %2, who is not named on board: each takes their own.")
        .arg(theItem(finding), listed(finding.people));
}

QString writtenOff(const Finding& finding) {
    const QString why =
        finding.text.empty() ? QString() : FindingSentencesText::tr(" (%1)").arg(writtenOffAs(finding.text));
    return FindingSentencesText::tr("%1 is written off%2%3: take it away.")
        .arg(theItem(finding), sinceClause(finding), why);
}

QString pointOpen(const Finding& finding) {
    return FindingSentencesText::tr("the point “%1” is open: do it and record it.").arg(text(finding.text));
}

/// As many as tell its values from its limits.
int decimalsOf(const Finding& finding) {
    constexpr int usual = 3, most = 12;
    int decimals = usual;
    const auto isAlike = [&](const std::optional<double>& value, const std::optional<double>& limit) {
        return value && limit && *value != *limit &&
               numberInWords(*value, decimals) == numberInWords(*limit, decimals);
    };
    const auto isAnyAlike = [&] {
        return isAlike(finding.value, finding.low) || isAlike(finding.value, finding.high) ||
               isAlike(finding.afloat, finding.low) || isAlike(finding.afloat, finding.high);
    };
    while (decimals < most && isAnyAlike())
        ++decimals;
    return decimals;
}

QString limitsInWords(const Finding& finding) {
    const auto number = [&](double value) { return numberInWords(value, decimalsOf(finding)); };
    const QString unit = finding.unit.empty() ? QString() : QLatin1Char(' ') + text(finding.unit);
    if (finding.low && finding.high)
        return FindingSentencesText::tr("outside %1 to %2%3")
            .arg(number(*finding.low), number(*finding.high), unit);
    if (finding.low) return FindingSentencesText::tr("below %1%2").arg(number(*finding.low), unit);
    if (finding.high) return FindingSentencesText::tr("above %1%2").arg(number(*finding.high), unit);
    return FindingSentencesText::tr("out of range");
}

QString pointOutOfRange(const Finding& finding) {
    const QString unit = finding.unit.empty() ? QString() : QLatin1Char(' ') + text(finding.unit);
    const QString value = finding.value ? numberInWords(*finding.value, decimalsOf(finding)) + unit
                                        : FindingSentencesText::tr("its value");
    if (finding.afloat)
        return FindingSentencesText::tr(
                   "the point “%1”: %2 is inside the range your club entered, but about %3%4 afloat is %5 (a "
                   "first estimate); measure again on the water.")
            .arg(text(finding.text), value, numberInWords(*finding.afloat, decimalsOf(finding)), unit,
                 limitsInWords(finding));
    return FindingSentencesText::tr("the point “%1”: %2 is %3; put it right and record it again.")
        .arg(text(finding.text), value, limitsInWords(finding));
}

QString logOpen(const Finding& finding) {
    const QString about = finding.item.tag.empty()
                              ? FindingSentencesText::tr("the boat's log")
                              : FindingSentencesText::tr("the log of %1").arg(theItem(finding));
    const QString written =
        finding.since ? FindingSentencesText::tr(" of %1").arg(inWords(*finding.since)) : QString();
    return FindingSentencesText::tr("%1 has an open entry%2: “%3”; see to it and close it.")
        .arg(about, written, text(finding.text));
}

QString otherBoat(const Finding& finding) {
    return FindingSentencesText::tr("%1 belongs to %2: it counts here; put it back there afterwards.")
        .arg(theItem(finding), text(finding.boat));
}

QString notReturned(const Finding& finding) {
    return FindingSentencesText::tr(
               "%1 went out on %2 and was not seen again: look for it, and ask who launched.")
        .arg(theItem(finding), text(finding.boat));
}

QString swapped(const Finding& finding) {
    return FindingSentencesText::tr("%1 went out on %2, not on this boat: put it back there.")
        .arg(theItem(finding), text(finding.boat));
}

QString extra(const Finding& finding) {
    if (!finding.boat.empty())
        return FindingSentencesText::tr("%1 has its home at %2: bring it there, or give it its home here.")
            .arg(theItem(finding), text(finding.boat));
    if (isStop(finding))
        return FindingSentencesText::tr("%1 is more than this boat's list asks for: take it out.")
            .arg(theItem(finding));
    return FindingSentencesText::tr(
               "%1 is more than this boat's list asks for: see that it is meant to be here.")
        .arg(theItem(finding));
}

QString unserviceable(const Finding& finding) {
    return FindingSentencesText::tr("%1 is unserviceable%2: leave it ashore until it is released.")
        .arg(theItem(finding), sinceClause(finding));
}

QString wasMissing(const Finding& finding) {
    return FindingSentencesText::tr(
               "%1 was marked missing%2 and is found: tell the gear officer where it was.")
        .arg(theItem(finding), sinceClause(finding));
}

QString unknownTag(const Finding& finding) {
    return FindingSentencesText::tr(
               "%1 is not in the register, so it does not count: have the thing registered.")
        .arg(theItem(finding));
}

QString noManifest(const Finding& finding) {
    return FindingSentencesText::
        tr("nothing is asked of this boat: its class “%1” has no manifest with a required line; write one.")
            .arg(text(finding.text));
}

QString sentenceOf(const Finding& finding) {
    switch (finding.kind) {
    case FindingKind::Missing:
        return missing(finding);
    case FindingKind::NoFit:
        return noFit(finding);
    case FindingKind::OutOfDate:
        return outOfDate(finding);
    case FindingKind::Undated:
        return undated(finding);
    case FindingKind::ServiceOverdue:
        return serviceOverdue(finding);
    case FindingKind::Unserviceable:
        return unserviceable(finding);
    case FindingKind::WrittenOff:
        return writtenOff(finding);
    case FindingKind::WrongSize:
        return wrongSize(finding);
    case FindingKind::FitNotChecked:
        return fitNotChecked(finding);
    case FindingKind::PersonNotChecked:
        return personNotChecked(finding);
    case FindingKind::OtherPerson:
        return otherPerson(finding);
    case FindingKind::OtherBoat:
        return otherBoat(finding);
    case FindingKind::WasMissing:
        return wasMissing(finding);
    case FindingKind::UnknownTag:
        return unknownTag(finding);
    case FindingKind::DueSoon:
        return dueSoon(finding);
    case FindingKind::Extra:
        return extra(finding);
    case FindingKind::PointOpen:
        return pointOpen(finding);
    case FindingKind::PointOutOfRange:
        return pointOutOfRange(finding);
    case FindingKind::LogOpen:
        return logOpen(finding);
    case FindingKind::NotReturned:
        return notReturned(finding);
    case FindingKind::Swapped:
        return swapped(finding);
    case FindingKind::NoManifest:
        break;
    }
    return noManifest(finding);
}

} // namespace

QString reasonOf(const Finding& finding) {
    return withCapital(sentenceOf(finding));
}

} // namespace app
