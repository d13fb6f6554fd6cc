#include "app/gui/gear/record/history_rows.h"
#include "app/gui/theme/language.h"
#include "app/text/history_words.h"
#include "core/answers/history.h"
#include "core/check/boat_check.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"

#include "core/club/club.h"
#include "tests/app/gui/gear/plan_pages.h"

namespace {

class HistoryWords : public support::PlanPages {};

std::vector<QString> wordsOf(const std::vector<core::HistoryLine>& history) {
    std::vector<QString> words;
    for (const core::HistoryLine& line : history)
        words.push_back(app::inWords(line));
    return words;
}

bool contains(const std::vector<QString>& words, const QString& part) {
    return std::any_of(words.begin(), words.end(), [&](const QString& each) { return each.contains(part); });
}

} // namespace

TEST_F(HistoryWords, aBoatsCheckIsToldFromBeginningToSignature) {
    auto club = core::Club::open(file());
    ASSERT_TRUE(club);
    const auto check = club->checks().open("Grebe", core::Phase::Launch, moment());
    ASSERT_TRUE(check);
    ASSERT_TRUE(club->checks().giveNames(check->check, {"Petra Lund"}, moment()));
    ASSERT_TRUE(club->checks().scan(check->check, core::ScannedText::typed("KD0XPAMAJG"), core::SeenBy::Typed,
                                    moment()));
    ASSERT_TRUE(club->checks().sign(check->check, "Petra Lund", "man overboard", moment()));
    const auto boat = wordsOf(*club->answers().history("Grebe"));
    for (const char* part : {"launch check of Grebe begun", "aboard: Petra Lund",
                             "launch check signed: kit incomplete; urgent: man overboard"})
        EXPECT_TRUE(contains(boat, part)) << part;
    EXPECT_TRUE(contains(wordsOf(*club->answers().history("KD0XPAMAJG")), "seen in a check, typed"));
}

TEST_F(HistoryWords, anItemIsToldFromTheRegisterToItsEnd) {
    auto club = core::Club::open(file());
    ASSERT_TRUE(club);
    ASSERT_TRUE(club->kit().writeOff("KGYD21XNA5", "worn", "Joss Iveny", moment()));
    const auto words = wordsOf(*club->answers().history("KGYD21XNA5"));
    EXPECT_TRUE(contains(words, "entered in the register"));
    EXPECT_TRUE(contains(words, "float test on 21 June 2025: passed, by Joss Iveny"));
    EXPECT_EQ(words.back(), "written off: worn");
}

TEST_F(HistoryWords, aPersonsMeasuresAreNotTold) {
    for (const QString& line : wordsOf(*stored().answers().history("Tobin Ashe")))
        for (const char* measure : {"78", "101", "mass"})
            EXPECT_FALSE(line.contains(measure)) << line.toStdString();
    EXPECT_FALSE(stored().answers().history("Tobin Ashe")->empty());
}

// The register's columns in the words of its forms: "first_use" is "first used" there.
TEST_F(HistoryWords, columnsAndChoicesAreCalledAsInTheForms) {
    core::HistoryLine line{.recordedAt = moment().at};
    line.kind = "item";
    line.body =
        R"({"row":{"code":"KD0XPAMAJG"},"set":{"first_use":"2025-04","kit_type":"knife","later":"x"}})";
    EXPECT_EQ(app::inWords(line), "entered in the register: kit type: knife, first used: 2025-04, later: x");
    line.kind = "boat";
    line.body = R"({"row":{"boat":"Grebe"},"set":{"check_every_days":"14","place":"Boathouse"}})";
    EXPECT_EQ(app::inWords(line), "written in the register: lies at: Boathouse, check every: 14 days");
    line.kind = "point";
    line.body = R"({"row":{"boat":"Grebe","point":"hull"},"set":{"kind":"look","required":"no"}})";
    EXPECT_EQ(app::inWords(line), "point hull: how it is checked: a look, required: no");
    line.kind = "life_rule";
    line.body = R"({"row":{"rule":"age"},"set":{"kind":"from_made","n":"120","tolerance":"end_of_month"}})";
    EXPECT_EQ(app::inWords(line), "written in the register: kind of rule: ends by age, how many: 120 months, "
                                  "tolerance: end of the month");
    line.kind = "manifest_line";
    line.body = R"({"gone":true,"row":{"boat":"Grebe","kit_type":"knife"},"set":{}})";
    EXPECT_EQ(app::inWords(line), "manifest, knife: removed");
}

TEST_F(HistoryWords, theGermanWindowNamesColumnsInGerman) {
    app::speak("de");
    const auto words = wordsOf(*stored().answers().history("KGYD21XNA5"));
    const auto boat = wordsOf(*stored().answers().history("Grebe"));
    app::speak("en");
    EXPECT_TRUE(contains(words, "Art: ")) << words.front().toStdString();
    for (const QString& line : words)
        for (const char* english : {"kit type", "kit_type", "first use", "stamped:", "made:", "boat:"})
            EXPECT_FALSE(line.contains(english)) << line.toStdString();
    for (const QString& line : boat)
        for (const char* english : {"boat class", "priority", "place:"})
            EXPECT_FALSE(line.contains(english)) << line.toStdString();
}

TEST_F(HistoryWords, newestStandsFirstAndAKindFromTheFutureIsNamed) {
    core::HistoryLine line{.recordedAt = moment().at};
    line.kind = "moon-landed";
    line.body = "{}";
    EXPECT_EQ(app::inWords(line), "moon-landed");
    core::HistoryLine later = line;
    later.kind = "later";
    const auto rows = app::linesOf({line, later}, today());
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows.front().title, "Later");
}
