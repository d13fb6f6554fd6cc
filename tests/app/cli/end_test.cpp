#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

// docs/command-line.md, "end" and "retag"; docs/rules.md, "No longer here".

class End : public SmallClub {
protected:
    Ran end(const std::string& kind, const std::string& name, std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"end", kind, name, "--on", today, "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }
    /// Coot's missing knife gets its home on Teal.
    void emptyCoot() const {
        writeFiles(m_folder / "more", {{"items.csv", "code,boat\n" + cootKnife + ",Teal\n"}});
        ASSERT_EQ(run({"import", m_folder / "more", "--today", today}).exit, 0);
    }
    void keepNoBoatAtTheShed() const {
        writeFiles(m_folder / "kept", {{"boats.csv", "boat,place\nTeal,-\nCoot,-\n"}});
        ASSERT_EQ(run({"import", m_folder / "kept", "--today", today}).exit, 0);
    }
    static inline const std::string nextDay = "2026-03-15";
};

TEST_F(End, ofABoatTakesItFromTheBoardTheDayAfter) {
    emptyCoot();
    const Ran ran = end("boat", "coot", {"--by", "Bo Lind", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out), (Json{{"boat", "Coot"}, {"until", today}}));
    EXPECT_THAT(run({"boats", "--today", today}).out, HasSubstr("Coot"));
    EXPECT_THAT(run({"boats", "--today", nextDay}).out, Not(HasSubstr("Coot")));
    EXPECT_THAT(run({"boats", "--today", nextDay}).out, HasSubstr("Teal"));
    EXPECT_EQ(run({"history", "Coot"}).exit, 0);
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
    const std::string before = content();
    const Ran check =
        run({"check", "--boat", "Coot", "--phase", "launch", "--codes", "-", "--today", nextDay});
    EXPECT_EQ(check.exit, 2);
    expectOneErrorLine(check);
    EXPECT_THAT(check.err, HasSubstr("'Coot' is no longer here: the last day was 2026-03-14"));
    EXPECT_EQ(content(), before);
}

TEST_F(End, isRefusedWhileKitIsThere) {
    const std::string before = content();
    const Ran ran = end("boat", "Teal");
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("'Teal': 7, such as"));
    EXPECT_THAT(ran.err, HasSubstr("move it first"));
    const Ran place = end("place", "Shed");
    EXPECT_EQ(place.exit, 2);
    expectOneErrorLine(place);
    EXPECT_THAT(place.err, HasSubstr("boats are still kept at 'Shed': "));
    EXPECT_EQ(content(), before);
    keepNoBoatAtTheShed();
    EXPECT_EQ(end("place", "Shed").exit, 0) << "what is written off stays where it is";
}

TEST_F(End, ofAPersonIsForNoMoreNames) {
    ASSERT_EQ(end("person", "Bo Lind").exit, 0);
    EXPECT_EQ(check(wholeKit()).exit, 0) << "the last day";
    const std::string before = content();
    for (const char* option : {"--crew", "--driver", "--sign"}) {
        const Ran ran = run({"check", "--boat", "Coot", "--phase", "launch", option, "bo lind", "--codes",
                             "-", "--today", nextDay});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr("'Bo Lind' is no longer here: the last day was 2026-03-14 (" +
                                       std::string(option)));
    }
    for (const auto& words : std::vector<std::vector<std::string>>{
             {"release", knife, "--by", "Bo Lind", "--today", nextDay},
             {"stocktake", "--place", "Shed", "--codes", "-", "--sign", "Bo Lind", "--today", nextDay}})
        EXPECT_THAT(run(words).err, HasSubstr("'Bo Lind' is no longer here"));
    EXPECT_EQ(content(), before);
    const Ran scanned =
        run({"check", "--boat", "Coot", "--phase", "launch", "--codes", "-", "--today", nextDay, "--json"},
            lines({boTag, adaTag}));
    EXPECT_EQ(Json::parse(scanned.out)["unread"], Json::array({boTag}));
    EXPECT_EQ(run({"history", "Bo Lind"}).exit, 0);
}

TEST_F(End, whoWentOutMaySignTheReturn) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Bo Lind"}).exit, 0);
    ASSERT_EQ(end("person", "Bo Lind").exit, 0);
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "return", "--crew", "Bo Lind", "--sign",
                         "Bo Lind", "--codes", "-", "--today", nextDay},
                        lines(wholeKit()));
    EXPECT_EQ(ran.exit, 0) << ran.err;
}

TEST_F(End, ofAPlaceIsForNoMoreStocktakes) {
    keepNoBoatAtTheShed();
    ASSERT_EQ(end("place", "Shed").exit, 0);
    const auto stocktake = [&](const std::string& day) {
        return run({"stocktake", "--place", "Shed", "--codes", "-", "--today", day});
    };
    EXPECT_EQ(stocktake(today).exit, 0);
    const std::string before = content();
    const Ran ran = stocktake(nextDay);
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(content(), before);
    EXPECT_THAT(run({"make-ready", "--place", "Shed", "--today", nextDay}).err,
                HasSubstr("'Shed' is no longer here"));
}

TEST_F(End, ofWhatIsNotThereIsRefused) {
    const std::string before = content();
    for (const char* kind : {"boat", "person", "place"}) {
        const Ran ran = end(kind, "Swan");
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

using Retag = SmallClub;

TEST_F(Retag, ofABoatAPersonAndAPlaceIsByNameOrTag) {
    const auto retag = [&](const std::string& what) {
        const Ran ran = run({"retag", what, "--by", "Bo Lind", "--json"});
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return Json::parse(ran.out);
    };
    const Json boat = retag("teal"), person = retag(adaTag), place = retag("Shed");
    EXPECT_EQ(boat["boat"], "Teal");
    EXPECT_EQ(person["person"], "Ada Thorne");
    EXPECT_EQ(place["place"], "Shed");
    for (const Json& told : {boat, person, place})
        EXPECT_TRUE(told["file"].is_null());
    // The old tag leads nowhere, the new one does.
    const std::string tag = boat["tag"];
    EXPECT_EQ(run({"history", tealTag}).exit, 2);
    EXPECT_EQ(run({"history", tag}).exit, 0);
    EXPECT_THAT(run({"retag", "Teal"}).out, HasSubstr("Teal has the new tag B"));
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(Retag, ofANameThatSeveralHaveAsksForTheTag) {
    writeFiles(m_folder / "more", {{"places.csv", "place,tag\nTeal,S00000003F\n"}});
    ASSERT_EQ(run({"import", m_folder / "more", "--today", today}).exit, 0);
    const std::string before = content();
    const Ran ran = run({"retag", "Teal"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("boat BVWM V0JQ QG, place S000 0000 3F"));
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"retag", tealTag}).exit, 0);
}

} // namespace
} // namespace small_club
