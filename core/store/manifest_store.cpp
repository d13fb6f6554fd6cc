#include "core/store/manifest_store.h"

#include "core/base/error_code.h"
#include "core/record/row_of_facts.h"
#include "core/register/typed_rows.h"
#include "core/store/fact_table.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

namespace core::manifestStore {
namespace {

using nlohmann::json;

/// Whether a reader of typed rows may have it.
bool isReadable(const Column& column, const std::string& cell) {
    const std::string_view text = cell.empty() ? column.byDefault : std::string_view(cell);
    switch (column.type) {
    case CellType::Count:
    case CellType::Number:
    case CellType::Amount:
        return text.empty() || numberFrom(text);
    case CellType::YesNo:
        return text == "yes" || text == "no";
    case CellType::Choice: // kind and phase of a point, which every point has
        return std::find(column.choices.begin(), column.choices.end(), text) != column.choices.end();
    default:
        return true;
    }
}

[[noreturn]] void failDamaged(const Fact& fact, ErrorCode code, const std::vector<std::string>& what = {}) {
    std::vector<std::string> arguments{std::to_string(fact.seq), fact.device};
    arguments.insert(arguments.end(), what.begin(), what.end());
    throw StoreFailure({code, std::move(arguments)});
}

Instant instantOf(const Fact& fact, const std::string& text) {
    if (const auto instant = Instant::parse(text)) return *instant;
    failDamaged(fact, ErrorCode::ManifestRecordTime, {text});
}

void requireReadable(const Fact& fact, const ManifestFact& made) {
    const Sheet& kind = sheet(made.sheet);
    for (std::size_t i = 0; i < kind.columns.size() && !made.isGone; ++i)
        if (!isReadable(kind.columns[i], made.cells[i]))
            failDamaged(fact, ErrorCode::ManifestRecordCell,
                        {std::string(kind.columns[i].name), made.cells[i]});
}

ManifestFact factOf(const Fact& fact, SheetId id, const json& body, const StoredRow& row) {
    ManifestFact made{
        .stamp = fact.stamp(), .device = fact.device, .seq = fact.seq, .by = fact.by, .sheet = id};
    made.recordedAt = instantOf(fact, fact.atUtc);
    if (body.contains("at")) made.at = instantOf(fact, body["at"].get<std::string>());
    made.key = body.at("key").get<std::string>();
    made.position = row.position;
    made.cells = row.cells;
    made.isGone = row.isGone;
    requireReadable(fact, made);
    return made;
}

using RowsByKey = std::map<std::string, StoredRow>;

ManifestFact readFact(const Fact& fact, SheetId id, RowsByKey& rows) {
    try {
        const json body = json::parse(fact.body);
        StoredRow& row = rows[body.at("key").get<std::string>()];
        overlay(sheet(id), fact, body, row);
        return factOf(fact, id, body, row);
    } catch (const json::exception&) {
        failDamaged(fact, ErrorCode::ManifestRecordUnreadable);
    }
}

void addFacts(Database& database, SheetId id, std::vector<ManifestFact>& facts) {
    RowsByKey rows;
    for (const Fact& fact : factTable::ofKind(database, std::string(sheet(id).table)))
        facts.push_back(readFact(fact, id, rows));
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
