#pragma once

#include "core/register/boat.h"

namespace app {

/// One log entry as lines of text: what, about what, by whom, and what was done about it.
void sayEntry(const core::LogEntry& entry);

} // namespace app
