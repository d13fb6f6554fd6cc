#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace core {

struct Problem {
    std::string where;
    std::string what;
};

struct Verification {
    std::int64_t facts = 0;
    int devices = 0;
    std::string head; ///< hash of the newest fact of this device
    std::vector<Problem> problems;
};

} // namespace core
