#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

/// The club with two paddles in the shed.
class Shed : public SmallClub {
protected:
    Shed() {
        writeFiles(m_folder / "more",
                   {{"items.csv", "code,kit_type,place\nK000000018,paddle,Shed\nK000000026,paddle,Shed\n"}});
        EXPECT_EQ(run({"import", m_folder / "more", "--today", today}).exit, 0);
    }
    Json answer(const Ran& ran) const { return Json::parse(ran.out); }
};

TEST_F(Shed, stocktakeTellsWhatIsNotThere) {
    const Ran ran = run({"stocktake", "--place", "shed", "--codes", "-", "--json", "--today", today},
                        lines({"K000000018", knife, "nonsense"}));
    EXPECT_EQ(ran.exit, 1);
    const Json told = answer(ran);
    EXPECT_EQ(told["phase"], "stocktake");
    EXPECT_EQ(told["place"], "Shed");
    EXPECT_TRUE(told["boat"].is_null());
    EXPECT_TRUE(told["signed_by"].is_null());
    EXPECT_EQ(told["lines"][0]["wanted"], 2);
    EXPECT_EQ(told["lines"][0]["counted"], 1);
    EXPECT_EQ(told["findings"][0]["kind"], "missing");
    EXPECT_EQ(told["findings"][0]["code"], "K000000026");
    EXPECT_EQ(told["findings"][1]["kind"], "extra");
    EXPECT_THAT(told["findings"][1]["reason"].get<std::string>(), HasSubstr("Teal"));
    EXPECT_EQ(told["unread"], Json({"nonsense"}));
    EXPECT_EQ(answer(run({"missing", "--json"}))["missing"].size(), 1U); // not signed: nothing is missed yet
}

TEST_F(Shed, stocktakeSignedMarksWhatIsMissing) {
    const Ran ran =
        run({"stocktake", "--place", "Shed", "--codes", "-", "--sign", "Bo Lind", "--today", today},
            lines({"K000000018"}));
    EXPECT_EQ(ran.exit, 1);
    EXPECT_THAT(ran.out, testing::StartsWith("Seen: 1 of 2 items that should be at Shed."));
    EXPECT_EQ(answer(run({"missing", "--json"}))["missing"].size(), 2U);
    // The twin: all there.
    EXPECT_EQ(run({"stocktake", "--place", "Shed", "--codes", "-", "--sign", "Bo Lind", "--today", today},
                  lines({"K000000018", "K000000026"}))
                  .exit,
              0);
    EXPECT_EQ(answer(run({"missing", "--json"}))["missing"].size(), 1U);
}

TEST_F(Shed, stocktakeWithoutAScanMissesNothing) {
    const std::string before = content();
    const Ran ran = run({"stocktake", "--place", "Shed", "--sign", "Bo Lind"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"stocktake", "--place", "Shed", "--codes", "-"}, lines({"K000000018", "K000000026"})).exit,
              0);
    EXPECT_EQ(run({"stocktake", "--place", "shed", "--sign", "Bo Lind"}).exit, 0); // what was begun is signed
}

TEST_F(Shed, stocktakeOfAPlaceThatIsNoneChangesNothing) {
    const std::string before = content();
    const Ran ran = run({"stocktake", "--place", "Attic", "--codes", "-"}, lines({knife}));
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(content(), before);
}

using Service = SmallClub;

TEST_F(Service, oneRecordForAllThatIsScanned) {
    const Ran ran = run({"service", "--rule", "Yearly look", "--day", "2026-03-10", "--by", "bo lind",
                         "--codes", "-", "--json", "--today", today},
                        lines({towLine, knife, unknownTag}));
    EXPECT_EQ(ran.exit, 1);
    const Json told = Json::parse(ran.out);
    ASSERT_EQ(told["recorded"].size(), 1U);
    EXPECT_EQ(told["recorded"][0]["code"], towLine);
    EXPECT_EQ(told["recorded"][0]["next_due"], "2027-03-10");
    EXPECT_EQ(told["refused"][0]["why"], "no-such-rule");
    EXPECT_EQ(told["refused"][1]["why"], "unknown-tag");
    const Json due = Json::parse(run({"due", "--within", "400d", "--json", "--today", today}).out)["due"];
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due[0]["due"], "2027-03-10");
    EXPECT_EQ(due[0]["anchor"], "service");
}

