#include "core/base/instant.h"

#include <chrono>
#include <ctime>
#include <fmt/format.h>

namespace core {
namespace {

constexpr std::int64_t dayMillis = 86'400'000;
constexpr int endNumber = 3652060; // the day after 9999-12-31
constexpr int epochDay = 719163;   // 1970-01-01 counted from 0001-01-01 = 1

std::optional<int> number(std::string_view text, std::size_t from, std::size_t count) {
    if (from + count > text.size()) return std::nullopt;
    int value = 0;
    for (char c : text.substr(from, count)) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

/// Minutes east of UTC from `Z`, `+hh:mm` or `-hh:mm`.
std::optional<int> offsetMinutes(std::string_view text) {
    if (text == "Z" || text == "z") return 0;
    const auto hours = number(text, 1, 2);
    const auto minutes = number(text, 4, 2);
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':' || !hours || !minutes ||
        *hours > 23 || *minutes > 59)
        return std::nullopt;
    return (text[0] == '-' ? -1 : 1) * (*hours * 60 + *minutes);
}

std::tm localTime(std::int64_t millis) {
    const auto seconds = static_cast<std::time_t>((millis - (millis % 1000 + 1000) % 1000) / 1000);
    std::tm local{};
    localtime_r(&seconds, &local);
    return local;
}

} // namespace

Instant Instant::now() {
    using namespace std::chrono;
    return Instant(duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count());
}

std::optional<Instant> Instant::parse(std::string_view text) {
    if (text.size() < 17 || (text[10] != 'T' && text[10] != 't' && text[10] != ' ') || text[13] != ':')
        return std::nullopt;
    const auto day = CalendarDay::parse(text.substr(0, 10));
    const auto hour = number(text, 11, 2);
    const auto minute = number(text, 14, 2);
    std::size_t end = 16;
    std::optional<int> second = 0;
    std::int64_t fraction = 0;
    if (text[end] == ':') {
        second = number(text, 17, 2);
        end = 19;
        if (second && end < text.size() && text[end] == '.') {
            std::int64_t unit = 100;
            for (++end; end < text.size() && text[end] >= '0' && text[end] <= '9'; ++end, unit /= 10)
                fraction += (text[end] - '0') * unit;
        }
    }
    if (!day || !hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 60 ||
        end >= text.size())
        return std::nullopt;
    const auto offset = offsetMinutes(text.substr(end));
    if (!offset) return std::nullopt;
    const std::int64_t millis = (day->number() - epochDay) * dayMillis +
                                ((*hour * 60 + *minute - *offset) * 60LL + *second) * 1000 + fraction;
    const bool isOnTheCalendar =
        millis >= (1 - epochDay) * dayMillis && millis < (endNumber - epochDay) * dayMillis;
    return isOnTheCalendar ? std::optional(Instant(millis)) : std::nullopt; // an offset can lead out of it
}

Instant Instant::onLocalDay(CalendarDay day, Instant timeOfDay) {
    std::tm local = localTime(timeOfDay.m_millis);
    const std::int64_t millis = (timeOfDay.m_millis % 1000 + 1000) % 1000;
    const auto onDay = [&](int hoursLater) {
        std::tm wanted = local;
        wanted.tm_year = day.year() - 1900;
        wanted.tm_mon = day.month() - 1;
        wanted.tm_mday = day.day();
        wanted.tm_hour += hoursLater;
        wanted.tm_isdst = -1;
        return Instant(static_cast<std::int64_t>(std::mktime(&wanted)) * 1000 + millis);
    };
    // A time of day that the clocks skip may be counted to the day before or after it; an hour on, or back,
    // it is not.
    const Instant at = onDay(0);
    for (const int hours : {1, -1})
        if (at.localDay() != day && onDay(hours).localDay() == day) return onDay(hours);
    return at;
}

Instant Instant::beginningOf(CalendarDay localDay) {
    std::tm wanted{};
    wanted.tm_year = localDay.year() - 1900;
    wanted.tm_mon = localDay.month() - 1;
    wanted.tm_mday = localDay.day();
    wanted.tm_isdst = -1;
    const Instant at(static_cast<std::int64_t>(std::mktime(&wanted)) * 1000);
    // Where the clocks skip midnight, the day begins when they are put on; mktime may count that back.
    return at.localDay() < localDay ? Instant(at.m_millis + 3'600'000) : at;
}

std::string Instant::iso() const {
    const std::int64_t inDay = (m_millis % dayMillis + dayMillis) % dayMillis;
    const auto day = CalendarDay::fromNumber(static_cast<int>((m_millis - inDay) / dayMillis) + epochDay);
    return fmt::format("{}T{:02}:{:02}:{:02}.{:03}Z", day.iso(), inDay / 3'600'000, inDay / 60'000 % 60,
                       inDay / 1000 % 60, inDay % 1000);
}

CalendarDay Instant::localDay() const {
    const std::tm local = localTime(m_millis);
    if (const auto day = CalendarDay::from(local.tm_year + 1900, local.tm_mon + 1, local.tm_mday))
        return *day;
    // East or west of Greenwich the calendar ends a few hours before or after UTC's does.
    return CalendarDay::fromNumber(m_millis < 0 ? 1 : endNumber - 1);
}

} // namespace core
