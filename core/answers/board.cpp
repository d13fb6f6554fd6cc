#include "core/answers/board.h"

#include <algorithm>

namespace core {
namespace {

using Reason = NotReadyReason;

bool isStop(const Finding& finding) {
    return finding.severity == Severity::Stop;
}

Reason reasonOf(Reason::Kind kind, const Item& item) {
    Reason reason;
    reason.kind = kind;
    reason.item = item.name();
    reason.kitType = item.kitType;
    return reason;
}

Reason reasonOf(Reason::Kind kind, const Finding& finding) {
    Reason reason;
    reason.kind = kind;
    reason.finding = finding;
    reason.item = finding.item;
    reason.kitType = finding.kitType;
    return reason;
}

/// A place is another place than a boat, also where both have one name.
std::optional<Location> seenElsewhere(const BoatOnRecord& boat, const std::string& item) {
    const auto seen = boat.seenSince.find(item);
    if (seen == boat.seenSince.end() || seen->second == Location::boat(boat.boat)) return std::nullopt;
    return seen->second;
}

/// What did not come back may have turned up elsewhere: the boat still lacks it, but nobody need search.
Reason reasonNow(const BoatOnRecord& boat, const Finding& finding) {
    if (finding.kind == FindingKind::LogOpen && boat.logClosed.contains(finding.entry))
        return reasonOf(Reason::Kind::LogClosed, finding);
    if (finding.kind != FindingKind::NotReturned) return reasonOf(Reason::Kind::Finding, finding);
    const auto elsewhere = seenElsewhere(boat, finding.item.id);
    Reason reason = reasonOf(elsewhere ? Reason::Kind::SeenElsewhere : Reason::Kind::Finding, finding);
    reason.elsewhere = elsewhere;
    return reason;
}

std::vector<Reason> stopsOfLastCheck(const BoatOnRecord& boat) {
    std::vector<Reason> reasons;
    for (const Finding& finding : boat.last->answer.findings)
        if (isStop(finding)) reasons.push_back(reasonNow(boat, finding));
    return reasons;
}

std::optional<Reason> whyDue(const BoatCheckInput& kit, const ItemRecord& record) {
    const auto type = kit.kitTypes.find(record.item.kitType);
    if (type == kit.kitTypes.end()) return std::nullopt;
    for (const RuleDue& due : dueDatesOf(record, type->second, kit.today))
        if (due.isPassedStop()) {
            Reason reason = reasonOf(Reason::Kind::BecameDue, record.item);
            reason.finding = findingAbout(record.item, due, Severity::Stop);
            return reason;
        }
    return std::nullopt;
}

/// Why an item that came back would not go out again.
std::optional<Reason> reasonOfItem(const BoatOnRecord& boat, const ItemRecord& record) {
    const Item& item = record.item;
    if (item.state == ItemState::Missing) return reasonOf(Reason::Kind::BecameMissing, item);
    if (item.state != ItemState::Serviceable) return reasonOf(Reason::Kind::BecameUnserviceable, item);
    if (const auto elsewhere = seenElsewhere(boat, item.id)) {
        Reason reason = reasonOf(Reason::Kind::SeenElsewhere, item);
        reason.elsewhere = elsewhere;
        return reason;
    }
    return whyDue(boat.kit->asForLaunch, record);
}

/// Every stop that a launch check with those people would find today: a boat that went out short and came
/// back whole is still short, a jacket that fits nobody of the crew is none.
void addStopsOfALaunch(const KitThatCameBack& kit, std::vector<Reason>& reasons) {
    BoatCheckInput input = kit.asForLaunch;
    if (input.people.empty()) input.people = kit.launchPeople;
    input.points.clear(); // they are done at the next launch
    for (const Finding& finding : judge(input).findings) {
        const auto isTold = [&](const Reason& reason) {
            return !finding.item.id.empty() && reason.item.id == finding.item.id &&
                   reason.kind != Reason::Kind::LogOpen;
        };
        if (!isStop(finding)) continue;
        if (finding.kind == FindingKind::LogOpen)
            reasons.push_back(reasonOf(Reason::Kind::LogOpen, finding));
        else if (std::ranges::none_of(reasons, isTold))
            reasons.push_back(reasonOf(Reason::Kind::Finding, finding));
    }
}

std::vector<Reason> reasonsOfKit(const BoatOnRecord& boat) {
    const KitThatCameBack& kit = boat.kit.value();
    std::vector<Reason> reasons;
    for (const SeenItem& seen : kit.asForLaunch.seen)
        if (auto reason = reasonOfItem(boat, seen.record)) reasons.push_back(std::move(*reason));
    addStopsOfALaunch(kit, reasons);
    return reasons;
}

std::optional<Reason> whyTooOld(const BoatOnRecord& boat) {
    if (!boat.checkEveryDays) return std::nullopt;
    Reason reason;
    reason.kind = Reason::Kind::CheckTooOld;
    reason.daysAgo = boat.checkedDaysAgo;
    reason.everyDays = *boat.checkEveryDays;
    return reason.daysAgo > reason.everyDays ? std::optional(reason) : std::nullopt;
}

} // namespace

const char* nameOf(BoatCondition::Kind kind) {
    switch (kind) {
    case BoatCondition::Kind::NotReady:
        return "not-ready";
    case BoatCondition::Kind::Out:
        return "out";
    case BoatCondition::Kind::KitReady:
        return "kit-ready";
    }
    return "";
}

bool dependsOnKit(const BoatOnRecord& boat) {
    if (!boat.last || boat.last->answer.phase == Phase::Launch) return false;
    return std::ranges::none_of(boat.last->answer.findings, isStop);
}

BoatCondition conditionOf(const BoatOnRecord& boat) {
    BoatCondition condition;
    condition.boat = boat.boat;
    condition.boatClass = boat.boatClass;
    if (!boat.last) {
        condition.reasons.push_back({.kind = Reason::Kind::NeverChecked});
        return condition;
    }
    condition.since = boat.last->at;
    condition.checkedDaysAgo = boat.checkedDaysAgo;
    condition.by = boat.last->by;
    condition.urgent = boat.urgent;
    if (boat.last->answer.phase == Phase::Launch) {
        condition.kind = BoatCondition::Kind::Out;
        return condition;
    }
    condition.reasons = dependsOnKit(boat) ? reasonsOfKit(boat) : stopsOfLastCheck(boat);
    if (auto reason = whyTooOld(boat)) condition.reasons.push_back(std::move(*reason));
    if (condition.reasons.empty()) {
        condition.kind = BoatCondition::Kind::KitReady;
        condition.urgent.clear(); // whole again
    }
    return condition;
}

std::vector<BoatCondition> boardOf(const std::vector<BoatOnRecord>& boats) {
    std::vector<BoatCondition> conditions;
    for (const BoatOnRecord& boat : boats)
        conditions.push_back(conditionOf(boat));
    std::ranges::stable_sort(conditions, {}, &BoatCondition::kind);
    return conditions;
}

} // namespace core
