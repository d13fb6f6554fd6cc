#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using Log = SmallClub;

TEST_F(Log, isEmptyAtFirst) {
    const Ran ran = run({"log", "--json"});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_TRUE(Json::parse(ran.out)["log"].empty());
}

TEST_F(Log, anEntryIsWrittenListedAndClosed) {
    const Ran added = run({"log-add", "--boat", "teal", "--text", "port bung seeps", "--severity", "stop",
                           "--by", "Bo Lind", "--today", "2026-03-12", "--json"});
    EXPECT_EQ(added.exit, 0) << added.err;
    const std::string entry = Json::parse(added.out)["entry"];
    const Json open = Json::parse(run({"log", "--boat", "Teal", "--json"}).out)["log"];
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open[0]["entry"], entry);
    EXPECT_EQ(open[0]["boat"], "Teal");
    EXPECT_EQ(open[0]["day"], "2026-03-12");
    EXPECT_EQ(open[0]["severity"], "stop");
    EXPECT_TRUE(open[0]["closed"].is_null());

    EXPECT_EQ(
        run({"log-close", entry, "--closing", "bung replaced", "--by", "Ada Thorne", "--today", "2026-03-13"})
            .exit,
        0);
    const Json closed = Json::parse(run({"log", "--json"}).out)["log"];
    EXPECT_EQ(closed[0]["closed"], "2026-03-13");
    EXPECT_EQ(closed[0]["closing"], "bung replaced");
    EXPECT_THAT(run({"log"}).out, testing::StartsWith("0 entries open of 1."));
}

TEST_F(Log, anEntryMayBeAboutAnItem) {
    const Ran added = run({"log-add", "--code", "kd0x pama jg", "--text", "clip stiff", "--json"});
    EXPECT_EQ(added.exit, 0) << added.err;
    EXPECT_EQ(Json::parse(added.out)["code"], knife);
    EXPECT_TRUE(Json::parse(added.out)["boat"].is_null());
}

TEST_F(Log, unknownBoatsItemsAndEntriesAreRefused) {
    const std::string before = content();
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"log-add", "--boat", "Swan", "--text", "lost"},
          {"log-add", "--code", unknownTag, "--text", "lost"},
          {"log-close", "nothing", "--closing", "done"},
          {"log", "--boat", "Swan"}}) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 2) << words[0];
        EXPECT_TRUE(ran.out.empty()) << ran.out;
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

} // namespace
} // namespace small_club
