#pragma once

#include "core/plan/make_ready/make_ready.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace core {

/// A boat of the register, and whether it is at sea.
struct BoatInShed {
    BoatToPlan boat;
    bool isOut = false;
};

/// What a plan may work with, as far as boats and names go.
struct KitOnHandQuestion {
    std::vector<BoatInShed> boats;           ///< all of the club
    std::vector<std::string> places;         ///< all of the club
    std::vector<Location> gone = {};         ///< boats and places that were the club's: kit there is nowhere
    std::set<std::string> askedBoats;        ///< only these, as the register spells them; empty: all
    std::set<std::string> askedPlaces;       ///< likewise: only kit at these, and aboard the planned boats
    std::map<std::string, KitType> kitTypes; ///< by name
    CalendarDay today;
};

/// An item with what the record holds of where it is.
struct ItemSeenLast {
    ItemRecord record;
    std::optional<Location> seenAt; ///< where it was seen last: any standing sighting, signed check or not
    std::string seenStamp;          ///< of that sighting
    std::string homeStamp; ///< of the newest fact that gave its home; asked only where seenAt is not its home
};

struct KitOnHandAnswer {
    std::vector<BoatToPlan> boats; ///< in the order given
    std::vector<KitOnHand> kit;    ///< likewise
    std::vector<std::string> boatsOut;
    std::vector<ItemName> notPlaced; ///< sound kit of a wanted type of which nobody knows where it is
};

/// The item's home boat or place, as the register spells it; empty: it has none.
std::optional<Location> homeOf(const Item& item, const KitOnHandQuestion& question);

/// The items of which the plan has to know where they are: sound today, and of a type that a planned boat
/// wants or takes instead. In the order given. Pure.
std::vector<ItemRecord> worthPlacing(std::vector<ItemRecord> kit, const KitOnHandQuestion& question);

/// The boats to plan and the kit for them (design: rules 8, and what the code settles under "what is on
/// hand"). `items`: of worthPlacing, with their whereabouts. Pure.
KitOnHandAnswer kitOnHand(const KitOnHandQuestion& question, const std::vector<ItemSeenLast>& items);

} // namespace core
