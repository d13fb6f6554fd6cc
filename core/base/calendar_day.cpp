#include "core/base/calendar_day.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <fmt/format.h>
#include <memory>

namespace core {
namespace {

namespace chrono = std::chrono;

constexpr chrono::sys_days dayZero = chrono::sys_days{chrono::year{1} / 1 / 1} - chrono::days{1};
constexpr int lastNumber = 3652059;

chrono::year_month_day civil(int number) {
    return chrono::year_month_day{dayZero + chrono::days{number}};
}

std::optional<int> digits(std::string_view text) {
    int value{};
    const auto error = std::from_chars(std::to_address(text.begin()), std::to_address(text.end()), value).ec;
    const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!plain || error != std::errc{}) return std::nullopt; // empty is an error of from_chars
    return value;
}

int lastDayOf(int year, int month) {
    const auto last = chrono::year{year} / chrono::month{static_cast<unsigned>(month)} / chrono::last;
    return static_cast<int>(static_cast<unsigned>(last.day()));
}

} // namespace

std::optional<CalendarDay> CalendarDay::from(int year, int month, int day) {
    if (year < 1 || year > 9999 || month < 1 || month > 12 || day < 1 || day > lastDayOf(year, month))
        return std::nullopt;
    const auto civilDay = chrono::year{year} / month / day;
    return CalendarDay(static_cast<int>((chrono::sys_days{civilDay} - dayZero).count()));
}

std::optional<CalendarDay> CalendarDay::parse(std::string_view text) {
    const auto partial = PartialDay::parse(text);
    return partial && partial->isExact() ? std::optional(partial->firstDay()) : std::nullopt;
}

CalendarDay CalendarDay::fromNumber(int number) {
    return CalendarDay(std::clamp(number, 1, lastNumber));
}

int CalendarDay::year() const {
    return static_cast<int>(civil(m_number).year());
}
int CalendarDay::month() const {
    return static_cast<int>(static_cast<unsigned>(civil(m_number).month()));
}
int CalendarDay::day() const {
    return static_cast<int>(static_cast<unsigned>(civil(m_number).day()));
}

CalendarDay CalendarDay::plusMonths(int months) const {
    // std::chrono would give 2026-02-31 for 31 January + 1 month, which turns into 3 March: too late for an
    // expiry.
    const auto from = civil(m_number);
    const long index = (static_cast<int>(from.year()) * 12L) +
                       static_cast<long>(static_cast<unsigned>(from.month())) - 1 + months;
    if (index < 12) return CalendarDay(1);
    if (index >= 10000L * 12) return CalendarDay(lastNumber);
    const int year = static_cast<int>(index / 12);
    const int month = static_cast<int>(index % 12) + 1;
    const int day = static_cast<int>(static_cast<unsigned>(from.day()));
    return *CalendarDay::from(year, month, std::min(day, lastDayOf(year, month)));
}

CalendarDay CalendarDay::lastOfMonth() const {
    return *CalendarDay::from(year(), month(), lastDayOf(year(), month()));
}

std::string CalendarDay::iso() const {
    const auto c = civil(m_number);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(c.year()), static_cast<unsigned>(c.month()),
                       static_cast<unsigned>(c.day()));
}

PartialDay::PartialDay(CalendarDay day)
    : m_year(day.year())
    , m_month(day.month())
    , m_day(day.day()) {}

std::optional<PartialDay> PartialDay::parse(std::string_view text) {
    const bool isYear = text.size() == 4, isMonth = text.size() == 7;
    // A year or a month is the beginning of its first day.
    const std::string whole = std::string(text) + (isYear ? "-01-01" : isMonth ? "-01" : "");
    if (whole.size() != 10 || whole[4] != '-' || whole[7] != '-') return std::nullopt;
    const std::string_view parts = whole;
    const auto year = digits(parts.substr(0, 4)), month = digits(parts.substr(5, 2)),
               day = digits(parts.substr(8));
    if (!year || !month || !day || !CalendarDay::from(*year, *month, *day)) return std::nullopt;
    return PartialDay(*year, isYear ? 0 : *month, isYear || isMonth ? 0 : *day);
}

CalendarDay PartialDay::firstDay() const {
    return *CalendarDay::from(m_year, std::max(m_month, 1), std::max(m_day, 1));
}

CalendarDay PartialDay::lastDay() const {
    if (m_day != 0) return firstDay();
    const int month = m_month != 0 ? m_month : 12;
    return *CalendarDay::from(m_year, month, lastDayOf(m_year, month));
}

std::string PartialDay::text() const {
    if (m_month == 0) return fmt::format("{:04}", m_year);
    return m_day == 0 ? fmt::format("{:04}-{:02}", m_year, m_month) : firstDay().iso();
}

} // namespace core
