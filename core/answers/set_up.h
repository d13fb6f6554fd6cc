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

/// What the register and the record say of it.
struct SetUpValues {
    std::vector<BoatFitOut> boats;
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
};

/// One tick for each step, in their order. Read anew each time: nothing remembers how far somebody came. A
/// rule is an example as long as its source begins with that word; a club without a rule has not looked at
/// them. Pure.
std::vector<SetUpTick> setUpOf(const SetUpValues& values);
bool isSetUp(const std::vector<SetUpTick>& ticks); ///< every step is done; not of none

} // namespace core
