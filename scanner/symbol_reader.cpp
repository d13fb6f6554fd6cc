#include "scanner/symbol_reader.h"

#include "scanner/reader/frame_reader.h"

namespace scanner {

std::vector<SeenCode> readSymbols(GreyView picture, const ReadOptions& options) {
    if (picture.isEmpty()) return {};
    reader::FrameReader frame(copyOf(picture), options.isTag);
    frame.readAll(options.rescue, options.budget);
    return frame.codes();
}

} // namespace scanner
