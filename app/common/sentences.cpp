#include "app/common/sentences.h"

#include "app/common/words.h"
#include "scanner/file_fault.h"

#include <QCoreApplication>

#include <algorithm>
#include <utility>
#include <vector>

namespace app {
namespace {

using core::FindingKind;

QString tr(const char* text) {
    return QCoreApplication::translate("Sentences", text);
}

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

/// Places that the manifest gives to a kit type; a single place needs no number in a sentence.
int placesFor(const core::CheckAnswer& answer, const std::string& kitType) {
    const auto line =
        std::find_if(answer.lines.begin(), answer.lines.end(),
                     [&](const core::LineAnswer& each) { return each.line.kitType == kitType; });
    return line == answer.lines.end() ? 1 : line->wanted;
}

QString shortKit(const core::CheckAnswer& answer, const std::string& kitType, int quantity) {
    if (quantity > 1) return tr("%1 × %2").arg(quantity).arg(text(kitType));
    if (placesFor(answer, kitType) > 1) return tr("1 %1").arg(text(kitType));
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

/// The stops as a crew says them: the kit by name, then how many points and log entries.
QStringList whatIsShort(const core::CheckAnswer& answer) {
    std::vector<std::pair<std::string, int>> kit;
    int open = 0, outOfRange = 0, entries = 0;
    for (const core::Finding& finding : answer.findings) {
        if (finding.severity != core::Severity::Stop) continue;
        if (isShortKit(finding.kind)) addShort(kit, finding);
        open += finding.kind == FindingKind::PointOpen;
        outOfRange += finding.kind == FindingKind::PointOutOfRange;
        entries += finding.kind == FindingKind::LogOpen;
    }
    QStringList words;
    for (const auto& [kitType, quantity] : kit)
        words << shortKit(answer, kitType, quantity);
    if (open)
        words << counted(open, QT_TRANSLATE_N_NOOP("Words", "%n point open"),
                         QT_TRANSLATE_N_NOOP("Words", "%n points open"));
    if (outOfRange)
        words << counted(outOfRange, QT_TRANSLATE_N_NOOP("Words", "%n point out of range"),
                         QT_TRANSLATE_N_NOOP("Words", "%n points out of range"));
    if (entries)
        words << counted(entries, QT_TRANSLATE_N_NOOP("Words", "%n log entry open"),
                         QT_TRANSLATE_N_NOOP("Words", "%n log entries open"));
    return words;
}

QString sinceAndBy(const core::BoatCondition& boat, core::CalendarDay today) {
    QString words;
    if (boat.since) words += QLatin1Char(' ') + inWords(*boat.since, today);
    if (!boat.by.empty()) words += tr(" by %1").arg(text(boat.by));
    return words;
}

QString itemInWords(const core::NotReadyReason& reason) {
    if (reason.code.empty()) return text(reason.kitType);
    return tr("%1 %2").arg(text(reason.kitType), codeInWords(reason.code));
}

QString stateInWords(const core::DueRow& row, const QString& day) {
    switch (row.due.state) {
    case core::DueState::Passed:
        return tr("passed on %1").arg(day);
    case core::DueState::WithinTolerance:
        return tr("passed on %1, within tolerance").arg(day);
    case core::DueState::DueSoon:
        return tr("soon: %1").arg(day);
    default:
        return tr("later: %1").arg(day);
    }
}

QString faultInWords(scanner::FileFault fault) {
    switch (fault) {
    case scanner::FileFault::NotFound:
        return tr("there is no such picture, video or folder");
    case scanner::FileFault::NotReadable:
        return tr("the file may not be opened");
    case scanner::FileFault::Empty:
        return tr("it holds no picture and no video");
    case scanner::FileFault::NotAPicture:
        return tr("it is neither a picture nor a video that can be read here");
    case scanner::FileFault::Damaged:
        return tr("the picture or video is damaged");
    case scanner::FileFault::TooBig:
        break;
    }
    return tr("the picture is too big");
}

QString mendOf(scanner::FileFault fault) {
    switch (fault) {
    case scanner::FileFault::NotFound:
        return tr("look at the path");
    case scanner::FileFault::NotReadable:
        return tr("look at who may read it");
    case scanner::FileFault::Empty:
        return tr("put the pictures there first");
    case scanner::FileFault::TooBig:
        return tr("save it smaller");
    default:
        return tr("take the picture again, as JPEG or PNG");
    }
}

} // namespace

QString outcomeOf(const core::CheckAnswer& answer) {
    if (answer.outcome == core::CheckOutcome::Incomplete) {
        const QStringList words = whatIsShort(answer);
        return words.isEmpty() ? tr("Kit incomplete") : tr("Kit incomplete: %1").arg(words.join(tr(", ")));
    }
    if (answer.outcome == core::CheckOutcome::Complete) return tr("Kit complete");
    return counted(static_cast<int>(answer.findings.size()),
                   QT_TRANSLATE_N_NOOP("Words", "Kit complete, with %n remark"),
                   QT_TRANSLATE_N_NOOP("Words", "Kit complete, with %n remarks"));
}

QString conditionOf(const core::BoatCondition& boat, core::CalendarDay today) {
    switch (boat.kind) {
    case core::BoatCondition::Kind::RescueReady:
        return tr("rescue ready, checked%1").arg(sinceAndBy(boat, today));
    case core::BoatCondition::Kind::Out:
        return tr("out, launch signed%1").arg(sinceAndBy(boat, today));
    case core::BoatCondition::Kind::NotReady:
        break;
    }
    return boat.since ? tr("not ready; last check signed%1").arg(sinceAndBy(boat, today)) : tr("not ready");
}

QString reasonOf(const core::NotReadyReason& reason) {
    using Kind = core::NotReadyReason::Kind;
    switch (reason.kind) {
    case Kind::NeverChecked:
        return tr("No check of this boat has been signed yet: do a launch check.");
    case Kind::CheckOpen:
        return tr("A check was begun and not signed: go on with it.");
    case Kind::Finding:
    case Kind::LogOpen:
    case Kind::BecameDue:
        if (reason.finding) return reasonOf(*reason.finding);
        break;
    case Kind::BecameMissing:
        return tr("The %1 has been marked missing since the last check: find it, or bring another.")
            .arg(itemInWords(reason));
    case Kind::BecameUnserviceable:
        return tr("The %1 has been withdrawn since the last check: bring another.").arg(itemInWords(reason));
    case Kind::SeenElsewhere:
        return tr("The %1 has been seen at %2 since the last check: bring it back.")
            .arg(itemInWords(reason), text(reason.elsewhere));
    }
    if (reason.kind == Kind::BecameDue)
        return tr("The %1 has fallen due since the last check: see the due list.").arg(itemInWords(reason));
    if (reason.kind == Kind::LogOpen)
        return tr("A log entry is open: read it, and close it when it is mended.");
    return tr("The last check was signed with something short: do another.");
}

QString linkInWords(const core::ChainLink& link, core::CalendarDay today) {
    const QString place = text(link.where);
    QString words;
    switch (link.what) {
    case core::ChainLink::What::Launched:
        words = tr("launched on %1").arg(place);
        break;
    case core::ChainLink::What::Seen:
        words = tr("last seen: %1").arg(place);
        break;
    case core::ChainLink::What::Returned:
        words = tr("returned on %1").arg(place);
        break;
    case core::ChainLink::What::NotReturned:
        words = tr("not seen when %1 came back").arg(place);
        break;
    case core::ChainLink::What::MarkedMissing:
        words = link.where.empty() ? tr("marked missing") : tr("marked missing, home %1").arg(place);
        break;
    }
    if (!link.by.empty()) words += tr(" by %1").arg(listed(link.by));
    if (link.at) return words + tr(", %1").arg(inWords(*link.at, today));
    return link.day ? words + tr(", %1").arg(inWords(*link.day)) : words;
}

QString dueInWords(const core::DueRow& row) {
    if (row.due.state == core::DueState::Undated) return tr("undated");
    if (!row.due.due) return tr("due now");
    return stateInWords(row, inWords(*row.due.due));
}

QString nameInWords(core::Phase phase) {
    if (phase == core::Phase::Stocktake) return tr("stocktake");
    return phase == core::Phase::Launch ? tr("launch check") : tr("return check");
}

QString nameInWords(core::ItemState state) {
    switch (state) {
    case core::ItemState::Serviceable:
        return tr("serviceable");
    case core::ItemState::Unserviceable:
        return tr("unserviceable");
    case core::ItemState::Missing:
        return tr("missing");
    case core::ItemState::WrittenOff:
        break;
    }
    return tr("written off");
}

QString damagedByTag() {
    return tr("damaged: shown with the tag for damaged kit");
}

QString errorLine(const core::Error& error) {
    QString line = text(error.what);
    if (!error.where.empty()) line += QStringLiteral(" (%1)").arg(text(error.where));
    if (!error.mend.empty()) line += QStringLiteral("; ") + text(error.mend);
    return line.replace(QLatin1Char('\n'), QLatin1Char(' '));
}

core::Error fileErrorOf(const std::string& path, const scanner::FileError& error) {
    return {core::ErrorKind::BadInput, faultInWords(error.fault).toStdString(), path,
            mendOf(error.fault).toStdString()};
}

} // namespace app
