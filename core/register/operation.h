#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a crew writes about one trip when it is back. What is not known stays empty.
struct Operation {
    std::optional<Instant> left;
    std::optional<Instant> back;
    std::vector<std::string> people;
    std::optional<double> hours; ///< engine hours run, 0 or more; counted to the kit that went out
    int launches = 1;            ///< how often the boat was launched, 1 or more; counted likewise
    std::string fuel;
    std::string incidents;
};

/// As it is recorded, its texts as given_text.h takes them. BadInput, and why, when it cannot be so: hours,
/// launches, times (of a day after `today`, too) or a text.
Result<Operation> operationFrom(Operation given, CalendarDay today);

} // namespace core
