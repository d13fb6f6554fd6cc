#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/record/verification.h"

#include <cstdint>
#include <optional>
#include <string>

namespace core {

struct ClubState;

/// What the record begins with.
struct ClubOrigin {
    std::string fact; ///< its hash: no other club's record begins with it
    Instant at;       ///< when it was recorded
};

/// Who writes here: a user on a computer (core/record/machine_key.h).
struct ThisMachine {
    std::string machine;    ///< its id; empty: it begins with what is written next
    std::string name;       ///< as the computer was called, or as somebody named it since
    std::int64_t facts = 0; ///< that it wrote
};

/// The record as a whole. See Club for what holds of every function.
class ClubRecord {
public:
    explicit ClubRecord(ClubState& state)
        : m_state(&state) {}

    /// Hash chain, tables against facts, SQLite's own integrity check. `rebuild` makes the tables anew from
    /// the facts.
    Result<Verification> verify(bool rebuild);

    /// Takes mass, chest and PIN of a person out of the file for good, also out of what the record holds of
    /// earlier ones; how many measures that were. The facts that tell of them stay, and so does what other
    /// copies of the file hold. NotFound.
    Result<int> eraseMeasures(const std::string& person, const std::string& by);

    ThisMachine thisMachine() const;
    /// Gives the machine that writes here another name, which goes wherever its record goes. NameMissing.
    Outcome nameMachine(const std::string& name, const std::string& by);

    /// Of the oldest fact; empty: the file holds none.
    std::optional<ClubOrigin> origin() const;

private:
    ClubState* m_state;
};

} // namespace core
