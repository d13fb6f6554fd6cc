#pragma once

#include "core/base/calendar_day.h"
#include "core/plan/replacement/survivors.h"

#include <optional>
#include <vector>

namespace core {

/// The last good days of the items in stock, and how many of them still count on a day.
class Stock {
public:
    explicit Stock(std::vector<CalendarDay> lastGoodDays);

    int countingOn(CalendarDay day) const;
    /// The day after each last good day in [from, to), each once, rising.
    std::vector<CalendarDay> fallsBetween(CalendarDay from, CalendarDay to) const;

private:
    std::vector<CalendarDay> m_lastGood; ///< rising
};

/// How likely it is that fewer are left on `day` than are wanted.
struct ShortChance {
    CalendarDay day;
    int counting = 0; ///< of the stock, by the life rules alone
    double p = 0;
};

/// What is wanted of one kit type and size, and what there is of it today.
class Shortage {
public:
    Shortage(int wanted, Stock stock, const Survivors& survivors, CalendarDay today);

    int inStock() const { return m_stock.countingOn(m_today); }
    ShortChance on(CalendarDay day) const;
    /// The first day from today to `end` on which the chance exceeds `mostChance`. Exact: the chance never
    /// falls, for items only leave.
    std::optional<CalendarDay> firstShort(CalendarDay end, double mostChance) const;
    /// The chance on `day` when `count` new items came on `arrival` and none of them has fallen due.
    double chanceWith(int count, CalendarDay arrival, CalendarDay day) const;
    /// Today, the day after each last good day, the first short day and the horizon's end.
    std::vector<ShortChance> chances(std::optional<CalendarDay> firstShort, CalendarDay end) const;

private:
    int m_wanted;
    Stock m_stock;
    const Survivors& m_survivors;
    CalendarDay m_today;
};

} // namespace core
