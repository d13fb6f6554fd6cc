#pragma once

#include "core/base/result.h"
#include "core/club/club_exchange.h"
#include "core/register/sheets.h"

#include <set>
#include <string>
#include <vector>

namespace core {

class RegisterStore;
struct ClubState;
struct OtherFacts;

/// What came in, of one record after the other.
struct Intake {
    CameIn cameIn;
    std::set<std::string> machines; ///< that wrote it
};

/// Something that has a name of its own in a record, as it is called there.
struct NamedThing {
    Named named = Named::Boat;
    std::string of, name; ///< `of`: of a size its kit type
};
std::vector<NamedThing> namedThings(const RegisterStore& store);

/// Takes in what another record holds, looked through before (other_record.h), within the caller's write, and
/// finds what somebody must look at. `theirs`: what goes by which name there; none where nobody renamed
/// anything. NamesFused, at `where`: nothing may be committed then.
Outcome takeInLooked(ClubState& state, const OtherFacts& news, const std::vector<NamedThing>& theirs,
                     const std::string& where, Intake& into);

} // namespace core
