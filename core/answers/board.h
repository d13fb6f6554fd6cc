#pragma once

#include "core/check/boat_check.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace core {

/// Why a boat is not kit ready.
struct NotReadyReason {
    enum class Kind {
        NeverChecked,
        CheckOpen,
        Finding,
        BecameDue,
        BecameMissing,
        BecameUnserviceable,
        SeenElsewhere,
        LogOpen,
        LogClosed,  ///< it stopped the last check, and was closed since
        CheckTooOld ///< `daysAgo`, and the boat is to be checked every `everyDays`
    };
    Kind kind = Kind::NeverChecked;
    std::optional<Finding> finding; ///< of the last check, or made now
    ItemName item;
    std::string kitType;
    std::optional<Location> elsewhere; ///< where it was seen since
    int daysAgo = 0;
    int everyDays = 0;
};

struct BoatCondition {
    enum class Kind { NotReady, Out, KitReady };
    std::string boat;
    std::string boatClass;
    Kind kind = Kind::NotReady;
    std::optional<Instant> since; ///< of the last signed check
    int checkedDaysAgo = 0;
    std::string by;
    std::vector<NotReadyReason> reasons;
    std::string urgent; ///< reason of an urgent launch, until the next complete check
};

const char* nameOf(BoatCondition::Kind kind); ///< "not-ready", "out", "kit-ready"

/// The kit that the last return check saw, as it is today.
struct KitThatCameBack {
    BoatCheckInput asForLaunch;       ///< of what that check saw, with the people whom it named
    std::vector<Person> launchPeople; ///< whom the boat's newest signed launch check named
};

/// What the record holds about one boat of the register.
struct BoatOnRecord {
    std::string boat;
    std::string boatClass;
    std::optional<int> checkEveryDays; ///< empty: a check holds as long as nothing of the kit changes
    std::optional<SignedCheck> last;   ///< the newest signed check of the boat, a launch or a return
    int checkedDaysAgo = 0;
    std::string urgent; ///< of the boat's newest signed launch check
    /// Of what the last check saw: by id, where it was seen last after that check was signed. Of what it
    /// missed: after the boat went out.
    std::map<std::string, Location> seenSince;
    std::set<std::string> logClosed;    ///< of the entries that the last check found open: those closed since
    std::optional<KitThatCameBack> kit; ///< needed only where dependsOnKit says so
};

/// Whether the signed answer leaves the boat's condition open: it came back, and nothing stopped.
bool dependsOnKit(const BoatOnRecord& boat);

/// Whether the boat is out, kit ready, or why it is neither (design: rules 4, and what the code settles under
/// "kit ready"). Kit and the boat's age of check are all that it knows: the boat's points are the next launch
/// check's to ask. Pure.
BoatCondition conditionOf(const BoatOnRecord& boat);

/// The conditions of all boats: not ready, out, ready; within each in the order given. Pure.
std::vector<BoatCondition> boardOf(const std::vector<BoatOnRecord>& boats);

} // namespace core
