#pragma once

#include "core/store/other_record.h"

namespace core {

/// Writes what was looked through in another record, and what follows from it, in the caller's write
/// transaction. Needs isStillNew.
void takeIn(Database& own, const OtherFacts& news);

} // namespace core
