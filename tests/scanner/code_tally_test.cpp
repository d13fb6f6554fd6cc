#include "scanner/files/code_tally.h"

#include <gtest/gtest.h>

namespace scanner {
namespace {

SeenCode code(const std::string& text, HowRead howRead = HowRead::Plain) {
    SeenCode seen;
    seen.text = text;
    seen.howRead = howRead;
    return seen;
}

std::vector<std::string> texts(const std::vector<SeenCode>& codes) {
    std::vector<std::string> found;
    for (const SeenCode& each : codes)
        found.push_back(each.text);
    return found;
}

using Texts = std::vector<std::string>;

TEST(CodeTally, keepsEachTextOnceInTheOrderOfComing) {
    CodeTally tally;
    tally.add({code("B"), code("A"), code("B")});
    tally.add({code("A"), code("C")});
    EXPECT_EQ(texts(tally.believed()), (Texts{"B", "A", "C"}));
    EXPECT_TRUE(tally.doubtful().empty());
}

TEST(CodeTally, guessSeenOnceIsDoubtful) {
    CodeTally tally;
    tally.add({code("A", HowRead::Guessed), code("A", HowRead::Guessed)});
    EXPECT_TRUE(tally.believed().empty());
    EXPECT_EQ(texts(tally.doubtful()), Texts{"A"});
}

TEST(CodeTally, guessOfTwoFramesIsBelieved) {
    CodeTally tally;
    tally.add({code("A", HowRead::Guessed)});
    tally.add({});
    tally.add({code("A", HowRead::Guessed)});
    EXPECT_EQ(texts(tally.believed()), Texts{"A"});
    EXPECT_TRUE(tally.doubtful().empty());
}

TEST(CodeTally, certainReadingReplacesTheGuess) {
    CodeTally tally;
    tally.add({code("A", HowRead::Guessed)});
    tally.add({code("A", HowRead::Region)});
    ASSERT_EQ(texts(tally.believed()), Texts{"A"});
    EXPECT_EQ(tally.believed()[0].howRead, HowRead::Region);
}

} // namespace
} // namespace scanner
