#include "core/store/trip_tables.h"

#include "core/record/documents.h"

namespace core::tripTables {
namespace {

std::vector<CheckRun> runsOf(Statement query) {
    std::vector<CheckRun> runs;
    while (query.step())
        runs.push_back(checkTables::runOf(query));
    return runs;
}

} // namespace

void putEvent(Database& database, const std::string& check, const std::string& stamp, const std::string& key,
              const std::string& event) {
    database
        .prepare(
            "INSERT INTO check_event (check_id, stamp, key, event) VALUES (?, ?, ?, ?) ON CONFLICT "
            "(check_id) DO UPDATE SET stamp = excluded.stamp, key = excluded.key, event = excluded.event "
            "WHERE excluded.stamp > stamp")
        .with(check)
        .with(stamp)
        .with(key)
        .with(event)
        .run();
}

std::string eventOf(Database& database, const std::string& check) {
    return firstText(database.prepare("SELECT event FROM check_event WHERE check_id = ?").with(check))
        .value_or("");
}

std::vector<std::string> events(Database& database) {
    std::vector<std::string> names;
    Statement query =
        database.prepare("SELECT event FROM check_event GROUP BY key ORDER BY max(stamp) DESC, key");
    while (query.step())
        names.push_back(query.text(0));
    return names;
}

std::vector<CheckRun> runsOfEvent(Database& database, const std::string& key) {
    return runsOf(database
                      .prepare("SELECT r.id, r.stamp, r.boat, r.phase, r.opened FROM check_event e JOIN "
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

void putOperation(Database& database, const std::string& check, const std::string& stamp,
                  const std::string& boat, const std::string& body) {
    database
        .prepare("INSERT INTO operation (check_id, stamp, boat, body) VALUES (?, ?, ?, ?) ON CONFLICT "
                 "(check_id) DO UPDATE SET stamp = excluded.stamp, body = excluded.body WHERE "
                 "excluded.stamp > stamp")
        .with(check)
        .with(stamp)
        .with(boat)
        .with(body)
        .run();
}

std::optional<Operation> operation(Database& database, const std::string& check) {
    const auto body =
        firstText(database.prepare("SELECT body FROM operation WHERE check_id = ?").with(check));
    if (!body) return std::nullopt;
    auto read = operationFrom(*body, {"operation", check, "body"});
    if (!read) throw StoreFailure(read.error());
    return std::move(*read);
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"check_event", "operation"};
    return names;
}

void clear(Database& database) {
    for (const std::string& table : tables())
        database.script("DELETE FROM " + table);
}

} // namespace core::tripTables
