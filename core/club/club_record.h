#pragma once

#include "core/base/result.h"
#include "core/record/verification.h"

namespace core {

struct ClubState;

/// The record as a whole. See Club for what holds of every function.
class ClubRecord {
public:
    explicit ClubRecord(ClubState& state)
        : m_state(&state) {}

    /// Hash chain, tables against facts, SQLite's own integrity check. `rebuild` makes the tables anew from
    /// the facts.
    Result<Verification> verify(bool rebuild);

private:
    ClubState* m_state;
};

} // namespace core
