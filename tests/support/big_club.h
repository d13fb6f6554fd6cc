#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace support {

/// What a big club's file holds, to be used by a test.
struct BigClub {
    std::string boat;              ///< one of its 40 boats, "boat 7"
    std::vector<std::string> kit;  ///< codes of what that boat must carry
    std::vector<std::string> crew; ///< two people
};

/// Makes the file of a club of 40 boats and 8,000 items with at least so many sightings on record, in signed
/// launch and return checks of its last years. The register comes in as CSV; the history is written into the
/// tables and the record in bulk, as that of another machine, without its hash chain: good for a window, not
/// for a verification. Throws what went wrong.
BigClub makeBigClub(const std::filesystem::path& file, std::int64_t sightings);

} // namespace support
