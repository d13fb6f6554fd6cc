#include "app/text/cautions.h"
#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

/// Each caution where a decision is taken on the command line, and nowhere else.
class Cautions : public SmallClub {
protected:
    static std::string said(const QString& caution) { return caution.toStdString(); }

    Ran importOf(const std::string& file, const std::string& rows) const {
        writeFiles(m_folder / file, {{file, rows}});
        return run({"import", m_folder / file, "--today", today});
    }
    /// For a person to read; Ada and Bo aboard.
    Ran launch(const std::vector<std::string>& codes, std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"check",    "--boat",     "Teal",   "--phase", "launch",
                                       "--driver", "Ada Thorne", "--crew", "Bo Lind", "--codes",
                                       "-",        "--today",    today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines(codes));
    }
    std::string measured() const {
        return write("measured.csv", "point,value\nhull,done\nbow chamber,20\nengine run,60\n"
                                     "air temperature,20\nwater temperature,10\n");
    }
};

TEST_F(Cautions, pressureAfloatIsAFirstEstimate) {
    EXPECT_THAT(launch(wholeKit()).out, Not(HasSubstr("first estimate"))) << "nothing was computed";
    ASSERT_EQ(importOf("points.csv", "boat_class,phase,point,kind,unit\n"
                                     "inflatable,launch,air temperature,measure,°C\n"
                                     "inflatable,launch,water temperature,measure,°C\n")
                  .exit,
              0);
    const Ran ran = launch(wholeKit(), {"--points", measured()});
    EXPECT_THAT(ran.out, HasSubstr(said(app::pressureCaution())));
    // (20 + 101.325) · 283.15 / 293.15 - 101.325, by rules 7
    EXPECT_THAT(ran.out, HasSubstr("bow chamber  20 kPa  about 15.9 kPa afloat, a first estimate"));
}

TEST_F(Cautions, anEngineRunNeedsItsGuards) {
    EXPECT_THAT(launch(wholeKit()).out, HasSubstr(said(app::engineCaution())));
    ASSERT_EQ(launch(wholeKit(), {"--sign", "Ada Thorne", "--urgent", "two swimmers"}).exit, 1);
    const Ran back = run({"check", "--boat", "Teal", "--phase", "return", "--codes", "-", "--today", today},
                         lines(wholeKit()));
    EXPECT_THAT(back.out, HasSubstr(said(app::scanCaution())));
    EXPECT_THAT(back.out, Not(HasSubstr(said(app::engineCaution())))) << "no engine is run there";
}

TEST_F(Cautions, nobodyGoesAfloatWithoutAJacketThatFits) {
    EXPECT_THAT(launch(without(wholeKit(), knife)).out, HasSubstr(said(app::jacketCaution())));
    const Ran complete =
        launch(wholeKit(), {"--points", write("done.csv", "point,value\nhull,done\nbow chamber,20\n")});
    ASSERT_EQ(complete.exit, 0) << complete.out;
    EXPECT_THAT(complete.out, Not(HasSubstr(said(app::jacketCaution()))));
    EXPECT_THAT(complete.out, HasSubstr(said(app::launchCaution())));
    EXPECT_THAT(complete.out, HasSubstr(said(app::fitCaution())));
}

TEST_F(Cautions, kitAndPointsAreAllThatTheBoardKnows) {
    EXPECT_THAT(run({"boats", "--today", today}).out, HasSubstr(said(app::boardCaution())));
}

TEST_F(Cautions, aPlanKnowsNoSizesAndHoldsNothingBackForTheLog) {
    const Ran ran = run({"make-ready", "--today", today});
    EXPECT_THAT(ran.out, HasSubstr(said(app::makeReadyCaution())));
    EXPECT_THAT(ran.out, HasSubstr("It does not know sizes"));
    EXPECT_THAT(ran.out, HasSubstr("an open log entry does not hold an item back"));
}

TEST_F(Cautions, serviceAndReleaseAreForWhoeverMayDoThem) {
    const auto service = [&](const char* rule, std::vector<std::string> more = {}) {
        std::vector<std::string> words{"service",    "--rule",  rule, "--day",   "2026-03-13", "--by",
                                       "Ada Thorne", "--codes", "-",  "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines({towLine}));
    };
    ASSERT_EQ(importOf("life_rules.csv", "kit_type,rule,kind,n,event,source\n"
                                         "tow line,rearm,after_event,,inflated,example\n")
                  .exit,
              0);
    const Ran look = service("yearly look", {"--failed"});
    EXPECT_THAT(look.out, HasSubstr(said(app::serviceCaution())));
    EXPECT_THAT(look.out, Not(HasSubstr(said(app::rearmCaution()))));
    EXPECT_THAT(service("rearm").out, HasSubstr(said(app::rearmCaution())));
    const Ran release = run({"release", towLine, "--by", "Ada Thorne", "--today", today});
    ASSERT_EQ(release.exit, 0) << release.err;
    EXPECT_THAT(release.out, HasSubstr(said(app::serviceCaution())));
    EXPECT_THAT(run({"write-off", knife, "--why", "worn", "--today", today}).out,
                HasSubstr(said(app::writeOffCaution())));
}

TEST_F(Cautions, aToleranceMayNotBeAllowed) {
    const Ran rules = importOf("life_rules.csv", "kit_type,rule,kind,n,tolerance,source\n"
                                                 "flare,retire,from_made,36,14d,example\n");
    EXPECT_THAT(rules.out, HasSubstr(said(app::toleranceCaution())));
    const Ran places = importOf("places.csv", "place\nLoft\n");
    EXPECT_EQ(places.exit, 0);
    EXPECT_THAT(places.out, Not(HasSubstr(said(app::toleranceCaution())))) << "no rule was given";
}

TEST_F(Cautions, aLastingCurveIsNoReasonToLengthenARule) {
    EXPECT_THAT(run({"lasting", "--today", today}).out, HasSubstr(said(app::lastingCaution())));
}

TEST_F(Cautions, theEarlierOfTwoDaysHolds) {
    EXPECT_THAT(run({"due", "--within", "900d", "--today", today}).out, HasSubstr(said(app::dueCaution())));
}

TEST_F(Cautions, noneStandsInADocument) {
    for (const auto& words : {std::vector<std::string>{"boats", "--json"},
                              {"make-ready", "--json"},
                              {"release", towLine, "--json"},
                              {"lasting", "--json"}}) {
        const Ran ran = run(words);
        EXPECT_THAT(ran.out + ran.err, Not(HasSubstr("local rules"))) << words.front();
        EXPECT_THAT(ran.out, Not(HasSubstr("all that is known"))) << words.front();
    }
}

} // namespace
} // namespace small_club
