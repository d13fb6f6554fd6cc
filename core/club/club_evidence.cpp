#include "core/answers/evidence.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"
#include "core/store/tag_tables.h"

namespace core {
namespace {

LaunchOnRecord readLaunch(const ClubState& state, const SignOff& launch, const SignOff* back) {
    Database& database = *state.database;
    LaunchOnRecord record{.launch = state.signedCheck(launch),
                          .people = checkActs::names(database, launch.check),
                          .sightings = checkTables::sightings(database, launch.check),
                          .replacedTags = tagTables::changed(database)};
    if (back) record.back = state.signedCheck(*back);
    if (const auto fact = factTable::byStamp(database, launch.stamp)) {
        record.factHash = fact->hash;
        record.machine = fact->machine;
        record.seq = fact->seq;
    }
    return record;
}

} // namespace

Result<Evidence> ClubAnswers::evidence(const std::string& name, Instant on) const {
    return guarded([&]() -> Result<Evidence> {
        const ReadSnapshot asOfNow(*m_state->database);
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        const auto signOffs = checkTables::signOffsOf(*m_state->database, found->name);
        std::optional<LaunchOnRecord> record;
        if (const SignOff* launch = lastLaunchUntil(on, signOffs))
            record = readLaunch(*m_state, *launch, firstReturnAfter(*launch, signOffs));
        Evidence evidence = evidenceOf(found->name, on, record);
        evidence.head = factTable::head(*m_state->database);
        return evidence;
    });
}

} // namespace core
