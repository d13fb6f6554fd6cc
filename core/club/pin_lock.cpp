#include "core/club/pin_lock.h"

#include "core/base/error_code.h"
#include "core/store/register_store.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {
namespace {

constexpr std::int64_t freeTries = 5;
constexpr std::int64_t firstWait = 30 * 1000, longestWait = 15 * 60 * 1000; // milliseconds

std::int64_t wholeWait(std::int64_t wrong) {
    std::int64_t wait = wrong < freeTries ? 0 : firstWait;
    for (std::int64_t more = freeTries; more < wrong && wait < longestWait; ++more)
        wait *= 2;
    return std::min(wait, longestWait);
}

/// The day that it still is where days end last, 12 hours behind UTC: a last day is over when it is over
/// everywhere, and not where whoever starts the program says that the computer stands.
CalendarDay dayEverywhere(Instant now) {
    constexpr std::int64_t behind = 12 * 60 * 60 * 1000;
    return *CalendarDay::parse(Instant::fromMillis(now.millis() - behind).iso().substr(0, 10));
}

} // namespace

std::vector<pinTables::PinNow> PinLock::pinsOfOfficers() const {
    std::vector<pinTables::PinNow> pins = pinTables::all(m_database);
    if (pins.empty()) return pins;
    const CalendarDay today = dayEverywhere(clock->now());
    std::erase_if(pins, [&](const pinTables::PinNow& pin) {
        const auto person = m_store.person(pin.person);
        return !person || person->role != "gear officer" || !isHere(person->until, today);
    });
    return pins;
}

std::vector<std::string> PinLock::officers() const {
    std::vector<std::string> names;
    for (pinTables::PinNow& pin : pinsOfOfficers())
        names.push_back(std::move(pin.person));
    return names;
}

std::optional<PinLock::Standing> PinLock::standing() const {
    const std::int64_t left = m_unlock ? m_unlock->until - clock->awake() : 0;
    if (left <= 0) return std::nullopt;
    for (const pinTables::PinNow& pin : pinsOfOfficers())
        if (pin.fact == m_unlock->fact) return Standing{pin.person, left};
    return std::nullopt; // another PIN was set since, or it counts no more
}

Result<std::string> PinLock::proverOf(Right right) const {
    if (right == Right::Anybody) return std::string();
    if (const auto by = standing()) return by->person;
    const auto names = officers();
    if (names.empty()) return std::string();
    return Error{ErrorCode::PinNeeded, {fmt::format("{}", fmt::join(names, ", "))}};
}

void PinLock::renew(Right right) {
    if (right == Right::GearOfficer && m_unlock) m_unlock->until = clock->awake() + unlockedFor;
}

void PinLock::unlock(const pinTables::PinNow& pin) {
    m_unlock = Unlock{pin.fact, clock->awake() + unlockedFor};
}

pinTables::WrongPins PinLock::sinceThisBoot(const pinTables::WrongPins& wrong) const {
    pinTables::WrongPins here = wrong;
    here.boot = clock->boot();
    if (here.boot == wrong.boot) return here;
    // Only the clock can tell what was before. One that was set back tells nothing: the wait begins anew,
    // once.
    const std::int64_t gone = clock->now().millis() - wrong.at;
    here.awake = clock->awake() - std::max<std::int64_t>(0, gone);
    return here;
}

std::int64_t PinLock::waitFor(const pinTables::WrongPins& wrong) const {
    const std::int64_t gone = clock->awake() - sinceThisBoot(wrong).awake;
    return std::max<std::int64_t>(0, wholeWait(wrong.wrong) - gone);
}

PinLock::Try PinLock::tryOf(const std::string& person, const pinTables::WrongPins& kept) const {
    const pinTables::WrongPins before = sinceThisBoot(kept);
    const std::int64_t left = waitFor(before);
    if (left > 0)
        return {before, before, Error{ErrorCode::PinWait, {std::to_string((left + 999) / 1000), person}}};
    return {before, oneMore(before), Done{}};
}

pinTables::WrongPins PinLock::oneMore(const pinTables::WrongPins& wrong) const {
    return {wrong.wrong + 1, clock->now().millis(), clock->boot(), clock->awake()};
}

} // namespace core
