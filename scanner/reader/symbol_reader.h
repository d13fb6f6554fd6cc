#pragma once

#include "scanner/grey_picture.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <chrono>
#include <functional>
#include <vector>

namespace scanner {

struct ReadOptions {
    bool rescue = true; ///< go on after the fast pass, while there is time
    /// Processor time of the thread: no new step starts later than this, and a busy machine reads as much as
    /// an idle one. 0: no limit.
    std::chrono::milliseconds budget{250};
    TagTest isTag; ///< empty: what rescue steps read is dropped unless the symbol proves itself
};

/// All symbols in a grey picture of any size, each text once per place. Pure: same picture and options
/// (without a budget), same answer; no state, any thread. Never throws, aborts or hangs; an empty picture has
/// no symbols.
std::vector<SeenCode> readSymbols(GreyView picture, const ReadOptions& options = {});

/// Reads the symbols of one frame: readSymbols with its options bound, or a reader that remembers the frame
/// before. Called by one thread at a time. A video's and a camera's frames come in their order.
using CodeReader = std::function<std::vector<SeenCode>(GreyView)>;

} // namespace scanner
