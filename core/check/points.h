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

inline constexpr double standardAtmosphereKpa = 101.325; ///< ISO 2533:1975

/// First estimate of a chamber's gauge pressure once the boat lies in the water: the gas law at fixed volume
/// (design: rules 7). Pressures in kPa, temperatures in °C, all above absolute zero.
double pressureAfloatKpa(double gaugeKpa, double airC, double waterC,
                         double atmosphereKpa = standardAtmosphereKpa);

} // namespace core
