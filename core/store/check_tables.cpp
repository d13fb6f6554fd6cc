#include "core/store/check_tables.h"

#include "core/base/store_failure.h"
#include "core/record/documents.h"
#include "core/store/check_acts.h"
#include "core/store/tag_tables.h"

namespace core::checkTables {
namespace {

/// The first column of `row` is its key.
[[noreturn]] void refuse(const Statement& row, const char* table, const char* column,
                         const std::string& text) {
    throw StoreFailure(unreadableCell({table, row.text(0), column}, {}, text));
}

Phase phaseIn(const Statement& row, const char* table, int column) {
    const std::string text = row.text(column);
    if (const auto phase = phaseNamed(text)) return *phase;
    refuse(row, table, "phase", text);
}

Instant instantIn(const Statement& row, const char* table, const char* name, int column) {
    const std::string text = row.text(column);
    if (const auto instant = Instant::parse(text)) return *instant;
    refuse(row, table, name, text);
}

Sighting sightingOf(const Statement& row) {
    return {row.text(0), row.text(1), row.text(2), row.text(3), instantIn(row, "sighting", "at", 4),
            row.text(5)};
}

SignOff signOffOf(const Statement& row) {
    const Phase phase = phaseIn(row, "sign_off", 3);
    return {row.text(0), row.text(1), locationOf(phase, row.text(2)),
            phase,       row.text(4), instantIn(row, "sign_off", "at", 5),
            row.text(6)};
}

template <class Make>
auto firstOf(Statement query, Make make) {
    std::optional<decltype(make(query))> result;
    if (query.step()) {
        result = make(query);
        query.reset();
    }
    return result;
}

template <class Make>
auto allOf(Statement query, Make make) {
    std::vector<decltype(make(query))> result;
    while (query.step())
        result.push_back(make(query));
    return result;
}

} // namespace

CheckRun runOf(const Statement& row) {
    const Phase phase = phaseIn(row, "check_run", 3);
    return {row.text(0), row.text(1), locationOf(phase, row.text(2)), phase,
            instantIn(row, "check_run", "opened", 4)};
}

void putRun(Database& database, const CheckRun& run) {
    database
        .prepare("INSERT INTO check_run (id, stamp, boat, phase, opened) VALUES (?, ?, ?, ?, ?) ON CONFLICT "
                 "DO NOTHING")
        .with(run.check)
        .with(run.stamp)
        .with(run.location.name)
        .with(nameOf(run.phase))
        .with(run.openedAt.iso())
        .run();
}

void putSighting(Database& database, const Sighting& sighting) {
    database
        .prepare(
            "INSERT INTO sighting (id, stamp, check_id, code, at, seen_by, print) VALUES (?, ?, ?, ?, ?, "
            "?, ?) ON CONFLICT DO NOTHING")
        .with(sighting.id)
        .with(sighting.stamp)
        .with(sighting.check)
        .with(sighting.code)
        .with(sighting.at.iso())
        .with(sighting.seenBy)
        .with(sighting.print)
        .run();
}

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

std::optional<CheckRun> run(Database& database, const std::string& check) {
    return firstOf(
        database.prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE id = ?").with(check),
        runOf);
}

std::optional<CheckRun> unfinished(Database& database, const std::string& where, Phase phase) {
    auto newest = firstOf(
        database
            .prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE boat = ? AND phase = ? "
                     "ORDER BY stamp DESC LIMIT 1")
            .with(where)
            .with(nameOf(phase)),
        runOf);
    const bool isOpen =
        newest && !signOff(database, newest->check) && !checkActs::isClosed(database, newest->check);
    return isOpen ? newest : std::nullopt;
}

std::vector<CheckRun> allUnfinished(Database& database) {
    return allOf(database.prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE NOT EXISTS "
                                  "(SELECT 1 FROM sign_off WHERE check_id = check_run.id) AND NOT EXISTS "
                                  "(SELECT 1 FROM check_closed WHERE check_id = check_run.id) "
                                  "ORDER BY stamp DESC"),
                 runOf);
}

std::vector<Sighting> sightings(Database& database, const std::string& check) {
    return allOf(database
                     .prepare("SELECT id, stamp, check_id, code, at, seen_by FROM sighting WHERE check_id = "
                              "? AND NOT EXISTS "
                              "(SELECT 1 FROM taken_back WHERE act = sighting.id) ORDER BY stamp")
                     .with(check),
                 sightingOf);
}

std::map<std::string, double> printGrades(Database& database, const std::string& code) {
    // A poor view is no fault of the print, and a tag that was printed anew is read better from then on.
    Statement query =
        database
            .prepare(
                "SELECT code, max(print) FROM (SELECT code, print, row_number() OVER (PARTITION BY code "
                "ORDER BY stamp DESC) AS place FROM sighting WHERE print IS NOT NULL AND (?1 = '' OR code "
                "= ?1) AND stamp > coalesce((SELECT max(stamp) FROM tag_change WHERE item = "
                "sighting.code), '') AND NOT EXISTS (SELECT 1 FROM taken_back WHERE act = sighting.id)) "
                "WHERE place <= 3 GROUP BY code")
            .with(code);
    std::map<std::string, double> grades;
    while (query.step())
        grades[query.text(0)] = query.real(1);
    return grades;
}