TEST_F(Service, aFailedRecordWithdrawsTheItem) {
    const auto round = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"service", "--rule", "yearly look", "--by", "Bo Lind",
                                       "--codes", "-",      "--today",     today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines({towLine}));
    };
    EXPECT_EQ(round({"--failed"}).exit, 0);
    const Json held = Json::parse(check(wholeKit()).out)["findings"];
    EXPECT_EQ(held[0]["kind"], "missing");
    EXPECT_EQ(held[1]["kind"], "unserviceable");
    EXPECT_EQ(round({}).exit, 0);
    EXPECT_EQ(check(wholeKit()).exit, 0);
}

TEST_F(Service, badInputIsRefusedWhole) {
    const std::string before = content();
    const auto refused = [&](const std::string& rule, const std::string& day, const std::string& by) {
        const Ran ran =
            run({"service", "--rule", rule, "--day", day, "--by", by, "--codes", "-", "--today", today},
                lines({towLine}));
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    };
    refused("polish", "2026-03-10", "Bo Lind");
    refused("yearly look", "2026-03-32", "Bo Lind");
    refused("yearly look", "2026-03-15", "Bo Lind"); // tomorrow
    refused("yearly look", "2026-03-10", "Nobody");
    EXPECT_EQ(content(), before);
}

using Aboard = SmallClub;

TEST_F(Aboard, tellsWhatWasThereAndWhoSigned) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne", "--at", "2026-03-14T07:00:00Z"}).exit, 0);
    const Json told =
        Json::parse(run({"aboard", "--boat", "Teal", "--on", "2026-03-14T08:00:00Z", "--json"}).out);
    EXPECT_EQ(told["out"], true);
    EXPECT_EQ(told["launch"]["signed_by"], "Ada Thorne");
    EXPECT_EQ(told["launch"]["outcome"], "complete");
    EXPECT_EQ(told["people"], Json({"Ada Thorne", "Bo Lind"}));
    EXPECT_EQ(told["aboard"].size(), wholeKit().size());
    EXPECT_EQ(told["aboard"][0]["in_date"], true);
    const Json earlier =
        Json::parse(run({"aboard", "--boat", "Teal", "--on", "2026-03-14T06:00:00Z", "--json"}).out);
    EXPECT_TRUE(earlier["launch"].is_null());
    EXPECT_EQ(earlier["out"], false);
    expectOneErrorLine(run({"aboard", "--boat", "Teal", "--on", "yesterday"}));
    expectOneErrorLine(run({"aboard", "--boat", "Gull", "--on", "2026-03-14T06:00:00Z"}));
}

using Event = SmallClub;

TEST_F(Event, talliesWhatWentOutAndCameBack) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne", "--event", "Regatta"}).exit, 0);
    ASSERT_EQ(run({"check", "--boat", "Teal", "--phase", "return", "--event", "Regatta", "--codes", "-",
                   "--sign", "Bo Lind", "--today", today, "--hours", "1.5", "--fuel", "filled"},
                  lines(without(wholeKit(), radio)))
                  .exit,
              1);
    const Ran ran = run({"missing", "--event", "regatta", "--json"});
    EXPECT_EQ(ran.exit, 1);
    const Json told = Json::parse(ran.out);
    ASSERT_EQ(told["missing"].size(), 1U); // Coot's knife was missing before
    EXPECT_EQ(told["missing"][0]["code"], radio);
    EXPECT_EQ(told["boats"][0]["boat"], "Teal");
    EXPECT_EQ(told["boats"][0]["out"].size(), wholeKit().size());
    EXPECT_EQ(told["boats"][0]["not_returned"], Json({radio}));
    const Ran unknown = run({"missing", "--event", "gala"});
    EXPECT_EQ(unknown.exit, 2);
    expectOneErrorLine(unknown);
}

TEST_F(Event, aTripIsToldOnReturnOnly) {
    expectOneErrorLine(check(wholeKit(), {"--hours", "1"}));
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "return", "--hours", "many", "--codes", "-"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
}

using Kit = SmallClub;

