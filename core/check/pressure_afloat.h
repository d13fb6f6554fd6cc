#pragma once

namespace core {

inline constexpr double standardAtmosphereKpa = 101.325; ///< ISO 2533:1975

/// First estimate of a chamber's gauge pressure once the boat lies in the water: the gas law at fixed volume
/// (design: rules 7). Pressures in kPa, temperatures in °C, all above absolute zero.
double pressureAfloatKpa(double gaugeKpa, double airC, double waterC,
                         double atmosphereKpa = standardAtmosphereKpa);

} // namespace core
