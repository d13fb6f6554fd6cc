#pragma once

#include "core/base/result.h"
#include "core/register/boat.h"

#include <filesystem>
#include <string>
#include <vector>

namespace app {

/// What was recorded at a point; for a look, 1: done.
struct PointValue {
    std::string point; ///< as the manifest names it
    double value = 0;
};

/// Reads `point,value` rows against the boat's points: `done` for a look, a number for a measure, seconds for
/// a timed point. BadInput names the row, for an unknown point, another value, or a file that is no such CSV.
core::Result<std::vector<PointValue>> readPointsFile(const std::filesystem::path& file,
                                                     const std::vector<core::BoatPoint>& points);

} // namespace app
