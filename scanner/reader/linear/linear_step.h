#pragma once

#include "scanner/reader/image/time_budget.h"
#include "scanner/reader/linear/bar_regions.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// How much work a region of bars is worth.
enum class BarEffort { TwoBands, AllBands };

/// Reads the Code 128 of a region, either way round. A text is taken with the tag's own check, as GS1 element
/// strings that prove themselves, or when two bands agree (the symbol's own check character alone lets one in
/// a hundred through), and only when the whole symbol laid over the bars does not show that it was cut.
/// Nothing when the time is spent before.
std::optional<SeenCode> readCode128(const GreyPicture& picture, const BarRegion& region, BarEffort effort,
                                    const TagTest& isTag, const TimeBudget& budget = {});

/// Other linear symbols (EAN, UPC, Code 39) by the general decoder on straightened bands; two must
/// agree.
std::optional<SeenCode> readOtherLinear(const GreyPicture& picture, const BarRegion& region,
                                        const TimeBudget& budget = {});

} // namespace scanner::reader
