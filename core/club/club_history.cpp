#include "core/answers/history.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/tag/tag_code.h"

#include "core/club/club_kit.h"
#include "core/store/history_store.h"

#include <nlohmann/json.hpp>

namespace core {
namespace {

HistoryLine lineOf(const Fact& fact) {
    HistoryLine line{.recordedAt = Instant::parse(fact.atUtc).value_or(Instant::fromMillis(0))};
    const auto body = nlohmann::json::parse(fact.body, nullptr, false);
    if (body.is_object() && body.contains("at") && body["at"].is_string())
        line.at = Instant::parse(body["at"].get<std::string>());
    line.device = fact.device;
    line.seq = fact.seq;
    line.by = fact.by;
    line.kind = fact.kind;
    line.body = fact.body;
    return line;
}

} // namespace

Result<std::vector<HistoryLine>> ClubAnswers::history(const std::string& subject) const {
    return guarded([&]() -> Result<std::vector<HistoryLine>> {
        const RegisterStore& store = m_state->registerStore;
        Database& database = *m_state->database;
        const auto code = TagCode::parse(subject);
        std::vector<Fact> facts;
        if (const auto found = code ? ClubKit(*m_state).item(code->text()) : std::nullopt)
            facts = history::ofItem(database, found->id);
        else if (const auto boat = code ? store.boatOfTag(code->text()) : store.boat(subject))
            facts = history::ofBoat(database, boat->name);
        else if (const auto person = code ? store.personOfTag(code->text()) : store.person(subject))
            facts = history::ofPerson(database, person->name);
        else
            return Error{ErrorCode::NoSuchSubject, {subject}};
        std::vector<FoundFact> found;
        for (const Fact& fact : facts)
            found.push_back({fact.stamp(), lineOf(fact)});
        return historyOf(std::move(found));
    });
}

} // namespace core
