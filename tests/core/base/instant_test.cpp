#include "core/base/instant.h"

#include "tests/core/base/days.h"

#include <array>
#include <cstdlib>
#include <ctime>
#include <gmock/gmock.h>

namespace core {
namespace {

std::string utc(const char* text) {
    const auto instant = Instant::parse(text);
    return instant ? instant->iso() : "refused";
}

TEST(Instant, readsTheExamplesOfRfc3339) {
    // RFC 3339, section 5.8.
    EXPECT_EQ(utc("1985-04-12T23:20:50.52Z"), "1985-04-12T23:20:50.520Z");
    EXPECT_EQ(utc("1996-12-19T16:39:57-08:00"), "1996-12-20T00:39:57.000Z");
    EXPECT_EQ(utc("1990-12-31T23:59:60Z"), "1991-01-01T00:00:00.000Z")
        << "a leap second is the second after it";
    EXPECT_EQ(utc("1990-12-31T15:59:60-08:00"), "1991-01-01T00:00:00.000Z");
    EXPECT_EQ(utc("1937-01-01T12:00:27.87+00:20"), "1937-01-01T11:40:27.870Z");
}

TEST(Instant, countsMillisecondsFromTheEpoch) {
    // POSIX: 1970-01-01T00:00Z is 0; 2001-09-09T01:46:40Z is 1,000,000,000 s, 2038-01-19T03:14:07Z is 2^31 -
    // 1 s.
    EXPECT_EQ(Instant::parse("1970-01-01T00:00:00Z")->millis(), 0);
    EXPECT_EQ(Instant::parse("2001-09-09T01:46:40Z")->millis(), 1000000000000);
    EXPECT_EQ(Instant::parse("2038-01-19T03:14:07.999Z")->millis(), 2147483647999);
    EXPECT_EQ(Instant::parse("1969-12-31T23:59:59.999Z")->millis(), -1);
    EXPECT_EQ(Instant::fromMillis(-1).iso(), "1969-12-31T23:59:59.999Z");
}

TEST(Instant, refusesWhatIsNoInstant) {
    for (const char* text :
         {"1985-13-01T00:00:00Z", "1985-02-30T00:00:00Z", "1985-04-12T24:00:00Z", "1985-04-12T23:60:00Z",
          "1985-04-12T23:20:61Z", "1985-04-12T23:20:50", "1985-04-12", "1985-04-12T23:20:50+25:00",
          "1985-04-12T23:20:50+08:60", "1985-04-12T23:20:50+0800", "1985-04-12T23:20:50Zx", "", "Z",
          "1985-04-12T2x:20:50Z", "0001-01-01T00:00:00+00:01", "9999-12-31T23:59:00-00:01"})
        EXPECT_EQ(utc(text), "refused") << text;
    EXPECT_EQ(utc("0001-01-01T00:00:00Z"), "0001-01-01T00:00:00.000Z");
    EXPECT_EQ(utc("9999-12-31T23:59:59.999Z"), "9999-12-31T23:59:59.999Z");
    EXPECT_EQ(utc("1985-04-12t23:20z"), "1985-04-12T23:20:00.000Z");
}

/// The time zone of this machine, for one test.
class TimeZone {
public:
    explicit TimeZone(const char* name)
        : m_before(std::getenv("TZ") ? std::getenv("TZ") : "") {
        set(name);
    }
    ~TimeZone() { set(m_before.c_str()); }

private:
    static void set(const char* name) {
        *name ? setenv("TZ", name, 1) : unsetenv("TZ");
        tzset();
    }
    std::string m_before;
};

TEST(Instant, fallsOnTheDayOfTheLocalClock) {
    // POSIX TZ: UTC0; EST5 is five hours behind, so its midnight is 05:00Z; east of Greenwich the sign is
    // negative.
    const auto lateEvening = *Instant::parse("2026-03-14T04:59:59Z");
    {
        const TimeZone zone("UTC0");
        EXPECT_EQ(lateEvening.localDay(), day("2026-03-14"));
    }
    const TimeZone zone("EST5");
    EXPECT_EQ(lateEvening.localDay(), day("2026-03-13"));
    EXPECT_EQ(Instant::parse("2026-03-14T05:00:00Z")->localDay(), day("2026-03-14"));
    EXPECT_EQ(Instant::onLocalDay(day("2026-07-01"), lateEvening).iso(), "2026-07-02T04:59:59.000Z");
}

// IANA time zone database: the farthest east and west, halves and quarters of an hour, half an hour of summer
// time (Lord Howe), summer time that begins at midnight (Cairo).
constexpr std::array zones{"Pacific/Kiritimati", "Pacific/Pago_Pago", "America/St_Johns",    "Asia/Kathmandu",
                           "Europe/London",      "Europe/Berlin",     "Australia/Lord_Howe", "Africa/Cairo",
                           "America/New_York",   "Asia/Kolkata"};

/// A day that a zone never had: Kiritimati went over the date line (tz database, "pacificnew", 1994-12-31).
bool wasSkipped(const std::string& zone, CalendarDay day) {
    return zone == "Pacific/Kiritimati" && (day.iso() == "1994-12-31" || day.iso() == "1995-01-01");
}

TEST(Instant, bothEndsOfEachDayLieOnThatDayInEachZone) {
    for (const char* name : zones) {
        const TimeZone zone(name);
        for (CalendarDay each = day("1970-01-01"); each < day("2038-01-01"); each = each.plusDays(1)) {
            if (wasSkipped(name, each)) continue;
            const Instant noon = Instant::onLocalDay(each, *Instant::parse("2026-03-14T12:00:00Z"));
            for (const char* time :
                 {"T00:00:00Z", "T00:30:00Z", "T11:59:59.999Z", "T23:30:00Z", "T23:59:59.999Z"}) {
                // As that zone's clock shows it: the time of day of some other day.
                const Instant shown = *Instant::parse("2026-03-14" + std::string(time));
                const Instant at = Instant::onLocalDay(each, shown);
                ASSERT_EQ(at.localDay(), each) << name << ' ' << time;
                ASSERT_LE(std::abs(at.millis() - noon.millis()), 86'400'000 + 3'600'000) << name;
            }
        }
    }
}

TEST(Instant, eachInstantOfTheCalendarHasADayInEachZone) {
    for (const char* name : zones) {
        const TimeZone zone(name);
        for (const char* text :
             {"0001-01-01T00:00:00Z", "0001-01-01T23:59:59Z", "1970-01-01T00:00:00Z", "2026-11-29T05:00:00Z",
              "9999-12-31T00:00:00Z", "9999-12-31T23:59:59.999Z"}) {
            const Instant at = *Instant::parse(text);
            const int utcDay = day(std::string(text).substr(0, 10)).number();
            EXPECT_NEAR(at.localDay().number(), utcDay, 1) << name << ' ' << text;
            EXPECT_GE(at.localDay().number(), 1) << name << ' ' << text;
            EXPECT_EQ(CalendarDay::parse(at.localDay().iso()), at.localDay()) << name << ' ' << text;
        }
        // Clocks put forth and back: the day goes on by none or one with each hour, never back.
        CalendarDay before = Instant::parse("2026-01-01T00:00:00Z")->localDay();
        for (std::int64_t hour = 1; hour < 366LL * 24; ++hour) {
            const Instant at =
                Instant::fromMillis(Instant::parse("2026-01-01T00:00:00Z")->millis() + hour * 3'600'000);
            const int step = at.localDay().number() - before.number();
            ASSERT_TRUE(step == 0 || step == 1) << name << ' ' << at.iso();
            before = at.localDay();
        }
    }
}

} // namespace
} // namespace core
