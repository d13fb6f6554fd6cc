#include "tests/app/cli/small_club.h"

#include <set>

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

/// The club with a shed of spare kit. Teal is whole; Coot has nothing aboard. Coot wants two jackets, two
/// paddles, a knife and a tow line; a radio is not required.
class Gathering : public SmallClub {
protected:
    void addKit(const std::string& rows) {
        writeFiles(m_folder / "more", {{"items.csv", "code,kit_type,boat,place,first_use\n" + rows}});
        ASSERT_EQ(run({"import", m_folder / "more", "--today", today}).exit, 0);
    }
    Json plan(std::vector<std::string> more, int exit) {
        std::vector<std::string> words{"make-ready", "--json", "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, exit) << ran.err;
        EXPECT_EQ(ran.err, "");
        return Json::parse(ran.out);
    }
    static const Json& boat(const Json& plan, const std::string& name) {
        for (const Json& each : plan["boats"])
            if (each["boat"] == name) return each;
        throw std::runtime_error("no boat " + name);
    }

    const std::string allButTheKnife =
        "K000000018,paddle,,Shed,\nK000000026,paddle,,Shed,\nK000000034,life jacket,,Shed,\n"
        "K000000042,life jacket,,Shed,\nK000000050,tow line,,Shed,2026-01-01\n";
};

TEST_F(Gathering, saysWhatIsShortOfABoatLeftOut) {
    addKit(allButTheKnife);
    const Json told = plan({}, 1);
    EXPECT_EQ(boat(told, "Teal")["complete"], true);
    EXPECT_EQ(boat(told, "Teal")["short"], Json::array());
    EXPECT_EQ(boat(told, "Coot")["complete"], false);
    EXPECT_EQ(boat(told, "Coot")["short"],
              Json::array({{{"kit_type", "knife"}, {"wanted", 1}, {"have", 0}}}));
    EXPECT_EQ(told["moves"], Json::array()); // nothing is carried to a boat that stays incomplete
    EXPECT_EQ(told["goals"]["priority_weight"], 1);
    EXPECT_EQ(told["goals"]["other_lines"], 1); // Teal's radio
    EXPECT_EQ(told["bounds"]["priority_weight"], 1);
    EXPECT_EQ(told["proven"], true);
}

TEST_F(Gathering, listsTheMovesThatCompleteBothBoats) {
    addKit(allButTheKnife + "K00000009T,knife,,Shed,\n");
    const Json told = plan({}, 0);
    EXPECT_EQ(told["goals"]["priority_weight"], 2);
    ASSERT_EQ(told["moves"].size(), 6U);
    std::set<std::string> codes;
    for (const Json& move : told["moves"]) {
        codes.insert(move["code"].get<std::string>());
        EXPECT_EQ(move["from"], "Shed");
        EXPECT_EQ(move["to"], "Coot");
        EXPECT_EQ(move["kit_type"], move["for_kit_type"]);
    }
    EXPECT_EQ(codes, (std::set<std::string>{"K000000018", "K000000026", "K000000034", "K000000042",
                                            "K000000050", "K00000009T"}));
    EXPECT_EQ(told["goals"]["trips"], 1);
    EXPECT_EQ(told["goals"]["away"], 0);                    // what has no home boat is nowhere away
    EXPECT_EQ(told["moves"][0]["kit_type"], "life jacket"); // the manifest's order
    const Ran text = run({"make-ready", "--today", today});
    EXPECT_EQ(text.exit, 0);
    EXPECT_THAT(text.out, HasSubstr("2 of 2 boats can be made complete."));
    EXPECT_THAT(text.out, HasSubstr("6 moves on 1 trip:\n  From Shed to Coot:\n    [ ] "));
    EXPECT_THAT(text.out, HasSubstr("K000 0000 9T  knife"));
    EXPECT_THAT(text.out, Not(HasSubstr("safe")));
}

TEST_F(Gathering, goesByTheDay) {
    addKit(allButTheKnife + "K00000009T,knife,,Shed,\n"); // the tow lines want a look each year
    EXPECT_EQ(run({"make-ready", "--today", "2026-06-01"}).exit, 0);
    const Ran later = run({"make-ready", "--today", "2026-06-02", "--json"}); // Teal's is overdue
    EXPECT_EQ(later.exit, 1);
    EXPECT_EQ(Json::parse(later.out)["goals"]["priority_weight"], 1);
}

TEST_F(Gathering, aBoatThatIsOutIsNotPlannedAndKeepsItsKit) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    addKit(allButTheKnife);
    const Json told = plan({}, 1);
    EXPECT_EQ(told["out"], Json({"Teal"}));
    ASSERT_EQ(told["boats"].size(), 1U);
    EXPECT_EQ(told["boats"][0]["short"][0]["kit_type"], "knife");
}

