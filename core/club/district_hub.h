#pragma once

#include "core/answers/published_board.h"
#include "core/base/result.h"
#include "core/club/club_hub.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a file that was fetched does from then on.
struct FetchedFile {
    std::optional<HubPlace> place; ///< where it exchanges; empty: the role is no club's, so nowhere
    bool wasJoined = false;        ///< this user had joined before: there it stays, as it was
};

/// A hub as a whole, without a club file. All connect by the URL, as ClubHub::join does, and fail like it.
namespace districtHub {

/// Makes schema, roles and policies, or brings them up to date. For whoever administers the database.
Outcome prepare(const std::string& url);
/// From now on that role of the database connects for the club of that name, without regard to case, which is
/// made if it is not there. The name as it stands there. HubNoSuchRole; HubRoleTaken; HubRoleOfDistrict;
/// NameMissing; what a name may not hold.
Result<std::string> addClub(const std::string& url, const std::string& club, const std::string& role);
/// From now on that role reads what all clubs have there, but for what is private.
Outcome addDistrict(const std::string& url, const std::string& role);

/// The newest board of every club that the role of the URL may read, by name.
Result<std::vector<PublishedBoard>> boards(const std::string& url);

/// A new machine's first file: all that the hub has of that club, looked through, in a file that must not
/// exist. All or nothing. What was written in the file is by a machine of its own. It exchanges there; but
/// where this user has joined the club to a hub already, that join stays as it is, for it holds for all files
/// of the club and is a gear officer's act.
/// FileExists; HubNoSuchClub; HubRoleUnknown; HubClubEmpty; HubRecordDamaged.
Result<FetchedFile> fetch(const HubPlace& place, const std::string& club, const std::filesystem::path& file);

} // namespace districtHub
} // namespace core
