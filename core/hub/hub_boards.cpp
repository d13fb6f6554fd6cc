#include "core/hub/hub_boards.h"

#include "core/hub/board_text.h"
#include "core/hub/hub_connection.h"

#include <pqxx/pqxx>

namespace core::hubBoards {

void publish(HubConnection& hub, const std::string& founder, const std::string& machine,
             const std::string& board) {
    hub.run("SELECT tholepin.publish($1::uuid, $2::uuid, $3)", {founder, machine, board});
}

std::vector<PublishedBoard> newest(HubConnection& hub) {
    std::vector<PublishedBoard> boards;
    for (const pqxx::row& row : hub.run(
             "SELECT c.name, to_char(b.at AT TIME ZONE 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS.MS\"Z\"'), b.board "
             "FROM tholepin.club AS c LEFT JOIN LATERAL (SELECT at, board FROM tholepin.board AS each WHERE "
             "each.club = c.number ORDER BY at DESC LIMIT 1) AS b ON true ORDER BY c.name",
             {})) {
        PublishedBoard board{.club = row[0].c_str(), .at = Instant::parse(row[1].c_str())};
        if (!row[2].is_null()) readBoard(row[2].c_str(), board);
        boards.push_back(std::move(board));
    }
    return boards;
}

} // namespace core::hubBoards
