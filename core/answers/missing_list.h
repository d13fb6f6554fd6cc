#pragma once

#include "core/check/check_record.h"
#include "core/register/item.h"

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
    std::optional<Location> where;
    std::vector<std::string> by;
    std::string check; ///< check id, or empty
};

const char*
nameOf(ChainLink::What what); ///< "launched", "seen", "returned", "not-returned", "marked-missing"

/// An item that is missing, with the launch check, the last sighting and the return check that missed it.
struct MissingItem {
    ItemName item;
    std::string kitType;
    std::string boat; ///< the boat it went out on, else its home
    std::optional<CalendarDay> since;
    std::vector<ChainLink> chain; ///< oldest first
};

/// What the record holds of an item that is missing now. Of launch and sighting: the newest before it was
/// marked missing, where there is one.
struct MissingOnRecord {
    Item item;
    std::optional<SignOff> launch; ///< of a launch check in which it was seen
    std::vector<std::string> launchPeople;
    std::optional<Sighting> sighting; ///< in whatever check
    std::optional<Location> seenAt;
    std::vector<std::string> seenPeople;
    std::optional<SignOff> missedBy; ///< the check that missed it; empty: marked by hand or by an import
};

/// The chain of one item (design: rules 6). Pure.
MissingItem missingItemOf(const MissingOnRecord& item);

/// Missing longest first, of one day in the order given; before all, what has been missing since nobody knows
/// when. Pure.
std::vector<MissingItem> missingListOf(const std::vector<MissingOnRecord>& items);

} // namespace core
