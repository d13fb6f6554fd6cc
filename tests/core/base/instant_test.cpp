#include "core/base/instant.h"

#include "tests/core/base/days.h"

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

} // namespace
} // namespace core
