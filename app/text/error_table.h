#pragma once

#include <span>

namespace app {

/// A sentence that core's errors are made of, or that the system says within one. %1 to %4 stand for what
/// varies: names, numbers, cells.
struct ErrorSentence {
    const char* english; ///< translated in the context "Errors"
    int reason = 0;      ///< the number of an argument that may be a sentence of the tables itself; 0: none
};

// A test reads core's sources and fails until each of its sentences stands in one of these. The first that
// fits is taken: what is more particular stands first.
std::span<const ErrorSentence> clubErrors();
std::span<const ErrorSentence> fileErrors(); ///< tags and labels, files, the record, and what the system says
std::span<const ErrorSentence> importErrors();

} // namespace app
