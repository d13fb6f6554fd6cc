#include "app/text/sentences.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "scanner/files/file_fault.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>
#include <vector>

namespace app {
namespace {

using core::FindingKind;

struct SentencesText {
    Q_DECLARE_TR_FUNCTIONS(Sentences)
};

/// Places that the manifest gives to a kit type; a single place needs no number in a sentence.
int placesFor(const core::CheckAnswer& answer, const std::string& kitType) {
    const auto line =
        std::find_if(answer.lines.begin(), answer.lines.end(),
                     [&](const core::LineAnswer& each) { return each.line.kitType == kitType; });
    return line == answer.lines.end() ? 1 : line->wanted;
}

QString shortKit(const core::CheckAnswer& answer, const std::string& kitType, int quantity) {
    if (quantity > 1) return SentencesText::tr("%1 × %2").arg(quantity).arg(text(kitType));
    if (placesFor(answer, kitType) > 1) return SentencesText::tr("1 × %1").arg(text(kitType));
    return text(kitType);
}

bool isShortKit(FindingKind kind) {
    return kind == FindingKind::Missing || kind == FindingKind::NoFit || kind == FindingKind::NotReturned;
}

/// Things of one type are said once, with their number.
void addShort(std::vector<std::pair<std::string, int>>& kit, const core::Finding& finding) {
    const auto same =
        std::find_if(kit.begin(), kit.end(), [&](const auto& each) { return each.first == finding.kitType; });
    if (same == kit.end())
        kit.emplace_back(finding.kitType, finding.quantity);
    else
        same->second += finding.quantity;
}

/// The stops as a crew says them: the kit by name, and how many points and log entries.
struct Stops {
    QStringList kit;
    QStringList others;
};

Stops whatIsShort(const core::CheckAnswer& answer) {
    std::vector<std::pair<std::string, int>> kit;
    int open = 0, outOfRange = 0, entries = 0;
    for (const core::Finding& finding : answer.findings) {
        if (finding.severity != core::Severity::Stop) continue;
        if (isShortKit(finding.kind)) addShort(kit, finding);
        open += finding.kind == FindingKind::PointOpen;
        outOfRange += finding.kind == FindingKind::PointOutOfRange;
        entries += finding.kind == FindingKind::LogOpen;
    }
    Stops stops;
    for (const auto& [kitType, quantity] : kit)
        stops.kit << shortKit(answer, kitType, quantity);
    if (open)
        stops.others << counted(open, QT_TRANSLATE_N_NOOP("Words", "%n point open"),
                                QT_TRANSLATE_N_NOOP("Words", "%n points open"));
    if (outOfRange)
        stops.others << counted(outOfRange, QT_TRANSLATE_N_NOOP("Words", "%n point out of range"),
                                QT_TRANSLATE_N_NOOP("Words", "%n points out of range"));
    if (entries)
        stops.others << counted(entries, QT_TRANSLATE_N_NOOP("Words", "%n log entry open"),
                                QT_TRANSLATE_N_NOOP("Words", "%n log entries open"));
    return stops;
}

QString kitOutcome(const Stops& stops) {
    const QStringList words = stops.kit + stops.others;
    return words.isEmpty() ? SentencesText::tr("Kit incomplete")
                           : SentencesText::tr("Kit incomplete: %1").arg(words.join(SentencesText::tr(", ")));
}

/// Nothing went out by the record: a return that was begun without a launch check.
bool isOfNoLaunch(const core::CheckAnswer& answer) {
    return answer.phase == core::Phase::Return && answer.lines.empty();
}

/// After a trip the question is what came back, and what is left to do.
QString returnOutcome(const core::CheckAnswer& answer) {
    const Stops stops = whatIsShort(answer);
    const QString others = stops.others.join(SentencesText::tr(", "));
    if (stops.kit.isEmpty())
        return others.isEmpty()
                   ? SentencesText::tr("Return check not done")
                   : (isOfNoLaunch(answer) ? SentencesText::tr("No launch of it is recorded; still to do: %1")
                                           : SentencesText::tr("Everything is back; still to do: %1"))
                         .arg(others);
    const QString notBack = SentencesText::tr("Not back: %1").arg(stops.kit.join(SentencesText::tr(", ")));
    return others.isEmpty() ? notBack : SentencesText::tr("%1; %2").arg(notBack, others);
}

QString sinceAndBy(const core::BoatCondition& boat, core::CalendarDay today) {
    QString words;
    if (boat.since) words += QLatin1Char(' ') + inWords(*boat.since, today);
    if (!boat.by.empty()) words += SentencesText::tr(" by %1").arg(text(boat.by));
    if (boat.checkedDaysAgo > 1) words += SentencesText::tr(", %1").arg(daysAgoInWords(boat.checkedDaysAgo));
    return words;
}

QString itemInWords(const core::NotReadyReason& reason) {
    if (reason.item.tag.empty()) return text(reason.kitType);
    return SentencesText::tr("%1 %2").arg(text(reason.kitType), codeInWords(reason.item.tag));
}

QString overdueInWords(const core::RuleDue& due, core::CalendarDay today) {
    const core::CalendarDay last = due.lastGoodDay.value_or(*due.due);
    const QString days = counted(core::daysBetween(last, today), QT_TRANSLATE_N_NOOP("Words", "%n day"),
                                 QT_TRANSLATE_N_NOOP("Words", "%n days"));
    if (due.state == core::DueState::WithinTolerance)
        return SentencesText::tr("was due by %1: overdue %2, within the tolerance").arg(inWords(last), days);
    return SentencesText::tr("was due by %1: overdue %2").arg(inWords(last), days);
}

core::ErrorCode codeOf(scanner::FileFault fault) {
    switch (fault) {
    case scanner::FileFault::NotFound:
        return core::ErrorCode::NoSuchPicture;
    case scanner::FileFault::NotReadable:
        return core::ErrorCode::PictureUnreadable;
    case scanner::FileFault::Empty:
        return core::ErrorCode::NoPictureInFolder;
    case scanner::FileFault::NotAPicture:
        return core::ErrorCode::NotAPicture;
    case scanner::FileFault::Damaged:
        return core::ErrorCode::PictureDamaged;
    case scanner::FileFault::TooBig:
        break;
    }
    return core::ErrorCode::PictureTooBig;
}

} // namespace

QString outcomeOf(const core::CheckAnswer& answer) {
    const bool isReturn = answer.phase == core::Phase::Return;
    if (isOfNoLaunch(answer) && answer.outcome != core::CheckOutcome::Incomplete)
        return SentencesText::tr("No launch of it is recorded, so nothing is missed");
    const int remarks = static_cast<int>(answer.findings.size());
    switch (answer.outcome) {
    case core::CheckOutcome::Incomplete:
        return isReturn ? returnOutcome(answer) : kitOutcome(whatIsShort(answer));
    case core::CheckOutcome::Complete:
        return isReturn ? SentencesText::tr("Everything is back") : SentencesText::tr("Kit complete");
    case core::CheckOutcome::CompleteWithRemarks:
        break;
    }
    if (isReturn)
        return counted(remarks, QT_TRANSLATE_N_NOOP("Words", "Everything is back, with %n remark"),
                       QT_TRANSLATE_N_NOOP("Words", "Everything is back, with %n remarks"));
    return counted(remarks, QT_TRANSLATE_N_NOOP("Words", "Kit complete, with %n remark"),
                   QT_TRANSLATE_N_NOOP("Words", "Kit complete, with %n remarks"));
}

QString conditionOf(const core::BoatCondition& boat, core::CalendarDay today) {
    switch (boat.kind) {
    case core::BoatCondition::Kind::KitReady:
        return SentencesText::tr("kit ready, checked%1").arg(sinceAndBy(boat, today));
    case core::BoatCondition::Kind::Out:
        return SentencesText::tr("out, launch signed%1").arg(sinceAndBy(boat, today));
    case core::BoatCondition::Kind::NotReady:
        break;
    }
    return boat.since ? SentencesText::tr("not ready; last check signed%1").arg(sinceAndBy(boat, today))
                      : SentencesText::tr("not ready");
}

QString reasonOf(const core::NotReadyReason& reason) {
    using Kind = core::NotReadyReason::Kind;
    switch (reason.kind) {
    case Kind::NeverChecked:
        return SentencesText::tr("No check of this boat has been signed yet: do a launch check.");
    case Kind::CheckOpen:
        return SentencesText::tr("A check was begun and not signed: go on with it.");
    case Kind::Finding:
    case Kind::LogOpen:
    case Kind::BecameDue:
        if (reason.finding) return reasonOf(*reason.finding);
        break;
    case Kind::LogClosed:
        return SentencesText::tr(
                   "The last check found an open log entry%1, which has been closed since: do a "
                   "check.")
            .arg(reason.finding ? SentencesText::tr(" (“%1”)").arg(text(reason.finding->text)) : QString());
    case Kind::CheckTooOld:
        return SentencesText::tr("Last checked %1; this club checks it every %2: do a check.")
            .arg(daysAgoInWords(reason.daysAgo),
                 counted(reason.everyDays, QT_TRANSLATE_N_NOOP("Words", "%n day"),
                         QT_TRANSLATE_N_NOOP("Words", "%n days")));
    case Kind::BecameMissing:
        return SentencesText::tr(
                   "The %1 has been marked missing since the last check: find it, or bring another.")
            .arg(itemInWords(reason));
    case Kind::BecameUnserviceable:
        return SentencesText::tr("The %1 has been withdrawn since the last check: bring another.")
            .arg(itemInWords(reason));
    case Kind::SeenElsewhere:
        return SentencesText::tr("The %1 has been seen at %2 since the last check: bring it back.")
            .arg(itemInWords(reason), text(reason.elsewhere ? reason.elsewhere->name : std::string()));
    }
    if (reason.kind == Kind::BecameDue)
        return SentencesText::tr("The %1 has fallen due since the last check: see the due list.")
            .arg(itemInWords(reason));
    if (reason.kind == Kind::LogOpen)
        return SentencesText::tr("A log entry is open: read it, and close it when it is mended.");
    return SentencesText::tr("The last check was signed with kit incomplete: do another.");
}

QString linkInWords(const core::ChainLink& link, core::CalendarDay today) {
    const QString place = link.where ? text(link.where->name) : QString();
    QString words;
    switch (link.what) {
    case core::ChainLink::What::Launched:
        words = SentencesText::tr("launched on %1").arg(place);
        break;
    case core::ChainLink::What::Seen:
        words = SentencesText::tr("last seen: %1").arg(place);
        break;
    case core::ChainLink::What::Returned:
        words = SentencesText::tr("returned on %1").arg(place);
        break;
    case core::ChainLink::What::NotReturned:
        words = SentencesText::tr("not seen when %1 came back").arg(place);
        break;
    case core::ChainLink::What::MarkedMissing:
        words = !link.where ? SentencesText::tr("marked missing")
                            : SentencesText::tr("marked missing, home %1").arg(place);
        break;
    }
    if (!link.by.empty()) words += SentencesText::tr(" by %1").arg(listed(link.by));
    if (link.at) return words + SentencesText::tr(", %1").arg(inWords(*link.at, today));
    return link.day ? words + SentencesText::tr(", %1").arg(inWords(*link.day)) : words;
}

QString dueInWords(const core::RuleDue& due, core::CalendarDay today) {
    if (due.state == core::DueState::Undated) return SentencesText::tr("undated");
    if (!due.due) return SentencesText::tr("due now");
    const QString day = inWords(*due.due);
    if (due.state == core::DueState::DueSoon) return SentencesText::tr("due soon, on %1").arg(day);
    if (due.state == core::DueState::Later) return SentencesText::tr("due on %1").arg(day);
    return overdueInWords(due, today);
}

QString nameInWords(core::Phase phase) {
    if (phase == core::Phase::Stocktake) return SentencesText::tr("stocktake");
    return phase == core::Phase::Launch ? SentencesText::tr("launch check")
                                        : SentencesText::tr("return check");
}

QString nameInWords(core::ItemState state) {
    switch (state) {
    case core::ItemState::Serviceable:
        return SentencesText::tr("serviceable");
    case core::ItemState::Unserviceable:
        return SentencesText::tr("unserviceable");
    case core::ItemState::Missing:
        return SentencesText::tr("missing");
    case core::ItemState::WrittenOff:
        break;
    }
    return SentencesText::tr("written off");
}

QString damagedByTag() {
    return SentencesText::tr("damaged: shown with the tag for damaged kit");
}

core::Error errorOfAlike(const std::string& typed, const std::vector<std::string>& alike) {
    return {core::ErrorCode::TagLikeOthers, {typed, listed(alike).toStdString()}};
}

core::Error fileErrorOf(const std::string& path, const scanner::FileError& error) {
    return {codeOf(error.fault), {}, path};
}

} // namespace app