TEST_F(Kit, thatArrivesGetsItsTags) {
    const Ran ran = run({"receive", "--kit-type", "paddle", "--count", "2", "--place", "shed", "--out",
                         m_folder / "tags.pdf", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    const Json told = Json::parse(ran.out);
    ASSERT_EQ(told["items"].size(), 2U);
    EXPECT_EQ(told["items"][0]["place"], "Shed");
    EXPECT_GT(std::filesystem::file_size(m_folder / "tags.pdf"), 1000U);
    const std::string before = content();
    expectOneErrorLine(run({"receive", "--kit-type", "anvil"}));
    EXPECT_EQ(content(), before);
}

TEST_F(Kit, isNeitherRegisteredNorGivenATagThatCannotBePrinted) {
    const std::string before = content(), nowhere = m_folder / "no such folder" / "tags.pdf";
    for (const Ran& ran : {run({"receive", "--kit-type", "paddle", "--place", "shed", "--out", nowhere}),
                           run({"retag", knife, "--out", nowhere})}) {
        EXPECT_EQ(ran.exit, 3);
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"retag", knife, "--out", m_folder / "tag.pdf"}).exit, 0);
    EXPECT_NE(content(), before);
}

TEST_F(Kit, withANewTagKeepsItsPlace) {
    const Json told = Json::parse(run({"retag", knife, "--by", "Bo Lind", "--json"}).out);
    auto codes = without(wholeKit(), knife);
    EXPECT_EQ(check(codes).exit, 1);
    codes.push_back(told["tag"]);
    EXPECT_EQ(check(codes).exit, 0);
}

TEST_F(Kit, withANewTagIsNamedByWhatIsPrintedOnIt) {
    const auto inWords = [](const std::string& code) {
        return code.substr(0, 4) + ' ' + code.substr(4, 4) + ' ' + code.substr(8);
    };
    const auto say = [&](const std::vector<std::string>& codes) {
        return run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--crew",
                    "Bo Lind", "--codes", "-", "--today", today},
                   lines(codes))
            .out;
    };
    EXPECT_THAT(say(wholeKit()), HasSubstr(inWords(knife)));
    const std::string tag = Json::parse(run({"retag", knife, "--json"}).out)["tag"];
    auto codes = without(wholeKit(), knife);
    codes.push_back(tag);
    const std::string said = say(codes);
    EXPECT_THAT(said, HasSubstr(inWords(tag)));
    EXPECT_THAT(said, Not(HasSubstr(inWords(knife))));
    // What somebody typed or wrote stays as it is: the old tag is the one that is read in vain.
    EXPECT_THAT(say({inWords(knife)}), HasSubstr(inWords(knife)));
    ASSERT_EQ(run({"log-add", "--boat", "Teal", "--text", "tag " + inWords(knife) + " found"}).exit, 0);
    EXPECT_THAT(run({"log"}).out, HasSubstr("tag " + inWords(knife) + " found"));
    // A document names the item as the register does, for ever.
    const std::string document = check(codes).out;
    EXPECT_THAT(document, HasSubstr(knife));
    EXPECT_THAT(document, Not(HasSubstr(tag)));
}

TEST_F(Kit, thatIsWrittenOffGetsNoNewTag) {
    EXPECT_EQ(run({"retag", knife}).exit, 0);
    ASSERT_EQ(run({"write-off", knife, "--why", "worn", "--today", today}).exit, 0);
    const std::string before = content();
    const Ran ran = run({"retag", knife});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(content(), before);
}

