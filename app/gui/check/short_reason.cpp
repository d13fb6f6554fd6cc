#include "app/gui/check/check_row.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/check/finding.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ShortReasonText {
    Q_DECLARE_TR_FUNCTIONS(ShortReason)
};

using core::FindingKind;

QString ruleOf(const core::Finding& finding) {
    return finding.due ? ruleInWords(finding.due->rule) : QString();
}

/// The day on which it was or is due; empty when the rule has none.
QString dueDayOf(const core::Finding& finding) {
    return finding.due && finding.due->due ? inWords(*finding.due->due) : QString();
}

/// A remark may stay aboard; a thing that does not count may not.
QString whatToDo(const core::Finding& finding) {
    return finding.severity == core::Severity::Stop ? ShortReasonText::tr("Take it out, bring another.")
                                                    : ShortReasonText::tr("Have it seen to.");
}

QString overdue(const core::Finding& finding) {
    const QString day = dueDayOf(finding);
    if (day.isEmpty())
        return ShortReasonText::tr("%1 is due. %2").arg(withCapital(ruleOf(finding)), whatToDo(finding));
    return ShortReasonText::tr("%1 was due on %2. %3")
        .arg(withCapital(ruleOf(finding)), day, whatToDo(finding));
}

QString outOfDate(const core::Finding& finding) {
    const QString day = dueDayOf(finding);
    return day.isEmpty() ? ShortReasonText::tr("Out of date. %1").arg(whatToDo(finding))
                         : ShortReasonText::tr("Out of date since %1. %2").arg(day, whatToDo(finding));
}

} // namespace

QString shortReasonOf(const core::Finding& finding) {
    switch (finding.kind) {
    case FindingKind::OutOfDate:
        return outOfDate(finding);
    case FindingKind::ServiceOverdue:
        return overdue(finding);
    case FindingKind::Undated:
        return ShortReasonText::tr("No date known for %1. %2").arg(ruleOf(finding), whatToDo(finding));
    case FindingKind::DueSoon:
        return dueDayOf(finding).isEmpty()
                   ? reasonOf(finding)
                   : ShortReasonText::tr("due %1: %2").arg(dueDayOf(finding), ruleOf(finding));
    case FindingKind::Unserviceable:
        return ShortReasonText::tr("Withdrawn, not fit for use. Take it out, bring another.");
    case FindingKind::WrittenOff:
        return ShortReasonText::tr("Written off. Take it out of the boat.");
    case FindingKind::WrongSize:
        return ShortReasonText::tr("Size %1 fits nobody aboard.").arg(text(finding.size));
    case FindingKind::OtherPerson:
        return finding.people.empty()
                   ? ShortReasonText::tr("Not for anyone aboard.")
                   : ShortReasonText::tr("Belongs to %1, who is not aboard.").arg(listed(finding.people));
    case FindingKind::OtherBoat:
        return ShortReasonText::tr("From %1. It counts here; bring it back after.").arg(text(finding.boat));
    case FindingKind::WasMissing:
        return ShortReasonText::tr("Was missing, and is found.");
    case FindingKind::Extra:
        return ShortReasonText::tr("More than this boat's list asks for.");
    case FindingKind::Swapped:
        return ShortReasonText::tr("Went out on %1.").arg(text(finding.boat));
    case FindingKind::UnknownTag:
        return ShortReasonText::tr("Not in the register. It does not count.");
    case FindingKind::LogOpen:
        return ShortReasonText::tr("Log: %1").arg(text(finding.text));
    default:
        return reasonOf(finding);
    }
}

} // namespace app
