#pragma once

#include "core/base/error.h"

#include <cstdint>
#include <string>
#include <vector>

namespace core {

struct Verification {
    std::int64_t facts = 0;
    int devices = 0;
    std::string head;            ///< hash of the newest fact of this device
    std::vector<Error> problems; ///< their arguments say where they stand in the record
};

} // namespace core
