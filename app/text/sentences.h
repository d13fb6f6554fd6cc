#pragma once

#include "app/text/errors.h"
#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/missing_list.h"
#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/upkeep/due_date.h"

#include <QString>

#include <string>
#include <vector>

namespace scanner {
struct FileError;
}

namespace app {

// What core and scanner found out, as sentences for a person. Every sentence of the two programs about the
// club's kit is written here. Works without an application object; translated by QCoreApplication::translate.

/// One sentence: what is the matter with which thing, by which rule, counted from which day, with the rule's
/// source, and what to do. Ends with a full stop.
QString reasonOf(const core::Finding& finding);

/// How a due day comes about: `last recorded 1 March 2025; source: the maker's manual`.
QString explanationOf(const core::RuleDue& due);

/// "Kit incomplete: knife, 1 × paddle, 2 × life jacket", "Kit complete, with 2 remarks", "Kit complete"; of a
/// return "Not back: knife, 1 × paddle", "Everything is back".
QString outcomeOf(const core::CheckAnswer& answer);

/// What was passed: "rearm, 1 March 2026", "battery: replace, 1 March 2026".
QString passedInWords(const core::RuleDue& due);

QString conditionOf(const core::BoatCondition& boat,
                    core::CalendarDay today); ///< "kit ready, checked 06:40 today by A"
QString reasonOf(const core::NotReadyReason& reason);
QString linkInWords(const core::ChainLink& link, core::CalendarDay today);
/// "was due by 1 March 2026: overdue 13 days", "due on 1 May 2026", "undated", "due now". Never that a day
/// "has passed": of a test that would be read as its result. A strict rule's day is its last good one.
QString dueInWords(const core::RuleDue& due, core::CalendarDay today);
/// "rearm"; of a part "battery: replace", so that nobody replaces the whole.
QString ruleInWords(const core::LifeRule& rule);

QString nameInWords(core::Phase phase); ///< "launch check", "return check"
QString nameInWords(core::ItemState state);
/// The log text of what the "damaged" control tag withdrew.
QString damagedByTag();

/// That the code typed is no tag of this club, but one slip away from those.
core::Error errorOfAlike(const std::string& typed, const std::vector<std::string>& alike);
core::Error fileErrorOf(const std::string& path, const scanner::FileError& error);

} // namespace app
