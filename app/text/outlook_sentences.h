#pragma once

#include "core/answers/outlook.h"
#include "core/base/calendar_day.h"

#include <QStringList>

#include <vector>

namespace core {
struct Error;
struct RejectedRow;
} // namespace core

namespace app {

// What a change of the register changes, before it is saved.

/// A sentence each, without a full stop: kit that a boat will lack ("Dabchick will have no knife"), boats of
/// another condition, days that move. Of more than three things of one rule only the number and the first
/// day.
QStringList effectsInWords(const core::OutlookChange& change, core::CalendarDay today);
/// The same, one a line with its full stop: at most so many, then how many more. Empty: it changes nothing.
QString effectsInLines(const core::OutlookChange& change, core::CalendarDay today, int most);

/// What may not be meant so, as a reason: "the class …". In the words of the forms.
QString warningInWords(const core::Error& warning);
/// What may not be meant so, each once and on a line of its own ("Is it meant so? The class …"); likewise at
/// most so many.
QString warningsInLines(const std::vector<core::Error>& warnings, int most);
QString warningsInLines(const std::vector<core::RejectedRow>& warnings, int most);

} // namespace app
