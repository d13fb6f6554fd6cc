#include "app/cli/commands/trip_told.h"

#include "core/base/error_code.h"

#include <charconv>

namespace app {
namespace {

core::Result<std::optional<core::Instant>> instantFrom(const std::string& text, const char* option) {
    if (text.empty()) return std::optional<core::Instant>();
    const auto instant = core::Instant::parse(text);
    if (instant) return std::optional(*instant);
    return core::Error{core::ErrorCode::InstantUnreadable, {text}, option};
}

template <class Number>
core::Result<std::optional<Number>> numberFrom(const std::string& text, const char* option) {
    if (text.empty()) return std::optional<Number>();
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error == std::errc() && end == text.data() + text.size()) return std::optional(number);
    return core::Error{core::ErrorCode::NumberUnreadable, {text}, option};
}

} // namespace

void takeTrip(Command& command, TripOptions& trip) {
    command.text("--left", trip.left, "return: when the boat left, e.g. 2026-03-14T07:00:00Z");
    command.text("--back", trip.back, "return: when it was back");
    command.text("--hours", trip.hours, "return: engine hours run, counted to what went out");
    command.text("--launches", trip.launches, "return: how often it was launched (1)");
    command.text("--fuel", trip.fuel, "return: what was filled or is left");
    command.text("--incidents", trip.incidents, "return: what happened");
}

core::Operation TripTold::over(const std::optional<core::Operation>& before) const {
    core::Operation trip = before.value_or(core::Operation{});
    if (left) trip.left = left;
    if (back) trip.back = back;
    if (!people.empty()) trip.people = people;
    if (hours) trip.hours = hours;
    if (launches) trip.launches = *launches;
    if (!fuel.empty()) trip.fuel = fuel;
    if (!incidents.empty()) trip.incidents = incidents;
    return trip;
}

core::Result<std::optional<TripTold>> tripFrom(const TripOptions& given,
                                               const std::vector<std::string>& people) {
    if (given.left.empty() && given.back.empty() && given.hours.empty() && given.launches.empty() &&
        given.fuel.empty() && given.incidents.empty())
        return std::optional<TripTold>();
    const auto left = instantFrom(given.left, "--left");
    if (!left) return left.error();
    const auto back = instantFrom(given.back, "--back");
    if (!back) return back.error();
    const auto hours = numberFrom<double>(given.hours, "--hours");
    if (!hours) return hours.error();
    const auto launches = numberFrom<int>(given.launches, "--launches");
    if (!launches) return launches.error();
    return std::optional(TripTold{*left, *back, people, *hours, *launches, given.fuel, given.incidents});
}

} // namespace app
