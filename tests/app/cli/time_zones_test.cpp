#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

/// A club at work in one time zone (IANA time zone database).
class TimeZones : public SmallClub, public testing::WithParamInterface<const char*> {
protected:
    Ran runThere(std::vector<std::string> words, const std::string& input = {}) const {
        words.insert(words.begin() + 1, m_file);
        return ctl(words, input, {.zone = GetParam()});
    }
    /// Each day that stands in the documents.
    std::vector<std::string> daysOfLog() const {
        std::vector<std::string> days;
        const Json document = Json::parse(runThere({"log", "--json"}).out);
        for (const Json& entry : document["log"])
            days.push_back(entry["day"]);
        return days;
    }
    void expectSound(std::size_t entries) const {
        const Ran verified = runThere({"verify", "--json"});
        EXPECT_EQ(verified.exit, 0) << verified.out << verified.err;
        const std::vector<std::string> days = daysOfLog();
        EXPECT_EQ(days.size(), entries);
        for (const std::string& day : days) {
            EXPECT_TRUE(core::CalendarDay::parse(day)) << day;
            EXPECT_GE(day, "1969-12-31");
        }
    }
};

TEST_P(TimeZones, eachEndOfTimeGivesPossibleDays) {
    const std::string now = core::Instant::now().iso();
    const std::vector<std::vector<std::string>> moments{
        {"--at", "1970-01-01T00:00:00Z"},
        {"--at", now},
        {"--today", "1970-01-01"},
        {"--today", "9999-12-29"},
        {"--today", "1970-01-01"},
        {"--at", "1970-01-01T00:00:00Z", "--today", "1970-01-01"},
        {}};
    std::size_t written = 0;
    for (const std::vector<std::string>& moment : moments) {
        std::vector<std::string> words{"log-add", "--boat", "Teal", "--text", "keel scratched"};
        words.insert(words.end(), moment.begin(), moment.end());
        const Ran ran = runThere(words);
        EXPECT_EQ(ran.exit, 0) << ran.err;
        std::vector<std::string> check{"check",      "--boat",     "Coot",    "--phase", "launch",
                                       "--driver",   "Ada Thorne", "--codes", "-",       "--sign",
                                       "Ada Thorne", "--urgent",   "swimmer"};
        check.insert(check.end(), moment.begin(), moment.end());
        EXPECT_EQ(runThere(check, cootKnife + '\n').exit, 1) << ran.err;
        expectSound(++written);
    }
}

TEST_P(TimeZones, whatIsNotPastIsRefusedAndChangesNothing) {
    const std::string before = content();
    for (const char* at : {"1969-12-31T23:59:59Z", "9999-12-31T23:30:00Z", "0001-01-01T00:00:00Z"}) {
        const Ran ran = runThere({"log-add", "--boat", "Teal", "--text", "keel scratched", "--at", at});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    for (const char* day : {"0001-01-01", "9999-12-31"}) {
        const Ran ran = runThere({"log-add", "--boat", "Teal", "--text", "keel scratched", "--today", day});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

// Each kind of offset once: the farthest east and west, half an hour west of Greenwich with a summer time, a
// quarter of an hour, none at all (in 1970 an hour), whole hours with a summer time, a summer time of half an
// hour.
INSTANTIATE_TEST_SUITE_P(Zones, TimeZones,
                         testing::Values("Pacific/Kiritimati", "Pacific/Pago_Pago", "America/St_Johns",
                                         "Asia/Kathmandu", "Europe/London", "Europe/Berlin",
                                         "Australia/Lord_Howe"));

} // namespace
} // namespace small_club
