#pragma once

#include "scanner/reader/linear/bar_decoder.h"

#include <optional>
#include <span>

namespace scanner::reader {

/// What the modules say against a reading: 0 where one looks as printed, 1 where it looks like the other
/// colour.
struct BarMisfit {
    /// Of the module that speaks most against it. An edge that lies one module further counts as both modules
    /// beside it.
    double most = 0;  ///< 0 or more
    double usual = 0; ///< the root of the mean square of all modules
};

/// Lays the whole symbol over the profile that it was read in, with the blur, the light and the places that
/// fit best, and looks at what is left. So a wrong module shows where its character, which may be a little
/// shifted or blurred for itself, looks as good as the others: at the cut of two labels that were joined, or
/// where bars go on beyond what was taken for the start. `quiet`: modules on each side of the symbol that
/// must be light, too, 0 or more. The profile is not empty, and the reading has the place of each character
/// and of the stop character. Nullopt when the symbol cannot be laid over the profile.
std::optional<BarMisfit> misfitOf(std::span<const float> profile, const BarReading& reading, int quiet);

} // namespace scanner::reader
