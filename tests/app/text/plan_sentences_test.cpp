#include "app/text/plan_sentences.h"

#include <gtest/gtest.h>

namespace {

core::CalendarDay day(int year, int month, int ofMonth) {
    return *core::CalendarDay::from(year, month, ofMonth);
}

core::ReplacementPlan threeYears() {
    return {.today = day(2026, 3, 14), .end = day(2029, 3, 13), .question = {}, .rows = {}, .budget = {}};
}

TEST(PlanSentences, tellTheChanceOfBeingShortNowAndOnTheFirstShortDay) {
    core::ReplacementRow row;
    row.firstShort = day(2027, 4, 1);
    row.chances = {
        {day(2026, 3, 14), 13, 0.0321}, {day(2027, 4, 1), 8, 0.3766094159}, {day(2029, 3, 13), 8, 0.71}};
    EXPECT_EQ(app::chancesInWords(row, threeYears()), "short now? 3.2 %; short on 1 April 2027? 38 %");
}

TEST(PlanSentences, tellTheChanceAtTheHorizonsEndOfWhatIsEnough) {
    core::ReplacementRow row;
    row.chances = {{day(2026, 3, 14), 13, 0}, {day(2028, 4, 1), 12, 0.01}, {day(2029, 3, 13), 12, 0.0479}};
    EXPECT_EQ(app::chancesInWords(row, threeYears()), "short now? no; short on 13 March 2029? 4.8 %");
}

TEST(PlanSentences, sayOfNoForecastThatItIsCertain) {
    core::ReplacementRow row;
    row.chances = {{day(2026, 3, 14), 13, 1e-9}, {day(2029, 3, 13), 12, 1 - 1e-9}};
    EXPECT_EQ(app::chancesInWords(row, threeYears()),
              "short now? hardly likely (< 0.1 %); short on 13 March 2029? almost certain (> 99.9 %)");
}

TEST(PlanSentences, sayOfWhatIsShortAlreadyOnlyThat) {
    core::ReplacementRow row;
    row.firstShort = day(2026, 3, 14);
    row.chances = {{day(2026, 3, 14), 3, 1}, {day(2029, 3, 13), 3, 1}};
    EXPECT_EQ(app::chancesInWords(row, threeYears()), "") << "a chance says nothing any more";
}

} // namespace
