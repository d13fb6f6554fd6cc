#include "core/upkeep/anchor.h"

#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {
namespace {

/// What is needed of an item or of a part in it.
struct OwnDays {
    const std::optional<PartialDay>& made;
    const std::optional<PartialDay>& firstUse;
    const std::optional<PartialDay>& stamped;
};

OwnDays ownDaysOf(const ItemRecord& record, const Part* part) {
    if (part) return {part->made, part->firstUse, part->stamped};
    return {record.item.made, record.item.firstUse, record.item.stamped};
}

std::optional<AnchorDay> firstDayOf(Anchor anchor, const std::optional<PartialDay>& day) {
    return day ? std::optional(AnchorDay{anchor, day->firstDay()}) : std::nullopt;
}

/// Where a rule starts that has never been recorded.
std::optional<AnchorDay> beginningOf(const OwnDays& own, const Item& item) {
    if (own.firstUse) return firstDayOf(Anchor::FirstUse, own.firstUse);
    if (own.made) return firstDayOf(Anchor::Made, own.made);
    return firstDayOf(Anchor::Registered, item.registered);
}

bool isPassedRecordOf(const LifeRule& rule, const ServiceRecord& record) {
    return record.passed && sameName(record.rule, rule.name) && sameName(record.part, rule.part);
}

bool settles(const ServiceRecord& record, const Happening& event) {
    // With days alone nobody knows which came first on the same day, so the event stays open.
    if (record.at && event.at) return *record.at > *event.at;
    return record.day > event.day;
}

bool isLater(const Happening& a, const Happening& b) {
    return a.day != b.day ? a.day > b.day : a.at > b.at;
}

} // namespace

const Part* partOf(const ItemRecord& record, const LifeRule& rule) {
    const auto found = std::find_if(record.parts.begin(), record.parts.end(),
                                    [&](const Part& p) { return sameName(p.name, rule.part); });
    return found == record.parts.end() ? nullptr : &*found;
}

std::optional<AnchorDay> anchorOf(const LifeRule& rule, const ItemRecord& record, const Part* part) {
    const OwnDays own = ownDaysOf(record, part);
    switch (rule.kind) {
    case RuleKind::Stamped:
        if (!own.stamped) return std::nullopt;
        return AnchorDay{Anchor::Stamped, own.stamped->lastDay()};
    case RuleKind::FromMade:
    case RuleKind::YearEndFromMade:
        return firstDayOf(Anchor::Made, own.made);
    case RuleKind::FromFirstUse:
        return firstDayOf(Anchor::FirstUse, own.firstUse);
    default:
        if (const ServiceRecord* last = lastRecordOf(rule, record))
            return AnchorDay{Anchor::Service, last->day};
        return beginningOf(own, record.item);
    }
}

const ServiceRecord* lastRecordOf(const LifeRule& rule, const ItemRecord& record) {
    const ServiceRecord* last = nullptr;
    for (const ServiceRecord& service : record.services)
        if (isPassedRecordOf(rule, service) && (!last || service.day > last->day)) last = &service;
    return last;
}

const Happening* openEventOf(const LifeRule& rule, const ItemRecord& record) {
    const Happening* latest = nullptr;
    for (const Happening& event : record.happenings) {
        const auto isSettledBy = [&](const ServiceRecord& service) {
            return isPassedRecordOf(rule, service) && settles(service, event);
        };
        if (sameName(event.event, rule.event) && (!latest || isLater(event, *latest)) &&
            std::none_of(record.services.begin(), record.services.end(), isSettledBy))
            latest = &event;
    }
    return latest;
}

} // namespace core
