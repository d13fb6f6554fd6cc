#include "core/check/judged_item.h"

#include <algorithm>

namespace core {
namespace {

bool endsALife(RuleKind kind) {
    return kind == RuleKind::Stamped || kind == RuleKind::FromMade || kind == RuleKind::FromFirstUse ||
           kind == RuleKind::YearEndFromMade;
}

FindingKind kindOf(const RuleDue& due) {
    if (due.state == DueState::DueSoon) return FindingKind::DueSoon;
    if (due.state == DueState::Undated) return FindingKind::Undated;
    return endsALife(due.rule.kind) ? FindingKind::OutOfDate : FindingKind::ServiceOverdue;
}

/// out-of-date before service-overdue before undated; then what has been due longest, without a day last.
auto urgencyOf(const RuleDue& due) {
    const FindingKind kind = kindOf(due);
    const int rank = kind == FindingKind::OutOfDate ? 0 : kind == FindingKind::ServiceOverdue ? 1 : 2;
    return std::pair(rank, due.due ? due.due->number() : CalendarDay::fromNumber(3652059).number() + 1);
}

const RuleDue* firstStop(const std::vector<RuleDue>& dues) {
    const RuleDue* first = nullptr;
    for (const RuleDue& due : dues)
        if (due.isPassedStop() && (!first || urgencyOf(due) < urgencyOf(*first))) first = &due;
    return first;
}

} // namespace

std::optional<CalendarDay> JudgedItem::due() const {
    const RuleDue* earliest = earliestOf(dues);
    return earliest ? earliest->due : std::nullopt;
}

bool JudgedItem::isSound() const {
    const bool inState = item().state == ItemState::Serviceable || item().state == ItemState::Missing;
    return inState &&
           std::none_of(dues.begin(), dues.end(), [](const RuleDue& d) { return d.isPassedStop(); });
}

const KitType& kitTypeOf(const BoatCheckInput& input, const std::string& name) {
    static const KitType unknown;
    const auto found = input.kitTypes.find(name);
    return found == input.kitTypes.end() ? unknown : found->second;
}

std::vector<JudgedItem> judgeItems(const BoatCheckInput& input) {
    std::vector<JudgedItem> items;
    items.reserve(input.seen.size());
    for (const SeenItem& seen : input.seen) {
        const KitType& kitType = kitTypeOf(input, seen.record.item.kitType);
        items.push_back({&seen, &kitType, dueDatesOf(seen.record, kitType, input.today)});
    }
    const auto byCode = [](const JudgedItem& a, const JudgedItem& b) {
        return a.item().code < b.item().code;
    };
    const auto sameCode = [](const JudgedItem& a, const JudgedItem& b) {
        return a.item().code == b.item().code;
    };
    std::stable_sort(items.begin(), items.end(), byCode);
    items.erase(std::unique(items.begin(), items.end(), sameCode), items.end());
    return items;
}

std::optional<Finding> unsoundness(const JudgedItem& item) {
    const ItemState state = item.item().state;
    if (state == ItemState::WrittenOff) return findingAbout(item, FindingKind::WrittenOff, Severity::Remark);
    if (state == ItemState::Unserviceable)
        return findingAbout(item, FindingKind::Unserviceable, Severity::Remark);
    if (const RuleDue* stop = firstStop(item.dues)) return findingAbout(item, *stop, Severity::Remark);
    return std::nullopt;
}

Finding findingAbout(const JudgedItem& item, FindingKind kind, Severity severity) {
    Finding finding;
    finding.kind = kind;
    finding.severity = severity;
    finding.kitType = item.item().kitType;
    finding.code = item.item().code;
    finding.size = item.item().size;
    if (kind == FindingKind::WrittenOff || kind == FindingKind::Unserviceable ||
        kind == FindingKind::WasMissing) {
        finding.since = item.item().since;
        finding.text = item.item().why;
    }
    return finding;
}

Finding findingAbout(const JudgedItem& item, const RuleDue& due, Severity severity) {
    Finding finding = findingAbout(item, kindOf(due), severity);
    finding.due = due;
    if (due.state != DueState::DueSoon) finding.since = due.due ? due.due : due.anchorDay;
    return finding;
}

std::vector<Finding> logFindings(const JudgedItem& item) {
    std::vector<Finding> findings;
    for (const LogEntry& entry : item.seen->logOpen) {
        Finding finding = findingAbout(item, FindingKind::LogOpen, entry.severity);
        finding.text = entry.text;
        finding.entry = entry.entry;
        finding.since = entry.day;
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace core
