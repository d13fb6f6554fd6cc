#pragma once

#include "core/record/verification.h"
#include "core/store/database.h"

namespace core {

/// Looks for what was changed behind the program's back: each machine's chain (numbers without gaps, hashes,
/// canonical bodies), the tables against tables made anew from the facts, and SQLite's own integrity check.
/// Leaves `head` empty.
Verification verifyStore(Database& database);

} // namespace core
