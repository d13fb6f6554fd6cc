#include "scanner/files/code_tally.h"

#include <gtest/gtest.h>

namespace scanner {
namespace {

SeenCode readCode(const std::string& text, HowRead howRead = HowRead::Plain) {
    SeenCode seen;
    seen.text = text;
    seen.howRead = howRead;
    return seen;
}

std::vector<std::string> textsOf(const std::vector<SeenCode>& codes) {
    std::vector<std::string> found;
    for (const SeenCode& each : codes)
        found.push_back(each.text);
    return found;
}

using Texts = std::vector<std::string>;

TEST(CodeTally, keepsEachTextOnceInTheOrderOfComing) {
    CodeTally tally;
    tally.add({readCode("B"), readCode("A"), readCode("B")});
    tally.add({readCode("A"), readCode("C")});
    EXPECT_EQ(textsOf(tally.believed()), (Texts{"B", "A", "C"}));
    EXPECT_TRUE(tally.doubtful().empty());
}

TEST(CodeTally, guessSeenOnceIsDoubtful) {
    CodeTally tally;
    tally.add({readCode("A", HowRead::Guessed), readCode("A", HowRead::Guessed)});
    EXPECT_TRUE(tally.believed().empty());
    EXPECT_EQ(textsOf(tally.doubtful()), Texts{"A"});
}

TEST(CodeTally, guessOfTwoFramesIsBelieved) {
    CodeTally tally;
    tally.add({readCode("A", HowRead::Guessed)});
    tally.add({});
    tally.add({readCode("A", HowRead::Guessed)});
    EXPECT_EQ(textsOf(tally.believed()), Texts{"A"});
    EXPECT_TRUE(tally.doubtful().empty());
}

TEST(CodeTally, certainReadingReplacesTheGuess) {
    CodeTally tally;
    tally.add({readCode("A", HowRead::Guessed)});
    tally.add({readCode("A", HowRead::Region)});
    ASSERT_EQ(textsOf(tally.believed()), Texts{"A"});
    EXPECT_EQ(tally.believed()[0].howRead, HowRead::Region);
}

} // namespace
} // namespace scanner
