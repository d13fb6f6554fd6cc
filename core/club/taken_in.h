#pragma once

#include "core/base/result.h"
#include "core/club/club_exchange.h"

#include <set>
#include <string>

namespace core {

class Database;
struct ClubState;
struct OtherFacts;

/// What came in, of one record after the other.
struct Intake {
    CameIn cameIn;
    std::set<std::string> machines; ///< that wrote it
};

/// Takes in what another record holds, looked through before (other_record.h), within the caller's write, and
/// finds what somebody must look at. `theirs`: that record with its tables, to know what goes by which name
/// there; null where nobody renamed anything. NamesFused, at `where`: nothing may be committed then.
Outcome takeInLooked(ClubState& state, const OtherFacts& news, Database* theirs, const std::string& where,
                     Intake& into);

} // namespace core
