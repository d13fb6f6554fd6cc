#pragma once

#include "core/store/other_record.h"

#include <cstdint>

namespace core {

/// Writes what was looked through in another record, and what follows from it, in the caller's write
/// transaction. Needs isStillNew.
void takeIn(Database& own, const OtherFacts& news);

/// So many facts are read for that: those that come in, and all where the tables are made anew.
std::int64_t factsToApply(Database& own, const OtherFacts& news);

} // namespace core
