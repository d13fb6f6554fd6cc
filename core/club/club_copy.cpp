#include "core/club/club_copy.h"

#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
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

} // namespace core
