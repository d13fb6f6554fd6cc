#include "core/store/check_acts.h"

#include "core/base/plain_text.h"
#include "core/base/store_failure.h"
#include "core/record/documents.h"
#include "core/record/json_values.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace core::checkActs {
namespace {

std::vector<std::string> peopleFrom(const std::string& text, const std::string& check) {
    const auto people = parsedOrDiscarded(text);
    const bool isList = people.is_array() && std::all_of(people.begin(), people.end(),
                                                         [](const auto& each) { return each.is_string(); });
    if (!isList) throw StoreFailure(unreadableCell({"check_names", check, "people"}, {}, text));
    return people.get<std::vector<std::string>>();
}

Operation operationOf(const std::string& body, const std::string& row) {
    auto read = operationFrom(body, {"operation", row, "body"});
    if (!read) throw StoreFailure(read.error());
    return std::move(*read);
}

Statement& withPlace(Statement& statement, const ActPlace& place) {
    return statement.with(place.id).with(place.stamp).with(place.check);
}

bool hasRow(Statement query) {
    const bool has = query.step();
    query.reset();
    return has;
}

/// `row`: what it is, id, stamp, what it is about, value.
RecordedAct actOf(const Statement& row, const std::string& check) {
    RecordedAct act{.id = row.text(1), .stamp = row.text(2), .value = row.real(4)};
    const std::string kind = row.text(0);
    const std::string about = row.text(3);
    if (kind == "sighting" || kind == "damage") {
        act.kind = kind == "damage" ? ActKind::Damage : ActKind::Sighting;
        act.code = about;
    } else if (kind == "names") {
        act.kind = ActKind::Names;
        act.people = peopleFrom(about, check);
    } else {
        act.kind = kind == "point" ? ActKind::Point : kind == "event" ? ActKind::Event : ActKind::Trip;
        act.name = about;
    }
    return act;
}

} // namespace

void putNames(Database& database, const ActPlace& place, const std::vector<std::string>& people) {
    Statement statement = database.prepare(
        "INSERT INTO check_names (id, stamp, check_id, people) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING");
    withPlace(statement, place).with(nlohmann::json(people).dump()).run();
}

void putPoint(Database& database, const ActPlace& place, const std::string& point, double value) {
    Statement statement =
        database.prepare("INSERT INTO point_value (id, stamp, check_id, point, value) VALUES (?, ?, ?, ?, ?) "
                         "ON CONFLICT DO NOTHING");
    withPlace(statement, place).with(point).with(value).run();
}

void putEvent(Database& database, const ActPlace& place, const std::string& event, bool isAct) {
    Statement statement =
        database.prepare("INSERT INTO check_event (id, stamp, check_id, key, event, is_act) VALUES (?, ?, ?, "
                         "?, ?, ?) ON CONFLICT DO NOTHING");
    withPlace(statement, place).with(foldName(event)).with(event).with(isAct ? 1 : 0).run();
}

void putOperation(Database& database, const ActPlace& place, const std::string& boat,
                  const std::string& body) {
    Statement statement =
        database.prepare("INSERT INTO operation (id, stamp, check_id, boat, body) VALUES (?, ?, ?, ?, ?) "
                         "ON CONFLICT DO NOTHING");
    withPlace(statement, place).with(boat).with(body).run();
}

void putTakenBack(Database& database, const std::string& act, const std::string& stamp) {
    database
        .prepare("INSERT INTO taken_back (act, stamp) VALUES (?, ?) ON CONFLICT (act) DO UPDATE SET stamp = "
                 "min(stamp, excluded.stamp)")
        .with(act)
        .with(stamp)
        .run();
}

void putClosed(Database& database, const std::string& check, const std::string& stamp,
               const std::string& reason) {
    // The first closing stands, whichever machine's fact arrives first.
    database
        .prepare("INSERT INTO check_closed (check_id, stamp, reason) VALUES (?, ?, ?) ON CONFLICT (check_id) "
                 "DO UPDATE SET stamp = excluded.stamp, reason = excluded.reason WHERE excluded.stamp < "
                 "stamp")
        .with(check)
        .with(stamp)
        .with(reason)
        .run();
}

std::vector<std::string> names(Database& database, const std::string& check) {
    const auto text = firstText(
        database
            .prepare("SELECT people FROM check_names WHERE check_id = ? AND NOT EXISTS (SELECT 1 FROM "
                     "taken_back WHERE act = check_names.id) ORDER BY stamp DESC LIMIT 1")
            .with(check));
    return text ? peopleFrom(*text, check) : std::vector<std::string>();
}

std::optional<double> pointValue(Database& database, const std::string& check, const std::string& point) {
    Statement query =
        database
            .prepare("SELECT value FROM point_value WHERE check_id = ? AND point = ? AND NOT EXISTS (SELECT "
                     "1 FROM taken_back WHERE act = point_value.id) ORDER BY stamp DESC LIMIT 1")
            .with(check)
            .with(point);
    if (!query.step()) return std::nullopt;
    const double value = query.real(0);
    query.reset();
    return value;
}

std::string eventOf(Database& database, const std::string& check) {
    return firstText(database.prepare("SELECT event FROM event_of_check WHERE check_id = ?").with(check))
        .value_or("");
}

std::optional<Operation> operation(Database& database, const std::string& check) {
    const auto body = firstText(
        database
            .prepare("SELECT body FROM operation WHERE check_id = ? AND NOT EXISTS (SELECT 1 FROM taken_back "
                     "WHERE act = operation.id) ORDER BY stamp DESC LIMIT 1")
            .with(check));
    return body ? std::optional(operationOf(*body, check)) : std::nullopt;
}

bool isTakenBack(Database& database, const std::string& act) {
    return hasRow(database.prepare("SELECT 1 FROM taken_back WHERE act = ?").with(act));
}

bool isClosed(Database& database, const std::string& check) {
    return hasRow(database.prepare("SELECT 1 FROM check_closed WHERE check_id = ?").with(check));
}

std::vector<RecordedAct> standing(Database& database, const std::string& check, int most) {
    Statement query =
        database
            .prepare(
                "SELECT kind, id, stamp, about, value FROM ("
                "SELECT 'sighting' AS kind, id, stamp, code AS about, 0.0 AS value FROM sighting WHERE "
                "check_id = ?1 UNION ALL SELECT 'names', id, stamp, people, 0.0 FROM check_names WHERE "
                "check_id = ?1 UNION ALL SELECT 'point', id, stamp, point, value FROM point_value WHERE "
                "check_id = ?1 UNION ALL SELECT 'event', id, stamp, event, 0.0 FROM check_event WHERE "
                "check_id = ?1 AND is_act = 1 UNION ALL SELECT 'trip', id, stamp, '', 0.0 FROM operation "
                "WHERE check_id = "
                "?1 UNION ALL SELECT 'damage', id, stamp, code, 0.0 FROM item_state WHERE check_id = ?1 AND "
                "check_id <> '' AND state = 'unserviceable') AS done WHERE NOT EXISTS (SELECT 1 FROM "
                "taken_back WHERE act = done.id) ORDER BY stamp DESC LIMIT ?2")
            .with(check)
            .with(most);
    std::vector<RecordedAct> acts;
    while (query.step())
        acts.push_back(actOf(query, check));
    return acts;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"check_names", "point_value", "check_event",
                                                "operation",   "taken_back",  "check_closed"};
    return names;
}

} // namespace core::checkActs
