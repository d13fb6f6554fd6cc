#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;

TEST(Usage, helpListsTheCommandsAndIsFine) {
    const Ran ran = ctl({"--help"});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_TRUE(ran.err.empty());
    for (const char* command : {"create", "import", "export", "read", "check", "boats", "missing", "due",
                                "tags", "scene", "verify", "log", "log-add", "log-close", "history"})
        EXPECT_THAT(ran.out, HasSubstr(std::string("  ") + command + " "));
}

TEST(Usage, helpOfACommandSaysWhatItTakes) {
    const Ran ran = ctl({"check", "--help"});
    EXPECT_EQ(ran.exit, 0);
    for (const char* option : {"--boat", "--phase", "--driver", "--crew", "--from", "--codes", "--points",
                               "--sign", "--urgent", "--at", "--today", "--json"})
        EXPECT_THAT(ran.out, HasSubstr(option));
}

class BadUsage : public testing::TestWithParam<std::vector<std::string>> {};

TEST_P(BadUsage, isOneErrorLineAndExitTwo) {
    const Ran ran = ctl(GetParam());
    EXPECT_EQ(ran.exit, 2);
    EXPECT_TRUE(ran.out.empty()) << ran.out;
    expectOneErrorLine(ran);
}

using Words = std::vector<std::string>;
INSTANTIATE_TEST_SUITE_P(
    Lines, BadUsage,
    testing::Values(Words{}, Words{"launch"}, Words{"--quick"}, Words{"boats"}, Words{"boats", "a", "b"},
                    Words{"boats", "a", "--fast"}, Words{"read"}, Words{"check", "a", "--boat", "Teal"},
                    Words{"check", "a", "--boat", "Teal", "--phase", "wash"},
                    Words{"check", "a", "--boat", "B", "--phase", "launch", "--from", "x", "--codes", "y"},
                    Words{"tags", "a"}, Words{"tags", "a", "--mint", "0"},
                    Words{"tags", "a", "--out", "b", "--size", "2"}, Words{"log-add", "a", "--text", "b"},
                    Words{"log-add", "a", "--boat", "b", "--text", "c", "--severity", "grave"},
                    Words{"end", "a", "boat", "b"}, Words{"end", "a", "radio", "b", "--on", "2026-10-31"},
                    Words{"end", "a", "boat", "b", "--on", "soon"}, Words{"due", "a", "--within", "soon"},
                    Words{"due", "a", "--within", "-1d"}, Words{"due", "a", "--today", "2026-02-30"},
                    Words{"check", "a", "--boat", "b", "--phase", "launch", "--at", "noon"}));

TEST(Usage, anUnknownCommandIsNamed) {
    EXPECT_THAT(ctl({"launch"}).err, HasSubstr("'launch'"));
}

} // namespace
} // namespace small_club
