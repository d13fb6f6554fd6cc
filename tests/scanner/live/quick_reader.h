#pragma once

#include "scanner/reader/symbol_reader.h"

namespace support {

/// The fast pass alone: what is shown is easy, and a busy machine must not run into a time limit.
inline std::vector<scanner::SeenCode> readQuickly(scanner::GreyView view) {
    scanner::ReadOptions options;
    options.rescue = false;
    options.budget = {};
    return scanner::readSymbols(view, options);
}

} // namespace support
