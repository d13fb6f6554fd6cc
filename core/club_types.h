#pragma once

#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/tag/tag_code.h"
#include "core/upkeep/due_date.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// When something is done: the instant, and the calendar day that the rules go by.
struct Moment {
    Instant at;
    CalendarDay today;
};

/// By which means a tag was seen.
enum class SeenBy { Camera, Picture, Scanner, Typed };

/// A check that is not signed yet.
struct OpenCheck {
    std::string check; ///< id
    std::string boat;
    Phase phase = Phase::Launch;
    Instant openedAt;
    bool resumed = false;
};

/// What one scan meant.
struct Scanned {
    enum class What {
        NewItem,     ///< a registered item seen for the first time in this check
        SeenBefore,  ///< again in this check: counts once
        UnknownTag,  ///< a good kit or person tag that the register does not know
        PersonNamed, ///< a person's tag: next on board
        Ignored,     ///< the boat's own tag, a shelf's, or a person who is named already
        Unread,      ///< no code of this club's kind, or another boat's tag
        Control,     ///< a control tag: the caller acts on it
    };
    What what = What::Unread;
    std::string code; ///< tag code of the item, person or unknown tag
    std::string name; ///< kit type, or the person's name
    std::optional<ControlTag> control;
};

/// A signed check as it stands in the record.
struct SignedCheck {
    std::string check;
    std::string by;
    Instant at;
    std::string urgent; ///< empty: not urgent
    CheckAnswer answer;
};

/// Why a boat is not rescue ready.
struct NotReadyReason {
    enum class Kind {
        NeverChecked,
        CheckOpen,
        Finding,
        BecameDue,
        BecameMissing,
        BecameUnserviceable,
        SeenElsewhere,
        LogOpen
    };
    Kind kind = Kind::NeverChecked;
    std::optional<Finding> finding; ///< of the last check, or made now
    std::string code;
    std::string kitType;
    std::string elsewhere; ///< boat or place where it was seen since
};

struct BoatCondition {
    enum class Kind { NotReady, Out, RescueReady };
    std::string boat;
    std::string boatClass;
    Kind kind = Kind::NotReady;
    std::optional<Instant> since; ///< of the last signed check
    std::string by;
    std::vector<NotReadyReason> reasons;
    std::string urgent; ///< reason of an urgent launch, until the next complete check
};

const char* nameOf(BoatCondition::Kind kind); ///< "not-ready", "out", "rescue-ready"

/// One item and rule on the due list.
struct DueRow {
    std::string code;
    std::string kitType;
    std::string size;
    std::string boat;
    RuleDue due;
};

/// What a printed tag says.
struct TagLabel {
    std::string code;
    std::string name;  ///< kit type, boat or person
    std::string owner; ///< home boat, place or person; may be empty
};

/// One line of a history.
struct HistoryLine {
    Instant recordedAt;
    std::optional<Instant> at; ///< when it happened, if the record says so
    std::string device;
    std::int64_t seq = 0;
    std::string by;
    std::string kind; ///< the fact's kind: "item", "tag-seen", "check-signed" …
    std::string body; ///< its canonical JSON
};

struct Problem {
    std::string where;
    std::string what;
};

struct Verification {
    std::int64_t facts = 0;
    int devices = 0;
    std::string head; ///< hash of the newest fact of this device
    std::vector<Problem> problems;
};

} // namespace core
