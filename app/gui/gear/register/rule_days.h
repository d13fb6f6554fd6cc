#pragma once

#include "core/answers/due_list.h"
#include "core/answers/outlook.h"

#include <QString>

#include <string>
#include <vector>

namespace app {

/// A life rule by its key.
struct RuleName {
    std::string kitType, part, rule;
};

/// The next days that the rule would give the club's own kit, earliest first, with the day of now where that
/// is another; `change` is what saving it would do, `now` the due list of all kit. Empty: none of that type.
QString ruleDaysInWords(const RuleName& name, const core::OutlookChange& change,
                        const std::vector<core::DueRow>& now, core::CalendarDay today);

} // namespace app
