#include "core/store/apply.h"

#include "core/base/error_code.h"
#include "core/record/row_of_facts.h"
#include "core/register/sheets.h"
#include "core/store/check_tables.h"
#include "core/store/fact_table.h"
#include "core/store/row_table.h"
#include "core/store/tag_tables.h"
#include "core/store/trip_tables.h"

#include <map>
#include <nlohmann/json.hpp>

namespace core {
namespace {

using nlohmann::json;

StoredRow rowFromAllFacts(Database& database, const Sheet& sheet, const std::string& key) {
    StoredRow row;
    for (const Fact& fact : factTable::ofRow(database, std::string(sheet.table), key))
        overlay(sheet, fact, json::parse(fact.body), row);
    return row;
}

/// Whether the facts come with the newest last, as in a rebuild, or as they arrive from several machines.
enum class Order { ByStamp, Any };

/// A row that is not there may have been taken away by a fact that is newer than this one.
bool isNewest(const StoredRow& row, const Sheet& sheet, const Fact& fact, Order order) {
    if (order == Order::ByStamp) return true;
    return row.stamp.empty() ? !sheet.losesRows : row.stamp < fact.stamp();
}

void applyRow(Database& database, const Sheet& sheet, const Fact& fact, const json& body, Order order) {
    const auto key = body.at("key").get<std::string>();
    StoredRow row = rowTable::find(database, sheet, key).value_or(StoredRow{});
    if (isNewest(row, sheet, fact, order))
        overlay(sheet, fact, body, row);
    else
        row = rowFromAllFacts(database, sheet, key);
    if (row.isGone)
        rowTable::remove(database, sheet, key);
    else
        rowTable::put(database, sheet, key, row);
    if (body.contains("at")) rowTable::putInstant(database, sheet, key, body["at"].get<std::string>());
    if (sheet.id == SheetId::Items && body.contains("set") && body["set"].contains("state"))
        rowTable::putState(database, {.code = body["row"]["code"],
                                      .stamp = fact.stamp(),
                                      .state = body["set"]["state"],
                                      .since = body["set"].value("since", ""),
                                      .why = body["set"].value("why", ""),
                                      .check = body.value("check", ""),
                                      .rule = body.value("rule", "")});
}

Phase phaseIn(const json& body) {
    const auto name = body.at("phase").get<std::string>();
    if (const auto phase = phaseNamed(name)) return *phase;
    throw StoreFailure({ErrorCode::FactPhaseUnreadable, {name}});
}

Instant instantIn(const json& body) {
    const auto text = body.at("at").get<std::string>();
    if (const auto instant = Instant::parse(text)) return *instant;
    throw StoreFailure({ErrorCode::FactTimeUnreadable, {text}});
}

using Applier = void (*)(Database&, const Fact&, const json&);

void applyClubNamed(Database& database, const Fact& fact, const json& body) {
    rowTable::putClubName(database, fact.stamp(), body.at("name"));
}

const std::map<std::string, Applier>& appliers() {
    static const std::map<std::string, Applier> known{
        {"club-named", applyClubNamed},
        {"check-opened",
         [](Database& db, const Fact& fact, const json& body) {
             const Phase phase = phaseIn(body);
             checkTables::putRun(db, {body.at("check"), fact.stamp(), locationOf(phase, body.at("boat")),
                                      phase, instantIn(body)});
         }},
        {"names-given",
         [](Database& db, const Fact& fact, const json& body) {
             checkTables::putNames(db, body.at("check"), fact.stamp(),
                                   body.at("people").get<std::vector<std::string>>());
         }},
        {"tag-seen",
         [](Database& db, const Fact& fact, const json& body) {
             checkTables::putSighting(db, {fact.id, fact.stamp(), body.at("check"), body.at("code"),
                                           instantIn(body), body.at("seen_by")});
         }},
        {"sighting-undone",
         [](Database& db, const Fact& fact, const json& body) {
             checkTables::putUndone(db, body.at("sighting"), fact.stamp());
         }},
        {"point-recorded",
         [](Database& db, const Fact& fact, const json& body) {
             checkTables::putPoint(db, body.at("check"), body.at("point"), fact.stamp(), body.at("value"));
         }},
        {"check-signed",
         [](Database& db, const Fact& fact, const json& body) {
             const Phase phase = phaseIn(body);
             checkTables::putSignOff(db,
                                     {body.at("check"), fact.stamp(), locationOf(phase, body.at("boat")),
                                      phase, fact.by, instantIn(body), body.value("urgent", "")},
                                     body.at("answer").at("outcome"), canonical(body.at("answer")));
         }},
        {"urgent-ended",
         [](Database& db, const Fact& fact, const json& body) {
             checkTables::putUrgentEnded(db, body.at("check"), fact.stamp());
         }},
        {"event-given",
         [](Database& db, const Fact& fact, const json& body) {
             const std::string event = body.at("event");
             tripTables::putEvent(db, body.at("check"), fact.stamp(), foldName(event), event);
         }},
        {"operation-logged",
         [](Database& db, const Fact& fact, const json& body) {
             tripTables::putOperation(db, body.at("check"), fact.stamp(), body.at("boat"),
                                      canonical(body.at("operation")));
         }},
        {"tag-fixed",
         [](Database& db, const Fact& fact, const json& body) {
             tagTables::put(db, body.at("tag"), fact.stamp(), body.at("code"));
         }},
    };
    return known;
}

void applyOne(Database& database, const Fact& fact, Order order) {
    const json body = json::parse(fact.body);
    if (const Sheet* sheet = sheetOfTable(fact.kind)) {
        applyRow(database, *sheet, fact, body, order);
        return;
    }
    // A kind that this program does not know is kept in the ledger for one that does.
    if (const auto found = appliers().find(fact.kind); found != appliers().end())
        found->second(database, fact, body);
}

} // namespace

void apply(Database& database, const Fact& fact) {
    applyOne(database, fact, Order::Any);
}

void rebuildTables(Database& source, Database& target) {
    rowTable::clear(target);
    checkTables::clear(target);
    tripTables::clear(target);
    tagTables::clear(target);
    factTable::forEachByStamp(source, [&](const Fact& fact) { applyOne(target, fact, Order::ByStamp); });
}

} // namespace core
