#pragma once

#include <optional>
#include <string>
#include <vector>

namespace core {

/// How much a finding matters. A stop makes a check incomplete; a remark is to be read.
enum class Severity { Remark, Stop, Last = Stop };

/// The kinds of life rules; what `n` counts stands beside each.
enum class RuleKind {
    Stamped,         ///< the expiry printed on the item; no n
    FromMade,        ///< months from the day of manufacture
    FromFirstUse,    ///< months from first use
    YearEndFromMade, ///< years; 31 December of the year of manufacture + n
    InspectEvery,    ///< months since the last record
    ServiceEvery,    ///< months since the last record
    EveryHours,      ///< hours run since the last record
    EveryUses,       ///< launches since the last record
    AfterEvent,      ///< due at once after `event`, until recorded; no n
    Last = AfterEvent,
};

/// What it means that the day a rule counts from is not known.
enum class Undated { Stop, Remark, Ignore };

/// Time past the due day in which a passed rule is a remark instead of a stop.
struct Tolerance {
    enum class Kind { None, Days, EndOfMonth };
    Kind kind = Kind::None;
    int days = 0; ///< for Kind::Days, 0 or more
};

/// From the age of `ageMonths` on, n is `n` (both in months, or n in what the rule counts).
struct RuleStep {
    int ageMonths = 0;
    double n = 0;
};

/// One way in which a kit of a type comes due: data of the club, with the source that it was taken from.
struct LifeRule {
    std::string part; ///< empty: the rule is the item's own
    std::string name;
    RuleKind kind = RuleKind::Stamped;
    double n = 0;
    std::vector<RuleStep> steps; ///< by rising age
    std::string event;
    Severity severity = Severity::Stop;
    int leadDays = 30;
    Tolerance tolerance;
    bool strict = false; ///< the due day itself is already too late
    Undated undated = Undated::Remark;
    std::string source;
};

} // namespace core
