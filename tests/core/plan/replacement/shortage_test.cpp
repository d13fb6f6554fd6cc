#include "core/plan/replacement/shortage.h"

#include "tests/core/plan/today.h"

#include <gtest/gtest.h>

namespace core {
namespace {

std::vector<CalendarDay> lots(const std::vector<std::pair<int, std::string>>& counts) {
    std::vector<CalendarDay> days;
    for (const auto& [count, last] : counts)
        days.insert(days.end(), static_cast<std::size_t>(count), day(last));
    return days;
}

/// The worked example: cohorts that fall due one after the other.
std::vector<CalendarDay> fiveLots() {
    return lots(
        {{2, "2026-04-30"}, {3, "2027-03-31"}, {2, "2027-09-30"}, {3, "2028-06-30"}, {3, "2029-12-31"}});
}

TEST(Shortage, isThatOfTheWorkedExample) {
    // D = 8, rate Gamma(4, 80); scipy 1.10.
    const Survivors survivors({4, 80}, 40);
    const Shortage shortage(8, Stock(fiveLots()), survivors, today);
    EXPECT_EQ(shortage.inStock(), 13);
    const std::vector<std::tuple<std::string, int, double>> table{{"2026-05-01", 11, .0000617541},
                                                                  {"2027-01-01", 11, .0033088915},
                                                                  {"2027-03-31", 11, .0067428129},
                                                                  {"2027-04-01", 8, .3747544492},
                                                                  {"2027-10-01", 6, 1}};
    for (const auto& [on, counting, p] : table) {
        EXPECT_EQ(shortage.on(day(on)).counting, counting) << on;
        EXPECT_NEAR(shortage.on(day(on)).p, p, 1e-10) << on;
    }
    EXPECT_EQ(shortage.firstShort(day("2029-01-01"), .05), day("2027-04-01"));
    EXPECT_EQ(shortage.firstShort(day("2027-03-31"), .05), std::nullopt) << "not within so short a horizon";
    EXPECT_EQ(shortage.firstShort(day("2027-04-01"), .05), day("2027-04-01")) << "its last day included";
}

TEST(Shortage, ofTheWorkedExampleIsCoveredByEightOrFive) {
    const Survivors survivors({4, 80}, 60);
    const Shortage shortage(8, Stock(fiveLots()), survivors, today);
    const CalendarDay arrival = day("2027-03-31");
    EXPECT_NEAR(shortage.chanceWith(8, arrival, day("2029-01-01")), .03116130, 5e-9);
    EXPECT_NEAR(shortage.chanceWith(7, arrival, day("2029-01-01")), .08831924, 5e-9);
    EXPECT_NEAR(shortage.chanceWith(5, arrival, day("2028-04-01")), .01602114, 5e-9);
    EXPECT_GT(shortage.chanceWith(4, arrival, day("2028-04-01")), .05);
}

TEST(Shortage, byLossesAloneIsFoundToTheDay) {
    // n = 20, D = 16, Gamma(3, 40): 5 % is passed after 422.39 days (scipy 1.10), so on the 423rd day.
    const Survivors survivors({3, 40}, 60);
    const Shortage shortage(16, Stock(std::vector<CalendarDay>(20, day("2099-12-31"))), survivors, today);
    EXPECT_EQ(shortage.firstShort(today.plusMonths(36), .05), today.plusDays(423));
    EXPECT_LE(shortage.on(today.plusDays(422)).p, .05);
    EXPECT_GT(shortage.on(today.plusDays(423)).p, .05);
}

TEST(Shortage, isFoundWhereADayByDaySearchFindsIt) {
    const Survivors survivors({4.5, 90}, 60);
    for (int wanted = 1; wanted <= 14; ++wanted) {
        const Shortage shortage(wanted, Stock(fiveLots()), survivors, today);
        const CalendarDay end = day("2030-02-01");
        std::optional<CalendarDay> first;
        double before = 0;
        for (CalendarDay at = today; at <= end; at = at.plusDays(1)) {
            const double p = shortage.on(at).p;
            EXPECT_GE(p, before - 1e-12) << "the chance never falls";
            if (!first && p > .05) first = at;
            before = p;
        }
        EXPECT_EQ(shortage.firstShort(end, .05), first) << wanted;
    }
}

TEST(Shortage, isTodayWhenTooFewAreThere) {
    const Survivors survivors({4, 80}, 40);
    EXPECT_EQ(Shortage(14, Stock(fiveLots()), survivors, today).firstShort(today.plusMonths(1), .05), today);
    EXPECT_EQ(Shortage(1, Stock({}), survivors, today).firstShort(today.plusMonths(1), .05), today);
}

TEST(Shortage, listsTodayEachFallTheFirstShortDayAndTheEnd) {
    const Survivors survivors({4, 80}, 40);
    const Shortage shortage(8, Stock(fiveLots()), survivors, today);
    std::vector<CalendarDay> days;
    for (const ShortChance& chance : shortage.chances(day("2027-05-05"), day("2028-07-01")))
        days.push_back(chance.day);
    EXPECT_EQ(days, (std::vector<CalendarDay>{day("2026-01-01"), day("2026-05-01"), day("2027-04-01"),
                                              day("2027-05-05"), day("2027-10-01"), day("2028-07-01")}));
}

} // namespace
} // namespace core
