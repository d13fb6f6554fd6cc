#pragma once

#include "core/base/result.h"
#include "core/record/pin.h"

#include <string>

namespace app {

/// The PIN that stands in that file, which must be its user's alone, or comes on standard input for `-`: one
/// line, without blanks at its ends. Where somebody types it, it is not shown.
core::Result<core::Pin> pinFrom(const std::string& path);

} // namespace app
