#include "core/store/trip_tables.h"

namespace core::tripTables {
namespace {

std::vector<CheckRun> runsOf(Statement query) {
    std::vector<CheckRun> runs;
    while (query.step())
        runs.push_back(checkTables::runOf(query));
    return runs;
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

} // namespace core::tripTables
