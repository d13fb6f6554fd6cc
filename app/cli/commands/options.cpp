#include "app/cli/commands/options.h"

#include "core/base/error_code.h"

#include "app/cli/terminal/terminal.h"

namespace app {
namespace {

core::Error badDay(const std::string& text) {
    return {core::ErrorCode::DayUnreadable, {text}, "--today"};
}

core::Error badInstant(const std::string& text) {
    return {core::ErrorCode::InstantUnreadable, {text}, "--at"};
}

} // namespace

void takeCommon(Command& command, CommonOptions& options, Takes takes) {
    if (takes == Takes::ClubFile) command.file("FILE", options.file, "the club file");
    command.flag("--json", options.json, "one JSON document on standard output and nothing else there");
    command.text("--today", options.today, "the calendar day to go by, e.g. 2026-03-14");
}

core::Result<core::Moment> momentOf(const CommonOptions& options) {
    std::optional<core::CalendarDay> day;
    if (!options.today.empty() && !(day = core::CalendarDay::parse(options.today)))
        return badDay(options.today);
    core::Instant at = core::Instant::now();
    if (!options.at.empty()) {
        const auto given = core::Instant::parse(options.at);
        if (!given) return badInstant(options.at);
        at = *given;
    } else if (day) {
        at = core::Instant::onLocalDay(*day, at);
    }
    return core::Moment{at, day ? *day : at.localDay()};
}

int withClub(const CommonOptions& options, core::Club::Access access,
             const std::function<int(core::Club&)>& goOn) {
    core::Result<core::Club> club = core::Club::open(options.file, access);
    if (!club) return fail(club.error());
    return goOn(*club);
}

int withClubOn(const CommonOptions& options, core::Club::Access access,
               const std::function<int(core::Club&, core::Moment)>& goOn) {
    const core::Result<core::Moment> moment = momentOf(options);
    if (!moment) return fail(moment.error());
    return withClub(options, access, [&](core::Club& club) { return goOn(club, *moment); });
}

} // namespace app
