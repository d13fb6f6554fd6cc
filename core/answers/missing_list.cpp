#include "core/answers/missing_list.h"

#include <algorithm>

namespace core {
namespace {

using What = ChainLink::What;

ChainLink linkOfMiss(const MissingOnRecord& item) {
    if (!item.missedBy) return {.what = What::MarkedMissing, .day = item.item.since};
    const SignOff& missed = *item.missedBy;
    const bool counted = missed.phase == Phase::Stocktake; // a place does not come back
    return {.what = counted ? What::MarkedMissing : What::NotReturned,
            .at = missed.at,
            .where = missed.location,
            .by = {missed.by},
            .check = missed.check};
}

} // namespace

const char* nameOf(ChainLink::What what) {
    switch (what) {
    case What::Launched:
        return "launched";
    case What::Seen:
        return "seen";
    case What::Returned:
        return "returned";
    case What::NotReturned:
        return "not-returned";
    case What::MarkedMissing:
        return "marked-missing";
    }
    return "";
}

MissingItem missingItemOf(const MissingOnRecord& item) {
    MissingItem missing{item.item.name(), item.item.kitType, item.item.boat, item.item.since, {}};
    if (item.launch) {
        missing.boat = item.launch->location.name;
        missing.chain.push_back({.what = What::Launched,
                                 .at = item.launch->at,
                                 .where = item.launch->location,
                                 .by = item.launchPeople,
                                 .check = item.launch->check});
    }
    if (item.sighting)
        missing.chain.push_back({.what = What::Seen,
                                 .at = item.sighting->at,
                                 .where = item.seenAt,
                                 .by = item.seenPeople,
                                 .check = item.sighting->check});
    missing.chain.push_back(linkOfMiss(item));
    return missing;
}

std::vector<MissingItem> missingListOf(const std::vector<MissingOnRecord>& items) {
    std::vector<MissingItem> missing;
    for (const MissingOnRecord& item : items)
        missing.push_back(missingItemOf(item));
    std::ranges::stable_sort(missing, {}, &MissingItem::since); // an empty day is before every other
    return missing;
}

} // namespace core
