#pragma once

#include "core/check/boat_check.h"

#include <vector>

namespace core {

/// State of every point in the order given, with the pressure afloat of each measure in kPa when the points
/// "air temperature" and "water temperature" hold values in °C. A measure named "atmospheric pressure" (kPa
/// or hPa) is used instead of the standard atmosphere (design: rules 7).
std::vector<PointAnswer> answerPoints(const std::vector<PointRecord>& records);

/// One finding for each point that is open or out of range, or leaves its range afloat.
std::vector<Finding> findingsOf(const std::vector<PointAnswer>& points);

} // namespace core
