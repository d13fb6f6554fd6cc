#include "core/plan/replacement/shortage.h"

#include <algorithm>

namespace core {
namespace {

double yearsBetween(CalendarDay from, CalendarDay to) {
    return std::max(0, daysBetween(from, to)) / daysOfYear;
}

} // namespace

Stock::Stock(std::vector<CalendarDay> lastGoodDays)
    : m_lastGood(std::move(lastGoodDays)) {
    std::sort(m_lastGood.begin(), m_lastGood.end());
}

int Stock::countingOn(CalendarDay day) const {
    return static_cast<int>(m_lastGood.end() - std::lower_bound(m_lastGood.begin(), m_lastGood.end(), day));
}

std::vector<CalendarDay> Stock::fallsBetween(CalendarDay from, CalendarDay to) const {
    std::vector<CalendarDay> falls;
    const auto first = std::lower_bound(m_lastGood.begin(), m_lastGood.end(), from);
    for (auto last = first; last != m_lastGood.end() && *last < to; ++last)
        if (falls.empty() || falls.back() != last->plusDays(1)) falls.push_back(last->plusDays(1));
    return falls;
}

Shortage::Shortage(int wanted, Stock stock, const Survivors& survivors, CalendarDay today)
    : m_wanted(wanted)
    , m_stock(std::move(stock))
    , m_survivors(survivors)
    , m_today(today) {}

ShortChance Shortage::on(CalendarDay day) const {
    const int counting = m_stock.countingOn(day);
    return {day, counting, m_survivors.chanceOfFewer(m_wanted, {counting, yearsBetween(m_today, day)})};
}

std::optional<CalendarDay> Shortage::firstShort(CalendarDay end, double mostChance) const {
    const auto isShort = [&](int day) { return on(CalendarDay::fromNumber(day)).p > mostChance; };
    if (!isShort(end.number())) return std::nullopt;
    int low = m_today.number() - 1, high = end.number();
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        (isShort(middle) ? high : low) = middle;
    }
    return CalendarDay::fromNumber(high);
}

double Shortage::chanceWith(int count, CalendarDay arrival, CalendarDay day) const {
    const Cohort old{m_stock.countingOn(day), yearsBetween(m_today, day)};
    return m_survivors.chanceOfFewer(m_wanted, old, {count, yearsBetween(arrival, day)});
}

std::vector<ShortChance> Shortage::chances(std::optional<CalendarDay> firstShort, CalendarDay end) const {
    std::vector<CalendarDay> days = m_stock.fallsBetween(m_today, end);
    days.insert(days.end(), {m_today, end});
    if (firstShort) days.push_back(*firstShort);
    std::sort(days.begin(), days.end());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    std::vector<ShortChance> chances;
    for (const CalendarDay day : days)
        chances.push_back(on(day));
    return chances;
}

} // namespace core
