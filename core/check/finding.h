#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/life_rule.h"
#include "core/upkeep/due_date.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

enum class FindingKind {
    Missing,
    NoFit,
    OutOfDate,
    Undated,
    ServiceOverdue,
    Unserviceable,
    WrittenOff,
    WrongSize,
    FitNotChecked,
    PersonNotChecked,
    OtherPerson,
    OtherBoat,
    WasMissing,
    UnknownTag,
    DueSoon,
    Extra,
    PointOpen,
    PointOutOfRange,
    LogOpen,
    NotReturned,
    Swapped,
    NoManifest, ///< no required line is asked of the boat; `text` is its class
    Last = NoManifest,
};

/// Name in the command line's documents: "missing", "no-fit" …
const char* nameOf(FindingKind kind);
const char* nameOf(Severity severity); ///< "stop", "remark"

/// Something a person must know. Only facts: the sentence is made of them by the programs.
struct Finding {
    FindingKind kind = FindingKind::Missing;
    Severity severity = Severity::Remark;
    std::string kitType;
    ItemName item; ///< or the unknown tag; empty when it is about a line, person or boat
    int quantity = 1;
    std::optional<RuleDue> due; ///< the rule that speaks, for out-of-date, undated, service-overdue, due-soon
    std::vector<std::string> people; ///< left without, not checked, or whose the item is
    std::string boat;                ///< the other boat; for not-returned the boat it went out on
    std::string size;                ///< the item's size, for wrong-size and no-fit
    std::string text;  ///< the log entry's text, the point's name, or why something was written off
    std::string entry; ///< log entry id
    std::optional<CalendarDay> since;
    std::optional<double> value; ///< a point's value
    std::optional<double>
        afloat; ///< a chamber pressure at water temperature that leaves the range though value is inside
    std::string unit;
    std::optional<double> low; ///< of a point's limits
    std::optional<double> high;
};

/// About an item: with its kit type, name and size, and why and since when it is written off, unserviceable
/// or was missing.
Finding findingAbout(const Item& item, FindingKind kind, Severity severity);
/// … that speaks of a rule: its kind follows from the rule and its state.
Finding findingAbout(const Item& item, const RuleDue& due, Severity severity);
/// Out-of-date, service-overdue, undated or due-soon: what a rule that is no more than due says (design:
/// rules 3).
FindingKind findingKindOf(const RuleDue& due);
/// An open log entry, of its severity.
Finding findingOf(const LogEntry& entry);

} // namespace core