TEST_F(Kit, arrivesWithDaysThatCanBe) {
    const auto receive = [&](std::vector<std::string> days) {
        std::vector<std::string> words{"receive", "--kit-type", "paddle", "--place",
                                       "shed",    "--today",    today};
        words.insert(words.end(), days.begin(), days.end());
        return run(words);
    };
    const std::string before = content();
    for (const auto& days :
         std::vector<std::vector<std::string>>{{"--made", "2026-04"},
                                               {"--made", "2027"},
                                               {"--first-use", "2026-03-15"},
                                               {"--made", "2026-02-02", "--first-use", "2026-02-01"}}) {
        const Ran ran = receive(days);
        EXPECT_EQ(ran.exit, 2) << days[1];
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
    EXPECT_EQ(receive({"--made", "2026-03"}).exit, 0) << "it may be of this month";
    EXPECT_EQ(receive({"--made", "2026", "--first-use", "2026-03-14"}).exit, 0);
    EXPECT_EQ(receive({"--made", "2026-02-02", "--first-use", "2026-02"}).exit, 0) << "within that month";
    EXPECT_EQ(receive({"--stamped", "2030-01"}).exit, 0);
}

TEST_F(Kit, aLabelsDaysAreLookedAtToo) {
    const auto receive = [&](const std::string& label, std::vector<std::string> more = {}) {
        std::vector<std::string> words{"receive",  "--kit-type", "paddle",  "--place", "shed",
                                       "--labels", "-",          "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, label + "\n");
    };
    const std::string before = content();
    for (const Ran& ran : {receive("(01)09521101530001(11)270101(21)A9"),
                           receive("(01)09521101530001(11)260101(21)A9", {"--first-use", "2025-01-01"})}) {
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
    EXPECT_EQ(receive("(01)09521101530001(11)260101(21)A9", {"--first-use", "2026-02-01"}).exit, 0);
}

TEST_F(Kit, aBatchThatNamesOneSerialTwiceIsRefused) {
    const std::string one = "0109521101530001"
                            "21A1",
                      other = "0109521101530001"
                              "21A2";
    const std::string before = content();
    const std::vector<std::string> words{"receive", "--kit-type", "paddle", "--place",
                                         "shed",    "--labels",   "-"};
    const Ran ran = run(words, lines({one, other, one}));
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("serial A1 stands twice"));
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run(words, lines({one, other})).exit, 0);
}

TEST_F(Kit, blanksAreNobody) {
    const std::string before = content();
    for (const char* blanks : {"", "  "}) {
        const Ran ran = run({"write-off", knife, "--why", "worn", "--by", blanks});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    expectOneErrorLine(run({"missing", "--event", ""}));
    expectOneErrorLine(run({"replace", "--out", ""}));
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"write-off", knife, "--why", "worn", "--by", "Bo Lind"}).exit, 0);
}

TEST_F(Kit, isWrittenOffAndReleased) {
    EXPECT_EQ(run({"write-off", knife, "--why", "worn", "--today", today}).exit, 0);
    EXPECT_EQ(check(wholeKit()).exit, 1);
    expectOneErrorLine(run({"write-off", knife, "--why", "worn", "--today", today}));
    expectOneErrorLine(run({"release", knife}));
}

TEST_F(Event, aTripIsToldInSeveralGoes) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    const auto back = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"check",   "--boat", "Teal",    "--phase", "return",
                                       "--codes", "-",      "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines({radio}));
    };
    const auto used = [&] {
        EXPECT_EQ(run({"export", m_folder / "out"}).exit, 0);
        return textOf(m_folder / "out" / "use.csv");
    };
    ASSERT_EQ(back({"--hours", "1.5", "--launches", "3", "--incidents", "capsized once"}).exit, 1);
    ASSERT_EQ(back({"--fuel", "five litres"}).exit, 1);
    EXPECT_THAT(used(), HasSubstr(radio + ",2026-03-14,1.5,3")) << "what is not told again stays";
    ASSERT_EQ(back({"--hours", "2"}).exit, 1);
    EXPECT_THAT(used(), HasSubstr(radio + ",2026-03-14,2,3"));
    EXPECT_THAT(run({"history", "Teal", "--json"}).out, HasSubstr("capsized once"));
    const Ran ahead = back({"--back", "2031-01-01T00:00:00Z"});
    EXPECT_EQ(ahead.exit, 2);
    expectOneErrorLine(ahead);
}

TEST_F(Shed, aServiceRoundTakesBackWhatTheUndoTagFollows) {
    const Json told = answer(run(
        {"service", "--rule", "yearly look", "--by", "Bo Lind", "--codes", "-", "--json", "--today", today},
        lines({towLine, "nonsense", "C00000004S"})));
    EXPECT_TRUE(told["unread"].empty());
    EXPECT_EQ(told["recorded"].size(), 1U);
}

} // namespace
} // namespace small_club
