#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <optional>
#include <string>

namespace core {

/// One line of a history.
struct HistoryLine {
    Instant recordedAt;
    std::optional<Instant> at; ///< when it happened, if the record says so
    std::string device;
    std::int64_t seq = 0;
    std::string by;
    std::string kind; ///< the fact's kind: "item", "tag-seen", "check-signed" …
    std::string body; ///< its canonical JSON
};

} // namespace core
