#pragma once

#include <string>
#include <vector>

namespace core {
struct ThisMachine;
}

namespace app {

/// `officers`: whose PIN a gear officer's acts need; none: they are open.
std::string pinJson(const std::string& act, const std::string& person,
                    const std::vector<std::string>& officers);
std::string signingJson(bool isProven);
std::string machineJson(const core::ThisMachine& machine);

} // namespace app
