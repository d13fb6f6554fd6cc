#include "core/hub/board_text.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace core {
namespace {

using Json = nlohmann::json;
using Kind = BoatCondition::Kind;

Json jsonOfBoat(const PublishedBoat& boat) {
    return {{"boat", boat.boat},
            {"boat_class", boat.boatClass},
            {"condition", nameOf(boat.kind)},
            {"since", boat.since ? Json(boat.since->iso()) : Json()},
            {"by", boat.by},
            {"reasons", boat.reasons},
            {"urgent", boat.urgent}};
}

std::string textIn(const Json& boat, const char* key) {
    const auto found = boat.find(key);
    return found != boat.end() && found->is_string() ? found->get<std::string>() : std::string();
}

bool isBoat(const Json& boat) {
    return boat.is_object() && !textIn(boat, "boat").empty();
}

PublishedBoat boatFrom(const Json& json) {
    PublishedBoat boat{.boat = textIn(json, "boat"),
                       .boatClass = textIn(json, "boat_class"),
                       .since = Instant::parse(textIn(json, "since")),
                       .by = textIn(json, "by"),
                       .urgent = textIn(json, "urgent")};
    for (const Kind kind : {Kind::NotReady, Kind::Out, Kind::KitReady})
        if (textIn(json, "condition") == nameOf(kind)) boat.kind = kind;
    const auto reasons = json.find("reasons");
    if (reasons != json.end() && reasons->is_array())
        for (const Json& reason : *reasons)
            if (reason.is_string()) boat.reasons.push_back(reason.get<std::string>());
    return boat;
}

} // namespace

std::string textOf(const std::vector<PublishedBoat>& boats, CalendarDay today) {
    Json list = Json::array();
    for (const PublishedBoat& boat : boats)
        list.push_back(jsonOfBoat(boat));
    return Json{{"today", today.iso()}, {"boats", list}}.dump(-1, ' ', false, Json::error_handler_t::replace);
}

void readBoard(const std::string& text, PublishedBoard& into) {
    constexpr std::size_t longest = 4 * 1024 * 1024;
    const Json board = text.size() <= longest ? Json::parse(text, nullptr, false) : Json();
    const Json boats = board.is_object() ? board.value("boats", Json()) : Json();
    into.isReadable = boats.is_array() && std::all_of(boats.begin(), boats.end(), isBoat);
    if (!into.isReadable) return;
    into.today = textIn(board, "today");
    for (const Json& boat : boats)
        into.boats.push_back(boatFrom(boat));
}

} // namespace core
