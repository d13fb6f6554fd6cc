#include "scanner/reader/symbol_reader.h"

#include "scanner/reader/frame_reader.h"

namespace scanner {

std::vector<SeenCode> readSymbols(GreyView picture, const ReadOptions& options) {
    if (picture.isEmpty()) return {};
    reader::FrameReader frame(copyOf(picture), options.isTag);
    if (options.budget.count() > 0) frame.setBudget(reader::TimeBudget::ofThread(options.budget));
    for (const reader::ReadingStep step : reader::fastSteps)
        if (!frame.isLate()) frame.run(step);
    if (options.rescue)
        for (const reader::ReadingStep step : reader::rescueSteps)
            if (!frame.isLate()) frame.run(step);
    frame.gradePrints();
    return frame.codes();
}

} // namespace scanner
