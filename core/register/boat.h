#pragma once

#include "core/base/calendar_day.h"
#include "core/register/item_name.h"
#include "core/register/kit_type.h"
#include "core/register/life_rule.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Of what has a last day here: whether that day is still to come, or is today. Without one it stays.
inline bool isHere(const std::optional<CalendarDay>& until, CalendarDay today) {
    return !until || today <= *until;
}

/// Where kit and boats are kept.
struct ClubPlace {
    std::string name;
    std::string tag;                  ///< tag code of its shelf, or empty
    std::optional<CalendarDay> until; ///< the last day that it is the club's; empty: it stays
    std::string note;
};

struct Boat {
    std::string name;
    std::string boatClass;
    std::string tag; ///< tag code, or empty
    std::string place;
    double priority = 1;
    std::optional<int> checkEveryDays; ///< at least 1; empty: no limit
    std::optional<CalendarDay> until;  ///< the last day that it is the club's; empty: it stays
    std::string note;
};

/// What a boat must carry of one kit type.
struct ManifestLine {
    std::string kitType;
    int quantity = 1;
    bool required = true;
    std::vector<std::string> substitutes; ///< kit types that may stand in
    std::string note;

    bool operator==(const ManifestLine&) const = default;
};

enum class PointKind { Look, Measure, Timed, Last = Timed };

/// What is looked at, measured or timed on the boat itself in a phase of its day.
struct BoatPoint {
    std::string name;
    PointKind kind = PointKind::Look;
    std::string unit; ///< of a measure
    Range limits;     ///< of a measure in its unit; of a timed point in seconds
    bool required = true;
    std::string note;

    bool operator==(const BoatPoint&) const = default;
};

/// A point and the check in which it is asked.
struct PhasePoint {
    std::string phase; ///< "launch" or "return"
    BoatPoint point;

    bool operator==(const PhasePoint&) const = default;
};

/// A person who goes out. Measures are private: they appear on no sheet and in no export unless asked for by
/// name.
struct Person {
    std::string name;
    std::string tag;
    std::string role; ///< crew, driver or gear officer
    std::optional<double> massKg;
    std::optional<double> chestCm;
    std::optional<CalendarDay> until; ///< the last day that the person takes part; empty: goes on
    std::string note;
};

/// A remark or defect on a boat or an item, open until closed.
struct LogEntry {
    std::string id;   ///< short id, derived from what it is about, its day and its text
    std::string boat; ///< one of boat and item
    ItemName item;
    CalendarDay day;
    std::string text;
    Severity severity = Severity::Remark;
    std::string by;
    std::optional<CalendarDay> closed;
    std::string closing; ///< what was done about it
};

} // namespace core
