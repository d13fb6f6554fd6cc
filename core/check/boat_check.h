#pragma once

#include "core/base/instant.h"
#include "core/check/finding.h"
#include "core/check/phase.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace core {

enum class CheckOutcome { Complete, CompleteWithRemarks, Incomplete };

const char* nameOf(CheckOutcome outcome); ///< "complete", "complete-with-remarks", "incomplete"

/// A registered item that was seen, with what the check must know of it.
struct SeenItem {
    ItemRecord record;
    bool wasMissing = false;          ///< it was marked missing when this check saw it first, or once more
    std::vector<LogEntry> logOpen;    ///< open entries on the item
    std::string lastLaunchedOn;       ///< return: the boat of its last signed launch check, empty if none
    bool cameBackSince = false;       ///< return: a return check of that boat, signed since, saw it
    std::optional<double> print = {}; ///< what is left of its tag, 4 (as new) to 0, as far as it is known
};

/// A point of the boat with what was recorded, if anything. For a look, `value` is 1 when done.
struct PointRecord {
    BoatPoint point;
    std::optional<double> value;
};

/// Everything that a check's answer depends on. Kit types: those of the lines, their substitutes and the
/// items.
struct BoatCheckInput {
    Location location;     ///< the boat, or the place of a stocktake
    std::string boatClass; ///< of the boat
    Phase phase = Phase::Launch;
    CalendarDay today;
    std::vector<ManifestLine> lines; ///< the boat's own, in the manifest's order
    std::map<std::string, KitType> kitTypes;
    std::vector<Person> people; ///< on board, in the order they were named
    std::vector<SeenItem> seen; ///< each item once, in the order of the first sighting
    std::vector<std::string> unknownTags;
    std::vector<PointRecord> points;
    std::vector<LogEntry> logOpen;        ///< open entries of the boat
    std::vector<ItemRecord> expectedBack; ///< return: what went out; stocktake: what has its home there
    std::set<std::string> outOnBoats;     ///< stocktake: ids of what a boat has out of that
};

/// One seen item under one line.
struct LineItem {
    ItemName item;
    std::string kitType;
    bool counts = false;
    std::string wornBy;               ///< the person of its place, for a worn or personal line
    std::optional<CalendarDay> due;   ///< earliest over its rules
    std::optional<double> print = {}; ///< what is left of its tag, 4 (as new) to 0; no rule asks for it
};

struct LineAnswer {
    ManifestLine line;
    int wanted = 0;  ///< places
    int counted = 0; ///< places filled
    std::vector<LineItem>
        items; ///< those that fill its places by code, then seen ones of its types that do not count
    std::vector<std::string> withoutPeople; ///< people whose place of a worn or personal line is empty
};

enum class PointState { Done, Open, OutOfRange, Last = OutOfRange };

const char* nameOf(PointState state); ///< "done", "open", "out-of-range"

struct PointAnswer {
    BoatPoint point;
    PointState state = PointState::Open;
    std::optional<double> value;
    std::optional<double> afloat; ///< kPa at water temperature, where temperatures were given
};

/// The vector that the assignment makes best, in this order (design: rules 3).
struct AssignmentScore {
    int required = 0;
    int other = 0;
    int ownType = 0;
    int ownBoat = 0;
    long long dueSum = 0;

    bool operator==(const AssignmentScore&) const = default;
};

struct CheckAnswer {
    Location location; ///< the boat, or the place of a stocktake
    Phase phase = Phase::Launch;
    CalendarDay today;
    CheckOutcome outcome = CheckOutcome::Incomplete;
    std::vector<LineAnswer> lines;
    std::vector<Finding> findings; ///< stops first, then by the manifest's order and code
    std::vector<PointAnswer> points;
    std::vector<LogEntry> logOpen; ///< of the boat and of the items used
    AssignmentScore score;
};

/// A signed check as it stands in the record.
struct SignedCheck {
    std::string check;
    std::string by;
    Instant at;
    std::string urgent; ///< empty: not urgent
    CheckAnswer answer;
};

/// Judges what was seen against what the boat must carry, took out, or the place should hold (design: rules 3
/// to 7). Pure.
CheckAnswer judge(const BoatCheckInput& input);

} // namespace core
