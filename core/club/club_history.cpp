#include "core/answers/history.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/tag/tag_code.h"

#include "core/club/club_kit.h"
#include "core/record/facts.h"
#include "core/store/fact_table.h"
#include "core/store/machine_names.h"

#include <map>

namespace core {
namespace {

HistoryLine lineOf(const Fact& fact) {
    HistoryLine line{.recordedAt = factTable::recordedAt(fact)};
    line.at = givenInstant(fact);
    line.machine = fact.machine;
    line.seq = fact.seq;
    line.by = fact.by;
    line.proven = provenBy(fact);
    line.kind = fact.kind;
    line.body = fact.body;
    return line;
}

} // namespace

Result<std::vector<HistoryLine>> ClubAnswers::history(const std::string& subject) const {
    return guarded([&]() -> Result<std::vector<HistoryLine>> {
        const ReadSnapshot asOfNow(*m_state->database);
        const RegisterStore& store = m_state->registerStore;
        Database& database = *m_state->database;
        const auto code = TagCode::parse(subject);
        std::vector<Fact> facts;
        if (const auto found = code ? ClubKit(*m_state).item(code->text()) : std::nullopt)
            facts = factTable::ofItem(database, found->id);
        else if (const auto boat = code ? store.boatOfTag(code->text()) : store.boat(subject))
            facts = factTable::ofBoat(database, boat->name);
        else if (const auto person = code ? store.personOfTag(code->text()) : store.person(subject))
            facts = factTable::ofPerson(database, person->name);
        else
            return Error{ErrorCode::NoSuchSubject, {subject}};
        std::vector<FoundFact> found;
        std::map<std::string, std::string> machines;
        for (const Fact& fact : facts) {
            found.push_back({fact.stamp(), lineOf(fact)});
            const auto [name, isNew] = machines.try_emplace(fact.machine);
            if (isNew) name->second = machineNames::of(database, fact.machine);
            found.back().line.machineName = name->second;
        }
        return historyOf(std::move(found));
    });
}

} // namespace core
