#include "core/store/sign_off_tables.h"

#include "core/base/store_failure.h"
#include "core/record/documents.h"
#include "core/store/check_rows.h"
#include "core/store/tag_tables.h"

namespace core::signOffTables {
namespace {

SignOff signOffOf(const Statement& row) {
    const Phase phase = checkRows::phaseIn(row, "sign_off", 3);
    return {row.text(0), row.text(1), locationOf(phase, row.text(2)),
            phase,       row.text(4), checkRows::instantIn(row, "sign_off", "at", 5),
            row.text(6)};
}

} // namespace

bool isUrgentEnded(Database& database, const std::string& check) {
    Statement query = database.prepare("SELECT 1 FROM urgent_ended WHERE check_id = ?").with(check);
    const bool isEnded = query.step();
    query.reset();
    return isEnded;
}

void putUrgentEnded(Database& database, const std::string& check, const std::string& stamp) {
    database
        .prepare("INSERT INTO urgent_ended (check_id, stamp) VALUES (?, ?) ON CONFLICT (check_id) DO UPDATE "
                 "SET stamp = min(stamp, excluded.stamp)")
        .with(check)
        .with(stamp)
        .run();
}

void putSignOff(Database& database, const SignOff& signOff, const std::string& outcome,
                const std::string& answer) {
    // The first signature stands, whichever machine's fact arrives first.
    database
        .prepare("INSERT INTO sign_off (check_id, stamp, boat, phase, by, at, outcome, urgent, answer) "
                 "VALUES (?, ?, ?, ?, ?, ?, "
                 "?, ?, ?) ON CONFLICT (check_id) DO UPDATE SET stamp = excluded.stamp, boat = "
                 "excluded.boat, phase = "
                 "excluded.phase, by = excluded.by, at = excluded.at, outcome = excluded.outcome, urgent = "
                 "excluded.urgent, "
                 "answer = excluded.answer WHERE excluded.stamp < stamp")
        .with(signOff.check)
        .with(signOff.stamp)
        .with(signOff.location.name)
        .with(nameOf(signOff.phase))
        .with(signOff.by)
        .with(signOff.at.iso())
        .with(outcome)
        .with(signOff.urgent)
        .with(answer)
        .run();
}

std::optional<SignOff> signOff(Database& database, const std::string& check) {
    return checkRows::firstOf(database
                                  .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                                           "sign_off WHERE check_id = ?")
                                  .with(check),
                              signOffOf);
}

std::vector<SignOff> signOffsOfBoats(Database& database) {
    return checkRows::allOf(
        database.prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM sign_off WHERE "
                         "phase <> 'stocktake' ORDER BY stamp"),
        signOffOf);
}

std::optional<CheckAnswer> signedAnswer(Database& database, const std::string& check) {
    const auto text =
        checkRows::firstOf(database.prepare("SELECT answer FROM sign_off WHERE check_id = ?").with(check),
                           [](const Statement& row) { return row.text(0); });
    if (!text) return std::nullopt;
    auto answer = answerFrom(*text, {"sign_off", check, "answer"},
                             [&](const std::string& item) { return tagTables::tagOf(database, item); });
    if (!answer) throw StoreFailure(answer.error());
    return std::move(*answer);
}

std::optional<SignOff> newestSignOff(Database& database, const std::string& boat,
                                     std::optional<Phase> phase) {
    return checkRows::firstOf(
        database
            .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                     "sign_off WHERE boat = ? AND phase <> 'stocktake' AND (?2 = '' OR phase = ?2) "
                     "ORDER BY stamp DESC LIMIT 1")
            .with(boat)
            .with(phase ? nameOf(*phase) : ""),
        signOffOf);
}

std::vector<SignOff> standingUrgent(Database& database) {
    Statement query = database.prepare(
        "SELECT check_id, stamp, boat, phase, by, at, urgent FROM sign_off AS urgent_launch WHERE urgent <> "
        "'' "
        "AND NOT EXISTS (SELECT 1 FROM urgent_ended WHERE check_id = urgent_launch.check_id) "
        "AND NOT EXISTS (SELECT 1 FROM sign_off AS later WHERE later.boat = urgent_launch.boat AND "
        "later.phase = 'launch' AND later.stamp > urgent_launch.stamp) ORDER BY boat");
    return checkRows::allOf(query, signOffOf);
}

std::optional<SignOff> firstSignOff(Database& database, const std::string& boat, const std::string& after) {
    return checkRows::firstOf(
        database
            .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                     "sign_off WHERE boat = ? AND phase <> 'stocktake' AND stamp > ? ORDER BY stamp LIMIT 1")
            .with(boat)
            .with(after),
        signOffOf);
}

std::vector<SignOff> signOffsOf(Database& database, const std::string& boat) {
    return checkRows::allOf(
        database
            .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                     "sign_off WHERE boat = ? AND phase <> 'stocktake' ORDER BY stamp DESC")
            .with(boat),
        signOffOf);
}

std::optional<SignOff> newestLaunchOf(Database& database, const std::string& code,
                                      const std::string& before) {
    const std::string latest = before.empty() ? "~" : before;
    return checkRows::firstOf(
        database
            .prepare("SELECT o.check_id, o.stamp, o.boat, o.phase, o.by, o.at, o.urgent FROM "
                     "sighting s JOIN sign_off o ON o.check_id = s.check_id WHERE s.code = ? AND o.phase = "
                     "'launch' "
                     "AND o.stamp < ? AND NOT EXISTS (SELECT 1 FROM taken_back WHERE act = s.id) "
                     "ORDER BY s.stamp DESC LIMIT 1")
            .with(code)
            .with(latest),
        signOffOf);
}

std::optional<SignOff> newestLaunchSignedBefore(Database& database, const std::string& boat,
                                                const std::string& before) {
    return checkRows::firstOf(
        database
            .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                     "sign_off WHERE boat = ? AND phase = 'launch' AND stamp < ? ORDER BY stamp "
                     "DESC LIMIT 1")
            .with(boat)
            .with(before),
        signOffOf);
}

bool cameBackOn(Database& database, const std::string& boat, const std::string& code,
                const std::string& after) {
    // The boat's return checks since are few; what the tag was seen in may be a long history.
    return checkRows::firstOf(
               database
                   .prepare("SELECT 1 FROM sign_off o CROSS JOIN sighting s ON s.check_id = o.check_id "
                            "WHERE o.boat = ? AND o.stamp > ? AND o.phase = 'return' AND s.code = ? AND "
                            "NOT EXISTS (SELECT 1 FROM taken_back WHERE act = s.id) LIMIT 1")
                   .with(boat)
                   .with(after)
                   .with(code),
               [](const Statement&) { return true; })
        .has_value();
}

} // namespace core::signOffTables
