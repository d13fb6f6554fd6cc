#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace scanner {

/// Says whether a text is a tag of the club's kind (its check character agrees). Given by the caller, because
/// the scanner does not know the trade; called from the reading thread.
using TagTest = std::function<bool(const std::string& text)>;

struct ReadOptions {
    bool rescue = true;                    ///< go on after the fast pass, while there is time
    std::chrono::milliseconds budget{250}; ///< no new step starts later than this; 0: no limit
    TagTest isTag; ///< empty: what rescue steps read is dropped unless the symbol proves itself
};

/// All symbols in a grey picture of any size, each text once per place. Pure: same picture and options
/// (without a budget), same answer; no state, any thread. Never throws, aborts or hangs; an empty picture has
/// no symbols.
std::vector<SeenCode> readSymbols(GreyView picture, const ReadOptions& options = {});

} // namespace scanner
