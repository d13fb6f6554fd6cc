#include "core/store/trip_tables.h"

namespace core::tripTables {
namespace {

std::vector<CheckRun> runsOf(Statement query) {
    std::vector<CheckRun> runs;
    while (query.step())
        runs.push_back(checkTables::runOf(query));
    return runs;
}

Instant instantOf(const Statement& row, const char* column, int index) {
    const std::string text = row.text(index);
    if (const auto instant = Instant::parse(text)) return *instant;
    throw StoreFailure(unreadableCell({"event_held", row.text(0), column}, {}, text));
}

} // namespace

std::vector<std::string> events(Database& database) {
    std::vector<std::string> names;
    Statement query =
        database.prepare("SELECT event FROM event_of_check GROUP BY key ORDER BY max(stamp) DESC, key");
    while (query.step())
        names.push_back(query.text(0));
    return names;
}

std::vector<CheckRun> runsOfEvent(Database& database, const std::string& key) {
    return runsOf(database
                      .prepare("SELECT r.id, r.stamp, r.boat, r.phase, r.opened FROM event_of_check e JOIN "
                               "check_run r ON r.id = e.check_id WHERE e.key = ? ORDER BY r.stamp")
                      .with(key));
}

std::vector<CheckRun> runsBetween(Database& database, const std::string& from, const std::string& to) {
    return runsOf(database
                      .prepare("SELECT id, stamp, boat, phase, opened FROM check_run WHERE opened >= ? AND "
                               "opened < ? ORDER BY stamp")
                      .with(from)
                      .with(to));
}

void putHeld(Database& database, const HeldRow& row) {
    database
        .prepare("INSERT INTO event_held (id, stamp, event, at, until, by) VALUES (?, ?, ?, ?, ?, ?) ON "
                 "CONFLICT DO NOTHING")
        .with(row.id)
        .with(row.stamp)
        .with(row.event)
        .with(row.at.iso())
        .with(row.until.iso())
        .with(row.by)
        .run();
}

std::optional<HeldRow> heldAt(Database& database, Instant at) {
    Statement query = database
                          .prepare("SELECT id, stamp, event, at, until, by FROM event_held WHERE at <= ? "
                                   "ORDER BY at DESC, stamp DESC LIMIT 1")
                          .with(at.iso());
    if (!query.step()) return std::nullopt;
    return HeldRow{
        query.text(0), query.text(1), query.text(2), instantOf(query, "at", 3), instantOf(query, "until", 4),
        query.text(5)};
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"event_held"};
    return names;
}

} // namespace core::tripTables
