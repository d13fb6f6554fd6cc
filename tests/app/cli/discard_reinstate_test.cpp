#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;

class LettingGo : public SmallClub {
protected:
    Ran begin(const std::vector<std::string>& codes) {
        return run(
            {"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            lines(codes));
    }
    Ran discard(std::vector<std::string> more = {}, const std::string& reason = "nobody goes out") {
        std::vector<std::string> words{"check",     "--boat", "Teal",    "--phase", "launch",
                                       "--discard", reason,   "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }
};

TEST_F(LettingGo, closesTheUnfinishedCheckAndSaysSo) {
    const Json begun = Json::parse(begin({knife}).out);
    const Ran ran = discard();
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Launch check of Teal"));
    EXPECT_THAT(ran.out, HasSubstr("closed without a signature"));
    const Json next = Json::parse(begin({paddle1}).out);
    EXPECT_NE(next["check"], begun["check"]) << "the next one begins anew";
    EXPECT_EQ(next["best"]["required"], 1) << "and knows nothing of the knife";
}

TEST_F(LettingGo, asJsonNamesWhatWasLetGo) {
    const Json begun = Json::parse(begin({knife}).out);
    const Json told = Json::parse(discard({"--json"}).out);
    EXPECT_EQ(told, Json({{"check", begun["check"]},
                          {"boat", "Teal"},
                          {"phase", "launch"},
                          {"discarded", "nobody goes out"}}));
}

TEST_F(LettingGo, standsInTheHistory) {
    begin({knife});
    discard();
    EXPECT_THAT(run({"history", "Teal", "--json"}).out, HasSubstr("check-closed"));
    EXPECT_THAT(run({"history", knife, "--json"}).out, HasSubstr("tag-seen")) << "what was seen was seen";
}

TEST_F(LettingGo, withNothingToLetGoIsRefused) {
    const std::string before = content();
    const Ran ran = discard();
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("no unfinished check"));
    EXPECT_EQ(content(), before);
}

TEST_F(LettingGo, wantsAReasonInWords) {
    begin({knife});
    const std::string before = content();
    for (const std::string& reason : {std::string("ok"), knife, std::string(" ")}) {
        const Ran ran = discard({}, reason);
        EXPECT_EQ(ran.exit, 2) << reason;
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
    EXPECT_EQ(discard().exit, 0);
}

TEST_F(LettingGo, recordsNothingElseWithIt) {
    begin({knife});
    const std::string before = content();
    for (const auto& other : {std::vector<std::string>{"--sign", "Ada Thorne"},
                              {"--codes", "-"},
                              {"--driver", "Ada Thorne"},
                              {"--urgent", "a drill afloat"},
                              {"--event", "Autumn drill"},
                              {"--crew", "Bo Lind"},
                              {"--from", "."},
                              {"--points", "p.csv"},
                              {"--left", "06:40"},
                              {"--back", "07:40"},
                              {"--hours", "3"},
                              {"--launches", "1"},
                              {"--fuel", "full"},
                              {"--incidents", "none"}}) {
        const Ran ran = discard(other);
        EXPECT_EQ(ran.exit, 2) << other.front();
        EXPECT_THAT(ran.err, HasSubstr("--discard"));
    }
    EXPECT_EQ(content(), before);
}

TEST_F(LettingGo, aCheckInWhichNothingStandsGoesToo) {
    begin({});
    EXPECT_EQ(discard({}, "x").exit, 2) << "a reason that is given says something";
    EXPECT_EQ(discard().exit, 0);
    EXPECT_EQ(discard().exit, 2) << "it is gone";
}

TEST_F(LettingGo, aStocktakeGoesToo) {
    const auto stocktake = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"stocktake", "--place", "Shed", "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines({knife}));
    };
    stocktake({"--codes", "-"});
    EXPECT_EQ(stocktake({"--discard", "wrong place", "--sign", "Ada Thorne"}).exit, 2);
    const Ran ran =
        run({"stocktake", "--place", "sHED", "--discard", "wrong place", "--today", today, "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["place"], "Shed");
    EXPECT_EQ(stocktake({"--discard", "wrong place"}).exit, 2);
}

class Reinstating : public SmallClub {
protected:
    Ran reinstate(const std::string& code, const std::string& why = "found in the van") {
        return run({"reinstate", code, "--why", why, "--by", "Ada Thorne", "--today", today});
    }
};

TEST_F(Reinstating, aWrittenOffItemCountsAgain) {
    ASSERT_EQ(run({"write-off", knife, "--why", "lost", "--today", today}).exit, 0);
    ASSERT_EQ(check(wholeKit()).exit, 1);
    const Ran ran = reinstate(knife);
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("serviceable"));
    EXPECT_THAT(ran.out, HasSubstr("give it a new tag if its old one was destroyed"));
    EXPECT_EQ(check(wholeKit()).exit, 0);
}

TEST_F(Reinstating, whatWasDamagedIsUnserviceableStill) {
    std::vector<std::string> codes = wholeKit();
    codes.push_back(damagedTag); // the radio, shown last
    check(codes);
    ASSERT_EQ(run({"write-off", radio, "--why", "damaged", "--today", today}).exit, 0);
    EXPECT_THAT(reinstate(radio).out, HasSubstr("unserviceable, as it was before"));
}

TEST_F(Reinstating, onlyWhatIsWrittenOffAndForAReasonInWords) {
    const std::string before = content();
    const Ran inUse = reinstate(knife);
    EXPECT_EQ(inUse.exit, 2);
    EXPECT_THAT(inUse.err, HasSubstr("only a written-off item"));
    for (const std::string& why : {std::string("ok"), knife}) {
        const Ran ran = reinstate(writtenOff, why);
        EXPECT_EQ(ran.exit, 2) << why;
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(run({"reinstate", writtenOff, "--today", today}).exit, 2) << "no reason at all";
    EXPECT_EQ(content(), before);
    EXPECT_EQ(reinstate(writtenOff).exit, 0);
}

} // namespace
} // namespace small_club
