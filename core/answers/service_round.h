#pragma once

#include "core/base/instant.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/upkeep/service_state.h"

#include <map>
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
        ItemName item;
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
        ItemName item; ///< or the unknown tag
        std::string kitType;
        Refusal why = Refusal::UnknownTag;
    };
    std::vector<Recorded> recorded;
    std::vector<Refused> refused;
    std::vector<std::string> unread; ///< no code of this club's kind, as they came
};

const char*
nameOf(ServiceRound::Refusal why); ///< "unknown-tag", "no-such-rule", "written-off", "done-already"

/// A scanned item as it is before the round.
struct ItemBeforeRound {
    ItemRecord record;
    std::vector<LogEntry> logOpen;
    StateApart apart; ///< its state, apart from being missing
};

/// All that a round depends on.
struct ServiceRoundInput {
    ServiceOrder order;
    Moment moment;
    std::vector<std::optional<std::string>>
        codes; ///< of the order's scans: the id or unknown tag that each means, if any
    std::map<std::string, ItemBeforeRound> items; ///< by id: those that the register knows
    std::map<std::string, KitType> kitTypes;      ///< all, by name
};

/// What is to be written about one item: a record of each of its rules, then its new state.
struct RoundEntry {
    std::string item; ///< id
    std::vector<LifeRule> rules;
    std::optional<Instant> at;       ///< when it was done, if that is known: not of an earlier day
    std::optional<StateApart> state; ///< empty: as it was
};

struct ServiceRoundAnswer {
    ServiceRound round;
    std::vector<RoundEntry> entries; ///< in the order of writing
};

/// Whether a kit type of the club has a rule of that name.
bool isRuleOfClub(const std::string& rule, const std::map<std::string, KitType>& kitTypes);

/// What a service round writes and what it refuses (what the code settles under "a service round"). Pure.
ServiceRoundAnswer serviceRoundOf(const ServiceRoundInput& input);

/// The state that this record gives an item, which has `services` with it: a failed one withdraws it, a
/// passed one lifts what failed records did, and nothing else. Empty: it stays what it is apart from being
/// missing, which the record itself ends. Pure.
std::optional<StateApart> stateByRecord(const ItemBeforeRound& before,
                                        const std::vector<ServiceRecord>& services,
                                        const ServiceRecord& record);

/// Whether an open entry of severity stop stands on the item, so that a passed record does not release it.
bool isHeldByLog(const std::vector<LogEntry>& open);

} // namespace core
