#pragma once

#include "core/base/result.h"
#include "core/club/club_exchange.h"

#include <filesystem>
#include <optional>

namespace core {
class Club;
}

namespace app {

// Both ways of an exchange with another file of the club: what it recorded comes in, then what is recorded
// here goes there. On the club's thread.

/// What an exchange would do.
struct ExchangePlan {
    core::CameIn cameIn;
    int goes = 0;            ///< facts that the other file does not have
    bool isReadOnly = false; ///< nothing can be written to the other file: only one way
    bool isAsNewMachine = false;

    bool isIdle() const { return cameIn.facts == 0 && (goes == 0 || isReadOnly || isAsNewMachine); }
};

/// Writes nothing, to neither.
core::Result<ExchangePlan> planExchange(core::Club& club, const std::filesystem::path& other,
                                        core::ClubExchange::Forks forks);

struct Exchanged {
    core::CameIn cameIn; ///< on disk here
    /// What the other file took in, on disk there, or why not; empty: nothing was to go there.
    std::optional<core::Result<core::CameIn>> went;
};

/// Takes in, then gives. An error: nothing was taken in, nor given. A record that is taken in as that of a
/// new machine is not given to: the other file is done with then.
core::Result<Exchanged> exchange(core::Club& club, const std::filesystem::path& other,
                                 const ExchangePlan& plan);

} // namespace app
