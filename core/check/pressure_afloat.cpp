#include "core/check/points.h"

namespace core {

double pressureAfloatKpa(double gaugeKpa, double airC, double waterC, double atmosphereKpa) {
    constexpr double zeroCelsius = 273.15; // kelvin
    return (gaugeKpa + atmosphereKpa) * (waterC + zeroCelsius) / (airC + zeroCelsius) - atmosphereKpa;
}

} // namespace core
