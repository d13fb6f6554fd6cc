#include "app/cli/json/record_json.h"

#include "app/cli/json/json_parts.h"

namespace app {
namespace {

Json photoOfSomething(const core::Photo& photo) {
    Json document = photoJson(photo);
    document["code"] = orNull(photo.item);
    document["boat"] = orNull(photo.boat);
    return document;
}

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

Json ruleDue(const core::RuleDue& due) {
    return {{"rule", due.rule.name},
            {"part", orNull(due.rule.part)},
            {"next_due", orNull(due.due)},
            {"state", nameOf(due.state)},
            {"severity", core::nameOf(due.severity)}};
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
                    {"head", evidence.head},
                    {"called_now", evidence.calledNow}});
}

std::string newKitJson(const std::vector<core::Item>& items, const std::string& sheet) {
    return written({{"items", listOf(items, itemJson)}, {"file", orNull(sheet)}});
}

std::string fitOutJson(const core::BoatFitOut& boat, const FittedOut& fitted, const std::string& sheet) {
    Json lines = Json::array();
    for (std::size_t i = 0; i < boat.lines.size(); ++i)
        lines.push_back({{"kit_type", boat.lines[i].line.kitType},
                         {"wanted", boat.lines[i].line.quantity},
                         {"there", boat.lines[i].there},
                         {"new", listOf(fitted[i], [](const core::Item& item) { return Json(item.id); })}});
    return written({{"boat", boat.boat}, {"lines", lines}, {"file", orNull(sheet)}});
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

std::string happenedJson(const core::Happened& happened, core::CalendarDay on) {
    return written({{"code", happened.item.id},
                    {"event", happened.event},
                    {"on", on.iso()},
                    {"recorded", happened.isNew},
                    {"due", listOf(happened.dues, ruleDue)}});
}

std::string withdrawnJson(const core::Item& item, const core::ServiceEntry& record) {
    return written({{"code", item.id},
                    {"rule", record.rule},
                    {"part", orNull(record.part)},
                    {"day", record.day},
                    {"state", nameOf(item.state)}});
}

std::string eventJson(const std::optional<core::HeldEvent>& held) {
    if (!held) return written({{"event", nullptr}, {"until", nullptr}, {"since", nullptr}, {"by", nullptr}});
    return written({{"event", held->event},
                    {"until", held->until.iso()},
                    {"since", held->since.iso()},
                    {"by", orNull(held->by)}});
}

std::string addedPhotoJson(const core::Photo& photo) {
    return written(photoOfSomething(photo));
}

std::string takenBackPhotosJson(const std::vector<core::Photo>& photos) {
    return written({{"taken_back", listOf(photos, photoOfSomething)}});
}

} // namespace app
