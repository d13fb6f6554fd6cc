#include "core/store/manifest_store.h"

#include "core/ledger/row_of_facts.h"
#include "core/store/fact_table.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

namespace core::manifestStore {
namespace {

using nlohmann::json;

ManifestFact factOf(const Fact& fact, SheetId id, const json& body, const StoredRow& row) {
    ManifestFact made{
        .stamp = fact.stamp(), .device = fact.device, .seq = fact.seq, .by = fact.by, .sheet = id};
    made.recordedAt = Instant::parse(fact.atUtc).value_or(Instant::fromMillis(0));
    if (body.contains("at") && body["at"].is_string())
        made.at = Instant::parse(body["at"].get<std::string>());
    made.key = body.at("key").get<std::string>();
    made.position = row.position;
    made.cells = row.cells;
    return made;
}

void addFacts(Database& database, SheetId id, std::vector<ManifestFact>& facts) {
    std::map<std::string, StoredRow> rows;
    for (const Fact& fact : factTable::ofKind(database, std::string(sheet(id).table))) {
        const json body = json::parse(fact.body);
        StoredRow& row = rows[body.at("key").get<std::string>()];
        overlay(sheet(id), fact, body, row);
        facts.push_back(factOf(fact, id, body, row));
    }
}

std::vector<ManifestCheck> checks(Database& database) {
    std::vector<ManifestCheck> checks;
    Statement query = database.prepare(
        "SELECT stamp, boat, phase, by, at FROM sign_off WHERE phase IN ('launch', 'return') ORDER BY stamp");
    while (query.step())
        checks.push_back({query.text(0), query.text(1), query.text(2), query.text(3),
                          Instant::parse(query.text(4)).value_or(Instant::fromMillis(0))});
    return checks;
}

} // namespace

ManifestRecord read(Database& database) {
    std::vector<ManifestFact> facts;
    for (const SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points})
        addFacts(database, id, facts);
    std::sort(facts.begin(), facts.end(),
              [](const ManifestFact& a, const ManifestFact& b) { return a.stamp < b.stamp; });
    return {std::move(facts), checks(database)};
}

} // namespace core::manifestStore
