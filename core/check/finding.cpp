#include "core/check/finding.h"

namespace core {

Finding findingAbout(const Item& item, FindingKind kind, Severity severity) {
    Finding finding;
    finding.kind = kind;
    finding.severity = severity;
    finding.kitType = item.kitType;
    finding.item = item.name();
    finding.size = item.size;
    if (kind == FindingKind::WrittenOff || kind == FindingKind::Unserviceable ||
        kind == FindingKind::WasMissing) {
        finding.since = item.since;
        finding.text = item.why;
    }
    return finding;
}

Finding findingAbout(const Item& item, const RuleDue& due, Severity severity) {
    Finding finding = findingAbout(item, findingKindOf(due), severity);
    finding.due = due;
    if (due.state != DueState::DueSoon) finding.since = due.due ? due.due : due.anchorDay;
    return finding;
}

FindingKind findingKindOf(const RuleDue& due) {
    if (due.state == DueState::DueSoon) return FindingKind::DueSoon;
    if (due.state == DueState::Undated) return FindingKind::Undated;
    return endsLife(due.rule.kind) ? FindingKind::OutOfDate : FindingKind::ServiceOverdue;
}

Finding findingOf(const LogEntry& entry) {
    Finding finding;
    finding.kind = FindingKind::LogOpen;
    finding.severity = entry.severity;
    finding.item = entry.item;
    finding.boat = entry.boat;
    finding.text = entry.text;
    finding.entry = entry.id;
    finding.since = entry.day;
    return finding;
}

} // namespace core
