#include "core/answers/evidence.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"
#include "core/store/names_now.h"
#include "core/store/sign_off_tables.h"
#include "core/store/tag_tables.h"

namespace core {
namespace {

/// The tables know the names of now; a signature keeps those that were used when it was written.
std::optional<Fact> keepNamesOf(Database& database, const std::string& stamp, std::string& by,
                                std::vector<std::string>* people) {
    auto fact = factTable::byStamp(database, stamp);
    const auto body = fact ? factTable::bodyOf(*fact) : std::nullopt;
    const auto* signature = body ? std::get_if<CheckSigned>(&*body) : nullptr;
    if (!signature) return fact;
    by = fact->by;
    if (people) *people = signature->people;
    return fact;
}

/// Names that are others by now.
std::map<std::string, std::string> calledNow(Database& database, const std::vector<std::string>& people) {
    std::map<std::string, std::string> names;
    for (const std::string& person : people)
        if (std::string now = namesNow::of(database, Named::Person, person); now != person)
            names.emplace(person, std::move(now));
    return names;
}

LaunchOnRecord readLaunch(const ClubState& state, const SignOff& launch, const SignOff* back) {
    Database& database = *state.database;
    LaunchOnRecord record{.launch = state.signedCheck(launch),
                          .people = checkActs::names(database, launch.check),
                          .calledNow = {},
                          .sightings = checkTables::sightings(database, launch.check),
                          .replacedTags = tagTables::changed(database)};
    if (const auto fact = keepNamesOf(database, launch.stamp, record.launch.by, &record.people)) {
        record.factHash = fact->hash;
        record.machine = fact->machine;
        record.seq = fact->seq;
    }
    std::vector<std::string> named = record.people;
    named.push_back(record.launch.by);
    if (back) {
        record.back = state.signedCheck(*back);
        keepNamesOf(database, back->stamp, record.back->by, nullptr);
        named.push_back(record.back->by);
    }
    record.calledNow = calledNow(database, named);
    return record;
}

} // namespace

Result<Evidence> ClubAnswers::evidence(const std::string& name, Instant on) const {
    return guarded([&]() -> Result<Evidence> {
        const ReadSnapshot asOfNow(*m_state->database);
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        const auto signOffs = signOffTables::signOffsOf(*m_state->database, found->name);
        std::optional<LaunchOnRecord> record;
        if (const SignOff* launch = lastLaunchUntil(on, signOffs))
            record = readLaunch(*m_state, *launch, firstReturnAfter(*launch, signOffs));
        Evidence evidence = evidenceOf(found->name, on, record);
        evidence.head = factTable::head(*m_state->database);
        return evidence;
    });
}

} // namespace core
