#pragma once

#include "scanner/reader/data_matrix/dark_patches.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/time_budget.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// Reads the Data Matrix that may lie in a dark patch: finds its solid edges, its size by the alternating
/// ones, fits the grid, mends the codewords. Nothing when the time is spent before.
std::optional<SeenCode> readDataMatrix(const PictureLevels& picture, const Quad& patch, bool negative,
                                       const TagTest& isTag, const TimeBudget& budget = {});

} // namespace scanner::reader
