#include "core/club/club_pins.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/record/pin.h"
#include "core/store/pin_tables.h"
#include "core/store/private_table.h"

#include <sys/stat.h>
#include <unistd.h>

namespace core {
namespace {

Result<Person> personNamed(const ClubState& state, const std::string& name) {
    if (auto person = state.registerStore.person(name)) return std::move(*person);
    return unknownPerson(name);
}

/// Empty stays empty.
Outcome known(const ClubState& state, const std::string& by) {
    if (by.empty() || state.registerStore.person(by)) return Done{};
    return unknownPerson(by);
}

/// What is kept of the PINs before goes out of the file.
void forgetPins(Database& database, Ledger& ledger, const std::string& person, const std::string& by) {
    PrivateErased kept;
    for (std::string& fact : pinTables::factsThatSet(database, person))
        if (privateTable::cellsOf(database, fact) > 0) kept.facts.push_back(std::move(fact));
    if (!kept.facts.empty()) ledger.append(kept, by);
}

/// The PIN that is there already is known to whoever writes: by `prover`, or by nothing, where a gear
/// officer's acts are open to all.
bool isGuarded(Database& database, const std::string& person, const std::string& prover) {
    return prover.empty() && pinTables::of(database, person);
}

bool ownsFile(const std::string& file) {
    struct stat status {};
    return ::geteuid() == 0 || (::stat(file.c_str(), &status) == 0 && status.st_uid == ::geteuid());
}

} // namespace

bool ClubPins::anySet() const {
    return !officers().empty();
}

std::vector<std::string> ClubPins::officers() const {
    const ReadSnapshot asOfNow(*m_state->database);
    return m_state->pinLock.officers();
}

bool ClubPins::isSet(const std::string& name) const {
    const ReadSnapshot asOfNow(*m_state->database);
    const auto person = m_state->registerStore.person(name);
    return person && pinTables::of(*m_state->database, person->name);
}

Outcome ClubPins::unlock(const std::string& name, const Pin& pin) {
    return guarded([&]() -> Outcome {
        const auto set = m_state->officersPin(name);
        if (!set) return set.error();
        if (const Outcome right = m_state->tryPin(*set, pin); !right) return right;
        m_state->pinLock.unlock(*set);
        return Done{};
    });
}

void ClubPins::lock() {
    m_state->pinLock.lock();
}

std::optional<Unlocked> ClubPins::unlocked() const {
    const ReadSnapshot asOfNow(*m_state->database);
    const auto standing = m_state->pinLock.standing();
    if (!standing) return std::nullopt;
    const Instant now = m_state->pinLock.clock->now();
    return Unlocked{standing->person, Instant::fromMillis(now.millis() + standing->millisLeft)};
}

Outcome ClubPins::set(const std::string& name, const Pin& pin, const std::string& by, const Pin* own) {
    auto sealed = guarded([&] { return pin.sealed(); });
    if (!sealed) return sealed.error();
    const auto write = [&](Ledger& ledger) -> Outcome {
        const auto person = personNamed(*m_state, name);
        if (!person) return person.error();
        if (const Outcome who = known(*m_state, by); !who) return who;
        if (isGuarded(*m_state->database, person->name, ledger.prover()))
            return Error{ErrorCode::PinSetAlready, {person->name}};
        forgetPins(*m_state->database, ledger, person->name, by);
        ledger.append(PinSet{person->name, *sealed}, by);
        return Done{};
    };
    return own == nullptr ? m_state->write(Right::GearOfficer, write) : m_state->writeAs(name, *own, write);
}

Outcome ClubPins::clear(const std::string& name, const std::string& by, const Pin* own) {
    const auto write = [&](Ledger& ledger) -> Outcome {
        const auto person = personNamed(*m_state, name);
        if (!person) return person.error();
        if (const Outcome who = known(*m_state, by); !who) return who;
        if (const auto set = m_state->pinOf(*person); !set && set.error().code == ErrorCode::NoPinSet)
            return set.error();
        if (isGuarded(*m_state->database, person->name, ledger.prover()))
            return Error{ErrorCode::PinSetAlready, {person->name}};
        forgetPins(*m_state->database, ledger, person->name, by);
        ledger.append(PinCleared{person->name}, by);
        return Done{};
    };
    return own == nullptr ? m_state->write(Right::GearOfficer, write) : m_state->writeAs(name, *own, write);
}

Outcome ClubPins::reset(const std::string& name, const std::string& by) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto person = personNamed(*m_state, name);
        if (!person) return person.error();
        if (const Outcome who = known(*m_state, by); !who) return who;
        if (const auto set = m_state->pinOf(*person); !set && set.error().code == ErrorCode::NoPinSet)
            return set.error();
        if (!ownsFile(m_state->database->path())) return Error{ErrorCode::NotFileOwner};
        for (const std::string& officer : m_state->pinLock.officers())
            if (officer != person->name) return Error{ErrorCode::OtherOfficerHasPin, {officer, person->name}};
        forgetPins(*m_state->database, ledger, person->name, by);
        ledger.append(PinCleared{person->name, true}, by);
        return Done{};
    });
}

std::vector<PinReset> ClubPins::resets(CalendarDay today) const {
    constexpr int daysTold = 30;
    std::vector<PinReset> told;
    const Instant since = Instant::beginningOf(today.plusDays(-daysTold));
    for (const pinTables::ChangeRow& row : pinTables::resetsSince(*m_state->database, since))
        told.push_back({row.person, row.at, row.by});
    return told;
}

bool ClubPins::areSignaturesProven() const {
    return pinTables::areSignaturesProven(*m_state->database);
}

Outcome ClubPins::proveSignatures(bool areAsked, const std::string& by) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        if (const Outcome who = known(*m_state, by); !who) return who;
        if (pinTables::areSignaturesProven(*m_state->database) != areAsked)
            ledger.append(SignaturesProven{areAsked}, by);
        return Done{};
    });
}

void ClubPins::goBy(const PinClock& clock) {
    m_state->pinLock.clock = &clock;
}

} // namespace core
