#pragma once

#include "core/upkeep/due_date.h"

#include <QString>

namespace app {

// The words for a life rule that the sentences about findings are made of; the others are in sentences.h.

/// "the rule “rearm”"; a part's rule names the part.
QString theRule(const core::RuleDue& due);
/// "the day it was made": what must be known before a rule of that kind can be judged.
QString whatItCountsFrom(core::RuleKind kind);

} // namespace app