std::optional<double> printGrade(Database& database, const std::string& code) {
    const auto grades = printGrades(database, code);
    const auto found = grades.find(code);
    return found == grades.end() ? std::nullopt : std::optional(found->second);
}

bool isAnythingSeen(Database& database) {
    return database
        .prepare("SELECT 1 FROM sighting WHERE NOT EXISTS (SELECT 1 FROM taken_back WHERE act = sighting.id) "
                 "LIMIT 1")
        .step();
}

std::optional<Sighting> newestSighting(Database& database, const std::string& code, const std::string& after,
                                       const std::string& before) {
    const std::string latest = before.empty() ? "~" : before; // above every stamp
    return firstOf(
        database
            .prepare("SELECT id, stamp, check_id, code, at, seen_by FROM sighting WHERE code = ? AND stamp > "
                     "? AND "
                     "stamp < ? AND NOT EXISTS (SELECT 1 FROM taken_back WHERE act = sighting.id) "
                     "ORDER BY stamp DESC LIMIT 1")
            .with(code)
            .with(after)
            .with(latest),
        sightingOf);
}

std::optional<LastSeen> lastSeen(Database& database, const std::string& code, const std::string& after) {
    return firstOf(
        database
            .prepare(
                "SELECT r.id, s.stamp, r.boat, r.phase FROM sighting s JOIN check_run r ON r.id = "
                "s.check_id WHERE s.code = ? AND s.stamp > ? AND NOT EXISTS (SELECT 1 FROM taken_back WHERE "
                "act = s.id) ORDER BY s.stamp DESC LIMIT 1")
            .with(code)
            .with(after),
        [](const Statement& row) {
            return LastSeen{row.text(1), locationOf(phaseIn(row, "check_run", 3), row.text(2))};
        });
}

std::optional<SignOff> signOff(Database& database, const std::string& check) {
    return firstOf(database
                       .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                                "sign_off WHERE check_id = ?")
                       .with(check),
                   signOffOf);
}

std::vector<SignOff> signOffsOfBoats(Database& database) {
    return allOf(database.prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM sign_off WHERE "
                                  "phase <> 'stocktake' ORDER BY stamp"),
                 signOffOf);
}

std::optional<CheckAnswer> signedAnswer(Database& database, const std::string& check) {
    const auto text = firstOf(database.prepare("SELECT answer FROM sign_off WHERE check_id = ?").with(check),
                              [](const Statement& row) { return row.text(0); });
    if (!text) return std::nullopt;
    auto answer = answerFrom(*text, {"sign_off", check, "answer"},
                             [&](const std::string& item) { return tagTables::tagOf(database, item); });
    if (!answer) throw StoreFailure(answer.error());
    return std::move(*answer);
}

std::optional<SignOff> newestSignOff(Database& database, const std::string& boat,
                                     std::optional<Phase> phase) {
    return firstOf(
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
    std::vector<SignOff> standing;
    while (query.step())
        standing.push_back(signOffOf(query));
    return standing;
}

std::optional<SignOff> firstSignOff(Database& database, const std::string& boat, const std::string& after) {
    return firstOf(
        database
            .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                     "sign_off WHERE boat = ? AND phase <> 'stocktake' AND stamp > ? ORDER BY stamp LIMIT 1")
            .with(boat)
            .with(after),
        signOffOf);
}

std::vector<SignOff> signOffsOf(Database& database, const std::string& boat) {
    return allOf(database
                     .prepare("SELECT check_id, stamp, boat, phase, by, at, urgent FROM "
                              "sign_off WHERE boat = ? AND phase <> 'stocktake' ORDER BY stamp DESC")
                     .with(boat),
                 signOffOf);
}

std::optional<SignOff> newestLaunchOf(Database& database, const std::string& code,
                                      const std::string& before) {
    const std::string latest = before.empty() ? "~" : before;
    return firstOf(
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
    return firstOf(database
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
    return firstOf(database
                       .prepare("SELECT 1 FROM sign_off o CROSS JOIN sighting s ON s.check_id = o.check_id "
                                "WHERE o.boat = ? AND o.stamp > ? AND o.phase = 'return' AND s.code = ? AND "
                                "NOT EXISTS (SELECT 1 FROM taken_back WHERE act = s.id) LIMIT 1")
                       .with(boat)
                       .with(after)
                       .with(code),
                   [](const Statement&) { return true; })
        .has_value();
}

std::optional<CheckRun> firstReturnOf(Database& database, const std::string& code, const std::string& after) {
    return firstOf(database
                       .prepare("SELECT r.id, r.stamp, r.boat, r.phase, r.opened FROM sighting s JOIN "
                                "check_run r ON r.id = s.check_id WHERE s.code = ? AND s.stamp > ? AND "
                                "r.phase = 'return' AND NOT EXISTS (SELECT 1 FROM taken_back WHERE act = "
                                "s.id) ORDER BY s.stamp LIMIT 1")
                       .with(code)
                       .with(after),
                   runOf);
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"check_run", "sighting", "sign_off", "urgent_ended"};
    return names;
}

} // namespace core::checkTables
