#include "core/answers/history.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// docs/command-line.md, `history`: everything recorded about a subject, as it was recorded.

FoundFact fact(const std::string& stamp, const std::string& kind) {
    FoundFact found{stamp, {.recordedAt = Instant::fromMillis(0)}};
    found.line.kind = kind;
    return found;
}

std::vector<std::string> kinds(std::vector<FoundFact> facts) {
    std::vector<std::string> all;
    for (const HistoryLine& line : historyOf(std::move(facts)))
        all.push_back(line.kind);
    return all;
}

TEST(History, oldestStandsFirst) {
    EXPECT_THAT(kinds({fact("3", "check-signed"), fact("1", "item"), fact("2", "tag-seen")}),
                ElementsAre("item", "tag-seen", "check-signed"));
    EXPECT_THAT(kinds({}), IsEmpty());
}

TEST(History, aFactThatWasFoundTwiceIsToldOnce) {
    EXPECT_THAT(kinds({fact("2", "tag-seen"), fact("1", "item"), fact("2", "tag-seen")}),
                ElementsAre("item", "tag-seen"));
    EXPECT_THAT(kinds({fact("2", "tag-seen"), fact("1", "tag-seen")}), ElementsAre("tag-seen", "tag-seen"))
        << "two facts of one kind are two";
}

TEST(History, aLineIsToldAsItIs) {
    FoundFact found = fact("1", "item");
    found.line.recordedAt = Instant::fromMillis(5);
    found.line.at = Instant::fromMillis(4);
    found.line.machine = "machine";
    found.line.seq = 3;
    found.line.by = "Ada Marsh";
    found.line.body = "{}";
    const auto line = historyOf({found}).at(0);
    EXPECT_EQ(line.recordedAt, Instant::fromMillis(5));
    EXPECT_EQ(line.at, Instant::fromMillis(4));
    EXPECT_EQ(line.machine, "machine");
    EXPECT_EQ(line.seq, 3);
    EXPECT_EQ(line.by, "Ada Marsh");
    EXPECT_EQ(line.body, "{}");
}

} // namespace
} // namespace core
