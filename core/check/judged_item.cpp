#include "core/check/judged_item.h"

#include <algorithm>
#include <array>
#include <limits>
#include <vector>

namespace core {
namespace {

/// out-of-date before service-overdue before undated; then what has been due longest, without a day last.
auto urgencyOf(const RuleDue& due) {
    static constexpr std::array order{FindingKind::OutOfDate, FindingKind::ServiceOverdue,
                                      FindingKind::Undated};
    const auto rank = std::find(order.begin(), order.end(), findingKindOf(due));
    return std::pair(rank, due.due ? due.due->number() : std::numeric_limits<int>::max());
}

template <class Predicate>
const RuleDue* mostUrgent(const std::vector<RuleDue>& dues, Predicate predicate) {
    const RuleDue* first = nullptr;
    for (const RuleDue& due : dues)
        if (predicate(due) && (!first || urgencyOf(due) < urgencyOf(*first))) first = &due;
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
    const auto idOf = [](const JudgedItem& item) -> const std::string& { return item.item().id; };
    std::ranges::stable_sort(items, {}, idOf);
    const auto sameId = [&](const JudgedItem& a, const JudgedItem& b) { return idOf(a) == idOf(b); };
    items.erase(std::unique(items.begin(), items.end(), sameId), items.end());
    return items;
}

std::optional<Finding> whyItDoesNotCount(const JudgedItem& item) {
    const ItemState state = item.item().state;
    if (state == ItemState::WrittenOff)
        return findingAbout(item.item(), FindingKind::WrittenOff, Severity::Remark);
    if (state == ItemState::Unserviceable)
        return findingAbout(item.item(), FindingKind::Unserviceable, Severity::Remark);
    if (const RuleDue* stop = mostUrgent(item.dues, [](const RuleDue& due) { return due.isPassedStop(); }))
        return findingAbout(item.item(), *stop, Severity::Remark);
    return std::nullopt;
}

const RuleDue* firstRemark(const std::vector<RuleDue>& dues) {
    return mostUrgent(dues, [](const RuleDue& due) {
        return due.state != DueState::Later && due.state != DueState::DueSoon && !due.isPassedStop();
    });
}

std::vector<Finding> logFindings(const JudgedItem& item) {
    std::vector<Finding> findings;
    for (const LogEntry& entry : item.seen->logOpen) {
        Finding finding = findingOf(entry);
        finding.kitType = item.item().kitType;
        finding.item = item.item().name();
        finding.size = item.item().size;
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace core
