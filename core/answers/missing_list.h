#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// One event of the chain by which an item went missing.
struct ChainLink {
    enum class What { Launched, Seen, Returned, NotReturned, MarkedMissing };
    What what = What::Seen;
    std::optional<Instant> at; ///< empty: only `day` is known, for what came from CSV
    std::optional<CalendarDay> day;
    std::string where; ///< boat or place
    std::vector<std::string> by;
    std::string check; ///< check id, or empty
};

const char*
nameOf(ChainLink::What what); ///< "launched", "seen", "returned", "not-returned", "marked-missing"

/// An item that is missing, with the launch check, the last sighting and the return check that missed it.
struct MissingItem {
    std::string code;
    std::string kitType;
    std::string boat; ///< the boat it went out on, else its home
    std::optional<CalendarDay> since;
    std::vector<ChainLink> chain; ///< oldest first
};

} // namespace core
