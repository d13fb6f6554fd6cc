#include "core/store/check_tables.h"

#include "core/store/check_acts.h"
#include "core/store/check_rows.h"
#include "core/store/sign_off_tables.h"

namespace core::checkTables {
namespace {

Sighting sightingOf(const Statement& row) {
    return {
        row.text(0), row.text(1), row.text(2), row.text(3), checkRows::instantIn(row, "sighting", "at", 4),
        row.text(5)};
}

} // namespace

CheckRun runOf(const Statement& row) {
    const Phase phase = checkRows::phaseIn(row, "check_run", 3);
    return {row.text(0), row.text(1), locationOf(phase, row.text(2)), phase,
            checkRows::instantIn(row, "check_run", "opened", 4)};
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

std::optional<CheckRun> run(Database& database, const std::string& check) {
    return checkRows::firstOf(
        database.prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE id = ?").with(check),
        runOf);
}

std::optional<CheckRun> unfinished(Database& database, const std::string& where, Phase phase) {
    auto newest = checkRows::firstOf(
        database
            .prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE boat = ? AND phase = ? "
                     "ORDER BY stamp DESC LIMIT 1")
            .with(where)
            .with(nameOf(phase)),
        runOf);
    const bool isOpen = newest && !signOffTables::signOff(database, newest->check) &&
                        !checkActs::isClosed(database, newest->check);
    return isOpen ? newest : std::nullopt;
}

std::vector<CheckRun> allUnfinished(Database& database) {
    return checkRows::allOf(
        database.prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE NOT EXISTS "
                         "(SELECT 1 FROM sign_off WHERE check_id = check_run.id) AND NOT EXISTS "
                         "(SELECT 1 FROM check_closed WHERE check_id = check_run.id) "
                         "ORDER BY stamp DESC"),
        runOf);
}

std::vector<Sighting> sightings(Database& database, const std::string& check) {
    return checkRows::allOf(
        database
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
    return checkRows::firstOf(
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
    return checkRows::firstOf(
        database
            .prepare(
                "SELECT r.id, s.stamp, r.boat, r.phase FROM sighting s JOIN check_run r ON r.id = "
                "s.check_id WHERE s.code = ? AND s.stamp > ? AND NOT EXISTS (SELECT 1 FROM taken_back WHERE "
                "act = s.id) ORDER BY s.stamp DESC LIMIT 1")
            .with(code)
            .with(after),
        [](const Statement& row) {
            return LastSeen{row.text(1), locationOf(checkRows::phaseIn(row, "check_run", 3), row.text(2))};
        });
}

std::optional<CheckRun> firstReturnOf(Database& database, const std::string& code, const std::string& after) {
    return checkRows::firstOf(
        database
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
