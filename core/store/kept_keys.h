#pragma once

#include "core/record/machine_key.h"

#include <cstdint>
#include <filesystem>
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
/// the user can read and write. A key counts only there and on the computer where it was made: a copy of the
/// folder, or of a whole disk, is no key. Where the folder cannot be used, or is not the user's alone,
/// nothing is kept and nothing is said: a launch does not wait for it, and each program is a machine of its
/// own. None of it throws; all of it belongs to one thread.
class KeptKeys {
public:
    /// `club`: see clubOf. The first time for a club, folders that killed programs left without a key go.
    explicit KeptKeys(const std::string& club);

    /// Keeps every other program of this user from writing to any file of this club, while it lives. Waits
    /// two seconds for one that does.
    class Turn {
    public:
        explicit Turn(const KeptKeys& keys);
        ~Turn();
        Turn(const Turn&) = delete;
        Turn& operator=(const Turn&) = delete;
        /// False: no key of the folder may be used.
        bool isHeld() const { return m_lock >= 0; }

    private:
        int m_lock = -1;
    };

    /// Whether there may be keys of that club: changes nothing.
    static bool isAnyOf(const std::string& club);

    std::vector<OwnMachine> all() const;
    std::optional<OwnMachine> of(const std::string& machine) const;
    /// Puts a machine there, or its new head. Not synced: see docs/decisions/durability.md.
    void put(const OwnMachine& machine) const;
    void remove(const std::string& machine) const;

    /// A small text that this user keeps about the club beside the keys, and on this computer alone: never in
    /// the club file, which others may write to. `name` is no machine's id. Empty: there is none.
    std::optional<std::string> note(const std::string& name) const;
    /// False: it could not be kept. An empty text takes it away.
    bool putNote(const std::string& name, const std::string& text) const;

private:
    std::string boundTo(std::uint64_t inode) const;

    std::filesystem::path m_folder; ///< empty: there is none
    std::string m_computer;         ///< its id (machine-id(5)); empty: unknown
};

/// The computer's machine-id(5); empty: unknown.
std::string idOfComputer();

/// $THOLEPIN_STATE, else $XDG_STATE_HOME/tholepin, else ~/.local/state/tholepin (XDG Base Directory
/// Specification 0.8). Empty when nothing says where.
std::filesystem::path stateFolder();

} // namespace core