TEST_F(Gathering, nothingButABoatThatIsOutIsNoAnswer) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    addKit(allButTheKnife + "K00000009T,knife,,Shed,\n");
    const Json told = plan({"--boats", "Teal"}, 1);
    EXPECT_EQ(told["out"], Json({"Teal"}));
    EXPECT_EQ(told["boats"], Json::array());
    const Ran text = run({"make-ready", "--boats", "Teal", "--today", today});
    EXPECT_EQ(text.exit, 1);
    EXPECT_THAT(text.out, HasSubstr("No boat is in to be made ready.\nOut, so neither planned nor is their "
                                    "kit on hand: Teal."));
    const Json coot = plan({"--boats", "Coot"}, 0); // the twin
    EXPECT_EQ(coot["out"], Json::array()) << "Teal was not asked for";
    EXPECT_EQ(coot["boats"].size(), 1U);
    EXPECT_EQ(plan({"--boats", "Coot", "Teal"}, 0)["out"], Json({"Teal"}));
}

TEST_F(Gathering, aBoatOfNoPriorityIsPlannedAndToldLikeTheOthers) {
    writeFiles(m_folder / "last", {{"boats.csv", "boat,priority\nCoot,0\n"}});
    ASSERT_EQ(run({"import", m_folder / "last", "--today", today}).exit, 0);
    addKit(allButTheKnife);
    const Json left = plan({}, 1);
    EXPECT_EQ(boat(left, "Coot")["short"],
              Json::array({{{"kit_type", "knife"}, {"wanted", 1}, {"have", 0}}}));
    EXPECT_EQ(boat(left, "Coot")["other_short"],
              Json::array({{{"kit_type", "radio"}, {"wanted", 1}, {"have", 0}}}));
    EXPECT_THAT(run({"make-ready", "--today", today}).out,
                HasSubstr("▲ Coot: left out, short of knife (0 of 1), also with all that is left over; not "
                          "required, and short: radio (0 of 1)"));
    addKit("K00000009T,knife,,Shed,\n");
    EXPECT_EQ(boat(plan({}, 0), "Coot")["complete"], true); // the twin
}

TEST_F(Gathering, theLeastSecondsAreThoseOfTheDocument) {
    EXPECT_EQ(run({"make-ready", "--seconds", "0.1", "--today", today}).exit, 1);
    for (const char* seconds : {"0.09", "0", "86401"})
        EXPECT_EQ(run({"make-ready", "--seconds", seconds, "--today", today}).exit, 2) << seconds;
}

TEST_F(Gathering, kitIsWhereItWasSeenLast) {
    addKit(allButTheKnife + "K00000009T,knife,,Shed,\n");
    ASSERT_EQ(run({"check", "--boat", "Coot", "--phase", "launch", "--codes", "-", "--today", today},
                  lines({"K00000009T"}))
                  .exit,
              1);
    EXPECT_EQ(plan({}, 0)["moves"].size(), 5U); // the knife is aboard already
    writeFiles(m_folder / "again", {{"items.csv", "code,place,boat\nK00000009T,-,Teal\n"}});
    ASSERT_EQ(run({"import", m_folder / "again", "--today", today}).exit, 0);
    const Json told = plan({}, 0); // a home given since is where it is
    EXPECT_EQ(told["moves"].size(), 6U);
    EXPECT_EQ(told["goals"]["away"], 1);
}

TEST_F(Gathering, goesOnlyByThePlacesAndBoatsAskedFor) {
    addKit(allButTheKnife + "K00000009T,knife,,Shed,\n");
    writeFiles(m_folder / "places", {{"places.csv", "place\nLoft\n"}});
    ASSERT_EQ(run({"import", m_folder / "places", "--today", today}).exit, 0);
    EXPECT_EQ(plan({"--place", "loft"}, 1)["goals"]["priority_weight"], 1);
    EXPECT_EQ(plan({"--place", "loft", "shed"}, 0)["goals"]["priority_weight"], 2);
    const Json coot = plan({"--place", "Loft", "--boats", "coot"}, 1); // Teal's kit stays where it is
    ASSERT_EQ(coot["boats"].size(), 1U);
    EXPECT_EQ(coot["boats"][0]["short"].size(), 4U);
    for (const auto& words : {std::vector<std::string>{"make-ready", "--place", "Attic"},
                              {"make-ready", "--boats", "Gull"},
                              {"make-ready", "--seconds", "no"}}) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 2);
        EXPECT_EQ(ran.out, "");
        expectOneErrorLine(ran);
    }
}

} // namespace
} // namespace small_club
