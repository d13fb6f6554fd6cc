#pragma once

#include "core/check/launch_places.h"
#include "core/check/ranked_findings.h"

namespace core {

/// What is to be said of the lines, of each seen item, and of the people (design: rules 3, findings).
void addLaunchFindings(RankedFindings& findings, const BoatCheckInput& input, const LaunchPlaces& launch);

} // namespace core
