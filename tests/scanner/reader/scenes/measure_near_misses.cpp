// What the reader tells of labels that must not be read, and of sound ones beside them:
//   reader_near_misses [STREAMS] [DESTROYED] [SEED] [FIRST] [--all-steps]   1000, 10000, 1 and 0 if not given
// FIRST: the stream of joined labels to begin with. --all-steps: joined and exchanged labels without a limit
// of time, too, so that every step speaks of every frame. What is told wrongly of seed S says as its own seed
// 100003·S + the stream, so that it can be looked at alone.
// Ends with 1 when a wrong text was told.

#include "tests/scanner/reader/scenes/near_miss_trial.h"

#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

void print(const char* what, const scenes::Wrongs& wrongs) {
    std::printf("%s: %d labels, %zu wrong, %d told as printed, %d told by one frame's guess\n", what,
                wrongs.labels, wrongs.wrong.size(), wrongs.asPrinted, wrongs.guessedOnce);
    for (const std::string& line : wrongs.wrong)
        std::printf("  %s\n", line.c_str());
    std::fflush(stdout);
}

} // namespace

int main(int argc, char** argv) {
    auto hurry = scenes::Hurry::InTime;
    if (argc > 1 && std::string(argv[argc - 1]) == "--all-steps") {
        hurry = scenes::Hurry::AllSteps;
        --argc;
    }
    const int streams = argc > 1 ? std::atoi(argv[1]) : 1000,
              destroyed = argc > 2 ? std::atoi(argv[2]) : 10000;
    const unsigned seed = argc > 3 ? static_cast<unsigned>(std::atoi(argv[3])) : 1;
    const int first = argc > 4 ? std::atoi(argv[4]) : 0;
    const scenes::Wrongs joined = scenes::tryJoined(streams, seed, first, hurry);
    print(hurry == scenes::Hurry::InTime ? "joined, streams of five" : "joined, five single frames", joined);
    const scenes::Wrongs exchanged = scenes::tryExchanged(streams / 4, seed, hurry);
    print("exchanged in place", exchanged);
    const scenes::Wrongs broken = scenes::tryDestroyed(destroyed, seed);
    print("destroyed", broken);
    const scenes::Good good = scenes::tryGood(streams / 4, seed);
    std::printf("sound: %d labels, %d read, %d more by guesses seen twice\n", good.labels, good.plain,
                good.guessed);
    return joined.wrong.empty() && exchanged.wrong.empty() && broken.wrong.empty() ? 0 : 1;
}
