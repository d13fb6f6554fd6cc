#pragma once

#include "core/answers/published_board.h"

#include <string>
#include <vector>

namespace core {

class HubConnection;

/// All throw StoreFailure as HubConnection says, `publish` also HubRoleUnknown and HubOtherClub.
namespace hubBoards {

/// Puts what that machine computed (board_text.h) in the place of what it published before.
void publish(HubConnection& hub, const std::string& founder, const std::string& machine,
             const std::string& board);
/// Of every club that whoever is connected may read, by name: the board that was published last.
std::vector<PublishedBoard> newest(HubConnection& hub);

} // namespace hubBoards
} // namespace core
