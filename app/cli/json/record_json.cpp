#include "app/cli/json/record_json.h"

#include "app/cli/json/json_parts.h"

namespace app {
namespace {

Json recorded(const core::ServiceRound::Recorded& each) {
    return {{"code", each.item.id},
            {"kit_type", each.kitType},
            {"part", orNull(each.part)},
            {"next_due", orNull(each.nextDue)},
            {"released", each.released}};
}

Json refused(const core::ServiceRound::Refused& each) {
    return {{"code", each.item.id}, {"kit_type", orNull(each.kitType)}, {"why", core::nameOf(each.why)}};
}

Json boatTally(const core::BoatTally& boat) {
    return {{"boat", boat.boat},
            {"launched_at", orNull(boat.launchedAt)},
            {"launched_by", boat.launchedBy},
            {"returned_at", orNull(boat.returnedAt)},
            {"returned_by", boat.returnedBy},
            {"out", idsOf(boat.out)},
            {"back", idsOf(boat.back)},
            {"not_returned", idsOf(boat.notReturned)}};
}

Json swap(const core::Swap& each) {
    return {{"code", each.item.id},
            {"kit_type", each.kitType},
            {"went_out_on", each.wentOutOn},
            {"came_back_on", each.cameBackOn},
            {"against", orNull(each.against.id)}};
}

Json aboardItem(const core::AboardItem& item) {
    return {{"code", item.item.id},
            {"tag", item.item.tag},
            {"kit_type", orNull(item.kitType)},
            {"counted", item.counted},
            {"due", orNull(item.due)},
            {"in_date", item.inDate ? Json(*item.inDate) : Json()},
            {"passed_rule", item.passed ? Json(item.passed->rule.name) : Json()},
            {"passed_part", item.passed ? orNull(item.passed->rule.part) : Json()},
            {"worn_by", orNull(item.wornBy)},
            {"seen_at", orNull(item.seenAt)},
            {"seen_by", orNull(item.seenBy)}};
}

Json signedCheck(const std::optional<core::SignedCheck>& check) {
    if (!check) return {};
    return {{"check", check->check},
            {"at", check->at.iso()},
            {"signed_by", check->by},
            {"outcome", core::nameOf(check->answer.outcome)},
            {"urgent", orNull(check->urgent)}};
}

Json itemJson(const core::Item& item) {
    const auto text = [](const std::optional<core::PartialDay>& day) {
        return day ? Json(day->text()) : Json();
    };
    return {{"code", item.id},
            {"kit_type", item.kitType},
            {"size", orNull(item.size)},
            {"boat", orNull(item.boat)},
            {"place", orNull(item.place)},
            {"person", orNull(item.person)},
            {"state", nameOf(item.state)},
            {"made", text(item.made)},
            {"stamped", text(item.stamped)},
            {"gtin", orNull(item.gtin)},
            {"serial", orNull(item.serial)},
            {"batch", orNull(item.batch)}};
}

} // namespace

std::string serviceJson(const core::ServiceOrder& order, const core::ServiceRound& round) {
    return written({{"rule", order.rule},
                    {"day", order.day.iso()},
                    {"by", order.by},
                    {"passed", order.passed},
                    {"recorded", listOf(round.recorded, recorded)},
                    {"refused", listOf(round.refused, refused)},
                    {"unread", round.unread}});
}

std::string tallyJson(const core::EventTally& tally) {
    Json document = Json::parse(missingJson(tally.missing));
    document["event"] = tally.event;
    document["boats"] = listOf(tally.boats, boatTally);
    document["swaps"] = listOf(tally.swaps, swap);
    return written(document);
}

std::string evidenceJson(const core::Evidence& evidence) {
    return written({{"boat", evidence.boat},
                    {"on", evidence.on.iso()},
                    {"out", evidence.out},
                    {"launch", signedCheck(evidence.launch)},
                    {"people", evidence.people},
                    {"aboard", listOf(evidence.aboard, aboardItem)},
                    {"return", signedCheck(evidence.back)},
                    {"fact", orNull(evidence.factHash)},
                    {"device", orNull(evidence.machine)},
                    {"seq", evidence.seq > 0 ? Json(evidence.seq) : Json()},
                    {"head", evidence.head}});
}

std::string newKitJson(const std::vector<core::Item>& items, const std::string& sheet) {
    return written({{"items", listOf(items, itemJson)}, {"file", orNull(sheet)}});
}

std::string newTagJson(const std::string& tag, const std::string& name, const std::string& sheet) {
    const char* kind = tag.starts_with('B')   ? "boat"
                       : tag.starts_with('P') ? "person"
                       : tag.starts_with('S') ? "place"
                                              : "code";
    return written({{kind, name}, {"tag", tag}, {"file", orNull(sheet)}});
}

std::string stateJson(const core::Item& item) {
    return written(itemJson(item));
}

} // namespace app
