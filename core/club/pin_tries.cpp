#include "core/club/club_state.h"

#include "core/base/error_code.h"
#include "core/record/pin.h"

#include <algorithm>

namespace core {

Result<pinTables::PinNow> ClubState::pinOf(const Person& person) const {
    auto set = pinTables::of(*database, person.name);
    if (!set) return Error{ErrorCode::NoPinSet, {person.name}};
    if (set->sealed.empty()) return Error{ErrorCode::PinNotAsSet, {person.name}};
    return std::move(*set);
}

Result<pinTables::PinNow> ClubState::officersPin(const std::string& name) const {
    const auto person = registerStore.person(name);
    if (!person) return unknownPerson(name);
    auto set = pinOf(*person);
    const auto officers = pinLock.officers();
    if (set && std::find(officers.begin(), officers.end(), set->person) == officers.end())
        return Error{ErrorCode::NotGearOfficer, {person->name}};
    return set;
}

namespace {

/// By which it is known in a club file that may go anywhere.
std::string thisComputer() {
    return sha256Hex("PIN " + idOfComputer());
}

/// Kept in the club file, so that forgetting it takes more than deleting a small one.
class Tries {
public:
    Tries(ClubState& state, const std::string& person)
        : m_state(state)
        , m_person(person) {}

    Outcome begin() {
        const auto begun = m_state.write(Right::Anybody, [&](Ledger&) -> Result<PinLock::Try> {
            const auto kept = pinTables::wrongPins(*m_state.database, m_computer, m_person);
            PinLock::Try now = m_state.pinLock.tryOf(m_person, kept);
            m_before = now.before;
            put(now.toKeep);
            return now;
        });
        return begun ? begun->may : Outcome(begun.error());
    }
    Outcome end(bool wasRight) {
        return m_state.write(Right::Anybody, [&](Ledger&) -> Outcome {
            put(wasRight ? pinTables::WrongPins{} : m_before);
            return Done{};
        });
    }

private:
    void put(const pinTables::WrongPins& wrong) {
        pinTables::putWrongPins(*m_state.database, m_computer, m_person, wrong);
    }

    ClubState& m_state;
    const std::string m_person;
    const std::string m_computer = thisComputer();
    pinTables::WrongPins m_before;
};

} // namespace

Outcome ClubState::tryPin(const pinTables::PinNow& set, const Pin& pin) {
    Tries tries(*this, set.person);
    if (const Outcome may = tries.begin(); !may) return may;
    const auto fits = pin.opens(set.sealed);
    if (fits && !*fits) return Error{ErrorCode::PinWrong, {set.person}};
    const Outcome ended = tries.end(fits && *fits);
    return fits ? ended : Outcome(fits.error());
}

bool ClubState::isPinAsked(const Person& signer, Phase phase) const {
    if (!pinTables::areSignaturesProven(*database)) return false;
    if (const auto set = pinTables::of(*database, signer.name); !set || set->sealed.empty()) return false;
    // A launch waits for no PIN.
    return phase != Phase::Launch ||
           pinLock.waitFor(pinTables::wrongPins(*database, thisComputer(), signer.name)) == 0;
}

} // namespace core
