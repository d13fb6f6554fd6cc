#include "core/club/club_copy.h"

#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/record/pin.h"
#include "core/record/verification.h"
#include "core/store/club_file.h"
#include "core/store/kept_keys.h"
#include "core/store/ledger.h"

#include <cstdint>
#include <fmt/format.h>
#include <sstream>

namespace core {

Result<Verification> copyClub(const std::filesystem::path& from, const std::filesystem::path& to,
                              bool keepDamaged) {
    return guarded([&]() -> Result<Verification> {
        Verification found;
        const auto source = clubFile::open(from, true);
        const mode_t readers = keepDamaged ? clubFile::readersOf(from) : clubFile::ownersAlone;
        clubFile::copy(*source, to, readers, [&](Database& copy) {
            found = verifyStore(copy);
            if (!found.problems.empty() && !keepDamaged)
                throw StoreFailure({ErrorCode::RecordDamaged, {}, from.string(), {found.problems.front()}});
        });
        return found;
    });
}

namespace {

/// Wrong PINs of a person at restoring, kept by this user for the club: nothing is written to a backup. It
/// counts as PinLock has it.
class KeptTries {
public:
    KeptTries(const ClubState& backup, const std::string& person)
        : m_lock(backup.pinLock)
        , m_keys(clubOf(*backup.database))
        , m_person(person)
        , m_name("wrong-pins-" + sha256Hex(foldName(person))) {}

    Outcome begin() const {
        const KeptKeys::Turn turn(m_keys);
        const PinLock::Try now = m_lock.tryOf(m_person, kept());
        put(now.toKeep);
        return now.may;
    }
    void forget() const { m_keys.putNote(m_name, {}); }

private:
    pinTables::WrongPins kept() const {
        pinTables::WrongPins wrong;
        std::istringstream text(m_keys.note(m_name).value_or(""));
        if (!(text >> wrong.wrong >> wrong.at >> wrong.awake)) return {};
        text >> wrong.boot;
        return wrong;
    }
    void put(const pinTables::WrongPins& wrong) const {
        m_keys.putNote(m_name, fmt::format("{} {} {} {}\n", wrong.wrong, wrong.at, wrong.awake, wrong.boot));
    }

    const PinLock& m_lock;
    const KeptKeys m_keys;
    const std::string m_person, m_name;
};

Outcome mayRestore(const std::filesystem::path& from, const std::string& by, const Pin* pin) {
    ClubState backup(clubFile::open(from, true));
    if (!by.empty() && !backup.registerStore.person(by)) return unknownPerson(by);
    if (pin == nullptr) {
        const auto prover = backup.pinLock.proverOf(Right::GearOfficer);
        return prover ? Outcome(Done{}) : Outcome(prover.error());
    }
    const auto set = backup.officersPin(by);
    if (!set) return set.error();
    const KeptTries tries(backup, set->person);
    if (const Outcome tried = tries.begin(); !tried) return tried;
    const auto fits = pin->opens(set->sealed);
    if (!fits) return fits.error();
    if (*fits) tries.forget();
    return *fits ? Outcome(Done{}) : Outcome(Error{ErrorCode::PinWrong, {set->person}});
}

} // namespace

Result<Verification> restoreClub(const std::filesystem::path& from, const std::filesystem::path& to,
                                 const std::string& by, const Pin* pin) {
    const Outcome may = guarded([&] { return mayRestore(from, by, pin); });
    return may ? copyClub(from, to, false) : may.error();
}

} // namespace core
