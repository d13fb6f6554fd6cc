#pragma once

#include "core/record/machine_key.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// A place in a machine's chain.
struct ChainHead {
    std::int64_t seq = 0; ///< 0: nothing is written yet
    std::string hash;
};

/// A machine of this user and the newest fact that it is known to have written.
struct OwnMachine {
    MachineKey key;
    ChainHead head;
};

/// The signing keys of this user's machines for one club, in the user's state folder, a file each, which only
/// the user can read. Where the folder cannot be used, nothing is kept and nothing is said: a launch does not
/// wait for it, and the next opening begins a new machine. None of it throws; all of it belongs to one
/// thread.
class KeptKeys {
public:
    /// `club`: see Ledger::club.
    explicit KeptKeys(const std::string& club);

    /// Keeps every other program of this user from writing to any file of this club, while it lives.
    class Turn {
    public:
        explicit Turn(const KeptKeys& keys);
        ~Turn();
        Turn(Turn&& other) noexcept;
        Turn& operator=(Turn&&) = delete;

    private:
        int m_lock = -1;
    };

    std::vector<OwnMachine> all() const;
    std::optional<OwnMachine> of(const std::string& machine) const;
    /// Puts a machine there, or its new head. Not synced: a head that is lost is one that is behind, which
    /// matters only if a copy of just that age is then written to; see docs/decisions/durability.md.
    void put(const OwnMachine& machine) const;

private:
    std::filesystem::path m_folder; ///< empty: there is none
};

/// $THOLEPIN_STATE, else $XDG_STATE_HOME/tholepin, else ~/.local/state/tholepin (XDG Base Directory
/// Specification 0.8). Empty when nothing says where.
std::filesystem::path stateFolder();

} // namespace core
