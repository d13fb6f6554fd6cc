#include "app/gui/gear/record/history_rows.h"
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
