#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/time_budget.h"
#include "scanner/reader/qr/finder_search.h"

#include <vector>

namespace scanner::reader {

/// A guess of where a symbol lies from two of its finders; the third was hidden by dirt or too much tilted.
struct PairGuess {
    int first = 0, second = 0; ///< indices of the finders
    Homography toPicture;      ///< modules of a version 1 symbol to pixels of the map
    double correlation = 0;    ///< of the known modules with the map
    bool negative = false;
};

/// Every pair of finders at a version 1 symbol's distance, as side or diagonal; the third finder is sought
/// within four modules of where it should be. The best `most` guesses, best first; of fewer
/// pairs when the time is spent.
std::vector<PairGuess> guessFromPairs(const ContrastMap& map, const std::vector<Finder>& finders,
                                      std::size_t most, const TimeBudget& budget);

/// The same where only one finder shows itself: another is sought where a side or the diagonal would end,
/// within four modules, by how alike it looks. `first` and `second` are the same finder.
std::vector<PairGuess> guessFromSingles(const ContrastMap& map, const std::vector<Finder>& finders,
                                        std::size_t most, const TimeBudget& budget);

} // namespace scanner::reader
