#pragma once

#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/scenes/stream.h"

#include <string>
#include <vector>

namespace scenes {

/// What was told wrongly over some streams or frames.
struct Wrongs {
    int labels = 0;    ///< that were shown
    int asPrinted = 0; ///< destroyed labels told as what was printed on them: true, though guessed
    std::vector<std::string> wrong; ///< one line each: what was told of what
    int guessedOnce = 0;            ///< guesses of near misses that no second frame confirmed
};

/// How much time the reader has. InTime: 33 ms of processor time a frame, so that what is told differs from
/// run to run and few steps come to their turn. AllSteps: no limit, so that every step speaks of every frame.
enum class Hurry { InTime, AllSteps };

/// Streams of five frames with joined labels through the live reader, or each frame by itself with all steps:
/// a text told of one is wrong, whichever. A guess counts when a second frame tells it. The streams from
/// `first` on.
Wrongs tryJoined(int streams, unsigned seed, int first = 0, Hurry hurry = Hurry::InTime);
/// Single frames with destroyed labels: any text is wrong but the one that was printed.
Wrongs tryDestroyed(int labels, unsigned seed);
/// Streams in which each label is exchanged for another at its place after five of ten frames: a text is
/// wrong in a frame that does not show it. The first frame after the exchange counts, too. Always by the live
/// reader, which follows what it has read.
Wrongs tryExchanged(int streams, unsigned seed, Hurry hurry = Hurry::InTime);

/// Sound labels, soiled and clean, in streams of five frames: how many are read, with and without guesswork.
struct Good {
    int labels = 0, plain = 0, guessed = 0; ///< told in any frame; guessed: as a guess alone, in two frames
};
Good tryGood(int streams, unsigned seed);

} // namespace scenes
