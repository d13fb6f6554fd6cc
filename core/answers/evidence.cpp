#include "core/answers/evidence.h"

#include "core/check/places.h"

#include <algorithm>
#include <tuple>

namespace core {
namespace {

/// When a check was signed; of one instant, what was recorded later.
auto orderOf(const SignOff& signOff) {
    return std::tie(signOff.at, signOff.stamp);
}

using AboardById = std::map<std::string, AboardItem>;

AboardById seenIn(const std::vector<Sighting>& sightings) {
    AboardById items;
    for (const Sighting& sighting : sightings) {
        AboardItem& item = items[sighting.code];
        if (!item.seenAt) item.seenAt = sighting.at;
        if (item.seenBy.empty()) item.seenBy = sighting.seenBy;
    }
    return items;
}

void addLines(const std::vector<LineAnswer>& lines, AboardById& items) {
    for (const LineAnswer& line : lines)
        for (const LineItem& seen : line.items) {
            AboardItem& item = items[seen.item.id];
            item.kitType = seen.kitType;
            item.counted = item.counted || seen.counts;
            if (seen.counts) item.inDate = true; // but for what the findings say
            item.due = seen.due;
            if (!seen.wornBy.empty()) item.wornBy = seen.wornBy;
        }
}

/// An item beyond the places of the lines that take its type would count: as with one that fills a place,
/// whatever was passed is told of it. Of what no line takes nothing is.
bool isSpareOfALine(const Finding& finding, const std::vector<LineAnswer>& lines) {
    return finding.kind == FindingKind::Extra && std::ranges::any_of(lines, [&](const LineAnswer& each) {
               return each.line.quantity > 0 && takes(each.line, finding.kitType);
           });
}

bool saysPassed(const Finding& finding) {
    const bool speaksOfDates =
        finding.kind == FindingKind::OutOfDate || finding.kind == FindingKind::ServiceOverdue;
    return speaksOfDates && finding.due && finding.due->state == DueState::Passed;
}

void addFinding(const Finding& finding, AboardItem& item) {
    if (item.kitType.empty()) item.kitType = finding.kitType;
    if (saysPassed(finding)) {
        item.inDate = false;
        if (!item.passed || finding.due->isPassedStop()) item.passed = finding.due;
    }
    if (finding.kind == FindingKind::Undated && !item.passed) {
        item.inDate = std::nullopt;
        item.isUndated = true;
    }
}

/// What that check says of one thing's dates. Of what did not count it tells the first reason alone, which
/// may be another than a date.
void addFindings(const CheckAnswer& answer, AboardById& items) {
    const auto forEach = [&](auto add) {
        for (const Finding& finding : answer.findings)
            if (const auto item = items.find(finding.item.id); item != items.end())
                add(finding, item->second);
    };
    forEach([&](const Finding& finding, AboardItem& item) {
        if (isSpareOfALine(finding, answer.lines)) item.inDate = true;
    });
    forEach(addFinding);
    for (auto& [id, item] : items)
        if (!item.counted && item.due && *item.due < answer.today) item.inDate = false;
}

/// What was seen at the launch, as that check's own answer had it.
std::vector<AboardItem> aboardOf(const LaunchOnRecord& record) {
    AboardById items = seenIn(record.sightings);
    addLines(record.launch.answer.lines, items);
    addFindings(record.launch.answer, items);
    std::vector<AboardItem> aboard;
    for (auto& [id, item] : items) {
        const auto replaced = record.replacedTags.find(id);
        item.item = {id, replaced == record.replacedTags.end() ? id : replaced->second};
        aboard.push_back(std::move(item));
    }
    std::ranges::stable_sort(aboard, {}, &AboardItem::kitType); // within a type they are by id already
    return aboard;
}

} // namespace

const SignOff* lastLaunchUntil(Instant on, const std::vector<SignOff>& signOffs) {
    const SignOff* last = nullptr;
    for (const SignOff& each : signOffs)
        if (each.phase == Phase::Launch && each.at <= on && (!last || orderOf(*last) < orderOf(each)))
            last = &each;
    return last;
}

const SignOff* firstReturnAfter(const SignOff& launch, const std::vector<SignOff>& signOffs) {
    const SignOff* first = nullptr;
    for (const SignOff& each : signOffs)
        if (each.phase == Phase::Return && orderOf(launch) < orderOf(each) &&
            (!first || orderOf(each) < orderOf(*first)))
            first = &each;
    return first;
}

Evidence evidenceOf(const std::string& boat, Instant on, const std::optional<LaunchOnRecord>& launch) {
    Evidence evidence{.boat = boat, .on = on};
    if (!launch) return evidence;
    evidence.launch = launch->launch;
    evidence.people = launch->people;
    evidence.back = launch->back;
    evidence.calledNow = launch->calledNow;
    evidence.factHash = launch->factHash;
    evidence.machine = launch->machine;
    evidence.seq = launch->seq;
    evidence.out = !launch->back || launch->back->at > on;
    if (evidence.out) evidence.aboard = aboardOf(*launch);
    return evidence;
}

} // namespace core
