#pragma once

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/history.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/record/verification.h"
#include "core/tag/tag_code.h"

#include <optional>
#include <string>

namespace core {

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

/// What a printed tag says.
struct TagLabel {
    std::string code;
    std::string name;  ///< kit type, boat or person
    std::string owner; ///< home boat, place or person; may be empty
};

} // namespace core
