#pragma once

#include "core/answers/fit_out.h"

#include <string>
#include <vector>

namespace core {

/// What a new club has to do before its boats go out by their record; in any order, but a name comes first,
/// for all else is recorded as done by somebody.
enum class SetUpStep { People, Boats, Kit, Rules, Tags, FirstCheck, Last = FirstCheck };

struct BoatFitOut {
    std::string boat;
    std::vector<FitOutLine> lines;

    /// Everything asked of it has been registered, and something is asked.
    bool isComplete() const;
};

/// A boat of which nothing is asked: neither it nor its class has a line of a manifest.
struct UnaskedBoat {
    std::string boat;
    std::string boatClass; ///< empty: it has none
    std::string like;      ///< the class with lines that its own is one slip away from; empty: there is none
};

/// What the register and the record say of it.
struct SetUpValues {
    std::vector<BoatFitOut> boats;
    std::vector<UnaskedBoat> unasked; ///< of these boats
    int people = 0;
    std::vector<std::string> ruleSources; ///< of every life rule
    bool arePrinted = false;              ///< somebody printed tags; that alone is not in the record
    bool wasTagSeen = false;              ///< some check saw a tag, so that it must be printed
    bool wasSigned = false;               ///< some boat has a signed check
};

struct SetUpTick {
    SetUpStep step = SetUpStep::People;
    bool isDone = false;
    int count = 0; ///< Boats, People: how many; Kit: boats fitted out; Rules: rules that are still examples
    std::vector<std::string> lacking = {}; ///< Kit: the boats that are not
    /// Kit: those of them of which nothing is asked; Boats: those whose class may be mistyped.
    std::vector<UnaskedBoat> unasked = {};
};

/// One tick for each step, in their order. Read anew each time: nothing remembers how far somebody came.
/// Boats are done when there is one and no class of theirs is mistyped. A rule is an example as long as its
/// source begins with that word; a club without a rule has not looked at them. Pure.
std::vector<SetUpTick> setUpOf(const SetUpValues& values);
bool isSetUp(const std::vector<SetUpTick>& ticks); ///< every step is done; not of none

} // namespace core
