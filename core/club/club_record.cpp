#include "core/club/club_record.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/record/verification.h"

#include "core/base/plain_text.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {

Result<Verification> ClubRecord::verify(bool rebuild) {
    return guarded([&]() -> Result<Verification> {
        if (rebuild) {
            Transaction transaction(*m_state->database);
            rebuildTables(*m_state->database, *m_state->database);
            transaction.commit();
        }
        Verification verification = verifyStore(*m_state->database);
        verification.head = m_state->head();
        return verification;
    });
}

} // namespace core
