#include "app/cli/commands/options.h"

#include "core/base/error_code.h"
#include "core/register/sheets.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/commands/pin_file.h"
#include "app/cli/terminal/terminal.h"
#include "core/club/club_pins.h"

#include <algorithm>
#include <charconv>
#include <csignal>

namespace app {
namespace {

core::Error badDay(const std::string& text) {
    return {core::ErrorCode::DayUnreadable, {text}, "--today"};
}

/// What is told has happened: from 1970 on, and no more than a day (another time zone's) past this clock, or
/// past the day that is gone by.
bool hasHappened(core::Instant at, std::optional<core::CalendarDay> day) {
    const core::Instant now = core::Instant::now();
    const core::Instant known = day ? std::max(now, core::Instant::onLocalDay(*day, now)) : now;
    constexpr std::int64_t dayMillis = 86'400'000;
    return at.millis() >= 0 && at.millis() <= known.millis() + dayMillis;
}

core::Result<core::Instant> instantOf(const std::string& text, std::optional<core::CalendarDay> day) {
    const auto given = core::Instant::parse(text);
    if (!given) return core::Error{core::ErrorCode::InstantUnreadable, {text}, "--at"};
    if (!hasHappened(*given, day)) return core::Error{core::ErrorCode::InstantNotPast, {text}, "--at"};
    return *given;
}

/// At the calendar's very ends a day of one time zone is none of another.
bool isWithinCalendar(core::CalendarDay day) {
    return day >= *core::CalendarDay::from(1, 1, 3) && day <= *core::CalendarDay::from(9999, 12, 29);
}

} // namespace

void takeCommon(Command& command, CommonOptions& options, Takes takes) {
    if (takes == Takes::ClubFile) command.file("FILE", options.file, "the club file");
    command.flag("--json", options.json, "one JSON document on standard output and nothing else there");
    command.text("--today", options.today, "the calendar day to go by, e.g. 2026-03-14");
}

std::vector<std::string> sheetNames() {
    std::vector<std::string> names;
    for (const core::Sheet& sheet : core::allSheets())
        names.emplace_back(sheet.name());
    return names;
}

core::Result<core::Moment> momentOf(const CommonOptions& options) {
    std::optional<core::CalendarDay> day;
    if (!options.today.empty() &&
        (!(day = core::CalendarDay::parse(options.today)) || !isWithinCalendar(*day)))
        return badDay(options.today);
    core::Instant at = core::Instant::now();
    if (!options.at.empty()) {
        const auto given = instantOf(options.at, day);
        if (!given) return given.error();
        at = *given;
    } else if (day) {
        at = core::Instant::onLocalDay(*day, at);
    }
    return core::Moment{at, day ? *day : at.localDay()};
}

std::optional<int> daysWithin(std::string_view text) {
    if (text.ends_with('d')) text.remove_suffix(1);
    int days = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), days);
    if (error != std::errc() || end != text.data() + text.size() || days < 0 || days > 3'652'059)
        return std::nullopt;
    return days;
}

int failOfDays(const std::string& text) {
    return failWith("'" + text + "' is no number of days", "--within", "write it like 90d");
}

void takeOfficer(Command& command, CommonOptions& options, const std::string& byHelp, Need need) {
    command.text("--by", options.by, byHelp, need);
    command.text("--pin-file", options.pinFile, std::string("of --by, ") + pinFileHelp, Need::NotEmpty);
}

core::Outcome unlockFor(core::Club& club, const CommonOptions& options) {
    if (options.pinFile.empty() || !options.isPinOfOfficer) return core::Done{};
    if (options.by.empty()) return core::Error{core::ErrorCode::PinOfNobody, {}, "--pin-file"};
    const auto moment = momentOf(options);
    if (!moment) return moment.error();
    const auto by = byWhom(club, options.by, moment->today);
    if (!by) return by.error();
    const auto pin = pinFrom(options.pinFile);
    return pin ? club.pins().unlock(*by, *pin) : pin.error();
}

int withClub(const CommonOptions& options, core::Club::Access access,
             const std::function<int(core::Club&)>& goOn) {
    // What is recorded is finished, though nobody may read the answer: a closed pipe is a failed write.
    if (access == core::Club::Access::ReadWrite) std::signal(SIGPIPE, SIG_IGN);
    core::Result<core::Club> club = core::Club::open(options.file, access);
    if (!club) return fail(club.error());
    const auto before = club->changeMark();
    if (access == core::Club::Access::ReadWrite)
        if (const core::Outcome unlocked = unlockFor(*club, options); !unlocked)
            return fail(unlocked.error());
    const int exit = goOn(*club);
    if (access == core::Club::Access::ReadWrite && club->changeMark() != before) noteRecorded();
    return exit;
}

int withClubOn(const CommonOptions& options, core::Club::Access access,
               const std::function<int(core::Club&, core::Moment)>& goOn) {
    const core::Result<core::Moment> moment = momentOf(options);
    if (!moment) return fail(moment.error());
    return withClub(options, access, [&](core::Club& club) { return goOn(club, *moment); });
}

} // namespace app
