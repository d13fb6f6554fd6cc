#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// One line of a history.
struct HistoryLine {
    Instant recordedAt;
    std::optional<Instant> at; ///< when it happened, if the record says so
    std::string machine;
    std::string machineName; ///< what it is called now; empty: unknown
    std::int64_t seq = 0;
    std::string by;
    std::string proven; ///< by whose PIN it was written; empty: by nobody's
    std::string kind;   ///< the fact's kind: "item", "tag-seen", "check-signed" …
    std::string body;   ///< its canonical JSON
};

/// A fact that was found to be about a subject.
struct FoundFact {
    std::string stamp; ///< says when it was recorded: the later of two facts has the greater one
    HistoryLine line;
};

/// The lines as they were recorded, oldest first. A fact that was found by several ways is told once. Pure.
std::vector<HistoryLine> historyOf(std::vector<FoundFact> facts);

} // namespace core
