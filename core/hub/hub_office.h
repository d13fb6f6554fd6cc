#pragma once

#include <string>

namespace core {

class HubConnection;

/// What whoever administers the database does. All throw StoreFailure as HubConnection says.
namespace hubOffice {

/// Makes schema, roles and policies, or brings them up to date; what the hub holds stays. In one transaction.
void prepare(HubConnection& hub);
/// From now on that database role connects for the club of that name, without regard to case, which is made
/// if it is not there. Its name as it stands there. HubNoSuchRole; HubRoleTaken: it connects for another
/// club, or for a district.
std::string addClub(HubConnection& hub, const std::string& club, const std::string& role);
/// From now on that database role reads what every club has there. HubNoSuchRole; HubRoleTaken.
void addDistrict(HubConnection& hub, const std::string& role);

} // namespace hubOffice
} // namespace core
