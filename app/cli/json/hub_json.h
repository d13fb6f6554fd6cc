#pragma once

#include "core/answers/published_board.h"
#include "core/club/club_hub.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

std::string exchangedJson(const core::Exchanged& exchanged);
std::string hubBoatsJson(const std::vector<core::PublishedBoard>& boards);
std::string hubJoinedJson(const core::HubPlace& place);
/// `place`: where the file exchanges; empty: nowhere.
std::string hubFetchedJson(const std::string& club, const std::string& file,
                           const std::optional<core::HubPlace>& place);
std::string hubPreparedJson(const std::string& url);
/// `club` empty: a district's role.
std::string hubAddedJson(const std::string& club, const std::string& role);

} // namespace app
