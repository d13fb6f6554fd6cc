#include "core/club/club_copy.h"

#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/record/pin.h"
#include "core/record/verification.h"
#include "core/store/club_file.h"
#include "core/store/ledger.h"

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

Outcome mayRestore(const std::filesystem::path& from, const std::string& by, const Pin* pin) {
    ClubState backup(clubFile::open(from, true));
    if (pin == nullptr) {
        const auto prover = backup.pinLock.proverOf(Right::GearOfficer);
        return prover ? Outcome(Done{}) : Outcome(prover.error());
    }
    const auto set = backup.officersPin(by);
    if (!set) return set.error();
    const auto fits = pin->opens(set->sealed);
    if (!fits) return fits.error();
    return *fits ? Outcome(Done{}) : Outcome(Error{ErrorCode::PinWrong, {set->person}});
}

} // namespace

Result<Verification> restoreClub(const std::filesystem::path& from, const std::filesystem::path& to,
                                 const std::string& by, const Pin* pin) {
    const Outcome may = guarded([&] { return mayRestore(from, by, pin); });
    return may ? copyClub(from, to, false) : may.error();
}

} // namespace core
