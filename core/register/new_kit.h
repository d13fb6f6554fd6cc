#pragma once

#include "core/base/calendar_day.h"

#include <string>
#include <vector>

namespace core {

/// Kit that arrived and gets its tags: so many alike, or one for each maker's label.
struct NewKit {
    std::string kitType;
    std::string size;
    std::string boat; ///< home; at most one of boat and place
    std::string place;
    std::string person; ///< whose it is, for a personal kit type
    std::string made;   ///< day, month or year as in the register; empty: unknown, or the label's
    std::string firstUse;
    std::string stamped;
    std::string maker;
    std::string note;
    int count = 1;                      ///< 1 to 1000; without labels
    std::vector<std::string> serials{}; ///< of the first, the second …; at most `count`, each may be empty
    std::vector<std::string> labels;    ///< GS1 element strings: serial, batch and dates come from them
};

} // namespace core
