#pragma once

#include "app/cli/commands/command.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/register/operation.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

/// What a crew tells of its trip, as it was typed.
struct TripOptions {
    std::string left;
    std::string back;
    std::string hours;
    std::string launches;
    std::string fuel;
    std::string incidents;
};

void takeTrip(Command& command, TripOptions& trip);

/// What was told of a trip; what was not told is empty.
struct TripTold {
    std::optional<core::Instant> left, back;
    std::vector<std::string> people;
    std::optional<double> hours;
    std::optional<int> launches;
    std::string fuel, incidents;

    /// With what was told of it before, where nothing else is told now.
    core::Operation over(const std::optional<core::Operation>& before) const;
};

/// Empty when nothing was told. BadInput for an instant or a number that cannot be read.
core::Result<std::optional<TripTold>> tripFrom(const TripOptions& given,
                                               const std::vector<std::string>& people);

} // namespace app
