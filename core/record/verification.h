#pragma once

#include "core/base/error.h"

#include <cstdint>
#include <string>
#include <vector>

namespace core {

/// A machine that wrote to the file, and its chain of facts.
struct MachineRecord {
    std::string machine; ///< its id
    std::string name;    ///< the computer's; empty: unknown
    std::int64_t facts = 0;
    std::string head;      ///< hash of its newest fact
    std::string first;     ///< instant at which its first fact was recorded, as it stands there
    std::string newest;    ///< and its newest
    bool isSigned = false; ///< every fact is signed with the machine's key
};

struct Verification {
    std::int64_t facts = 0;
    std::vector<MachineRecord> machines; ///< in the order of their ids
    std::string head;                    ///< hash of the newest fact in the file
    std::int64_t erased = 0;             ///< private cells that were erased
    std::int64_t notHere = 0;            ///< private cells that were not handed on to the file
    std::int64_t photos = 0;             ///< photographs that are kept
    std::int64_t photoBytes = 0;         ///< what they weigh
    std::vector<Error> problems;         ///< their arguments say where they stand in the record
};

} // namespace core
