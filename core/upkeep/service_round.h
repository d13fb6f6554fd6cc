#pragma once

#include "core/base/calendar_day.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// One record to be written for many items: a rule, a day, who did it.
struct ServiceOrder {
    std::string rule;   ///< name of a life rule, any spelling
    CalendarDay day;    ///< not after the moment's day
    std::string by;     ///< a person of the club
    bool passed = true; ///< a failed one withdraws the item
    std::string note;
    std::vector<std::string> scans; ///< as a camera or a hand-held scanner gave them
};

/// What became of each scan, in the order of the first.
struct ServiceRound {
    struct Recorded {
        std::string code;
        std::string kitType;
        std::string part; ///< empty: the item's own rule
        std::optional<CalendarDay> nextDue;
        bool released = false; ///< it was unserviceable by an earlier failed record and is serviceable now
    };
    enum class Refusal {
        UnknownTag,  ///< a good kit tag that the register does not know
        NoSuchRule,  ///< its kit type has no rule of that name, or it lacks the part
        WrittenOff,  ///< it is out of use for good
        DoneAlready, ///< the same record of that day stands
    };
    struct Refused {
        std::string code;
        std::string kitType;
        Refusal why = Refusal::UnknownTag;
    };
    std::vector<Recorded> recorded;
    std::vector<Refused> refused;
    std::vector<std::string> unread; ///< no code of this club's kind, as they came
};

const char*
nameOf(ServiceRound::Refusal why); ///< "unknown-tag", "no-such-rule", "written-off", "done-already"

} // namespace core
