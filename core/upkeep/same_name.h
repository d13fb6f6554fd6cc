#pragma once

#include <string_view>

namespace core {

/// Whether two names of the register mean the same: outer blanks and case do not matter.
bool sameName(std::string_view a, std::string_view b);

} // namespace core
