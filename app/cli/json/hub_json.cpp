#include "app/cli/json/hub_json.h"

#include "app/cli/json/json_parts.h"
#include "app/cli/json/merge_json.h"

namespace app {
namespace {

Json publishedBoat(const core::PublishedBoat& boat) {
    return {{"boat", boat.boat},
            {"boat_class", orNull(boat.boatClass)},
            {"condition", core::nameOf(boat.kind)},
            {"since", orNull(boat.since)},
            {"by", orNull(boat.by)},
            {"reasons", boat.reasons},
            {"urgent", orNull(boat.urgent)}};
}

Json publishedBoard(const core::PublishedBoard& board) {
    return {{"club", board.club},
            {"published", orNull(board.at)},
            {"today", orNull(board.today)},
            {"readable", board.isReadable},
            {"boats", listOf(board.boats, publishedBoat)}};
}

} // namespace

std::string exchangedJson(const core::Exchanged& exchanged) {
    Json document{{"sent", exchanged.sent}, {"at", exchanged.at.iso()}};
    document.update(cameInJson(exchanged.cameIn));
    return written(document);
}

std::string hubBoatsJson(const std::vector<core::PublishedBoard>& boards) {
    return written({{"clubs", listOf(boards, publishedBoard)}});
}

std::string hubJoinedJson(const core::HubPlace& place) {
    return written({{"url", place.url}, {"private", place.sendsPrivate}});
}

std::string hubFetchedJson(const std::string& club, const std::string& file,
                           const std::optional<core::HubPlace>& place) {
    return written({{"club", club},
                    {"file", file},
                    {"url", place ? Json(place->url) : Json()},
                    {"private", place && place->sendsPrivate}});
}

std::string hubPreparedJson(const std::string& url) {
    return written({{"url", url}});
}

std::string hubAddedJson(const std::string& club, const std::string& role) {
    return written({{"club", orNull(club)}, {"role", role}});
}

} // namespace app
