#pragma once

#include "core/base/instant.h"

#include <string>

namespace core {

/// A photograph of something; the same picture may be of more than one thing. The bytes are found by the
/// hash.
struct Photo {
    std::string id; ///< of the fact
    std::string item;
    std::string boat;
    std::string entry;  ///< id of the log entry about that item or boat; empty: of the item itself
    std::string sha256; ///< of its bytes, lower-case hex
    int size = 0;       ///< in bytes
    Instant at = Instant::fromMillis(0);
    std::string by; ///< person, or empty
};

} // namespace core
