#pragma once

#include "core/record/facts.h"

#include <string>
#include <vector>

namespace core {

/// A private cell (sheets.h), which stands beside its fact and not in it: so it can be taken out for good,
/// and left out of what is handed on, while the chain stays whole. The fact holds its digest.
struct PrivateCell {
    std::string column;
    std::string salt; ///< random, 32 hex digits, so that a digest does not tell a measure
    std::string value;
};

/// SHA-256 over salt and value, in lower-case hex.
std::string digestOf(const PrivateCell& cell);

/// Takes the private cells out of what is set and leaves their digests. Returns them with fresh salts.
std::vector<PrivateCell> seal(RowWritten& row);

} // namespace core
