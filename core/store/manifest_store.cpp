#include "core/store/manifest_store.h"

#include "core/record/row_of_facts.h"
#include "core/register/typed_rows.h"
#include "core/store/fact_table.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <stdexcept>

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

/// What cannot be read in the row, or nothing.
std::string faultOf(const ManifestFact& fact) {
    const Sheet& kind = sheet(fact.sheet);
    for (std::size_t i = 0; i < kind.columns.size() && !fact.isGone; ++i)
        if (!isReadable(kind.columns[i], fact.cells[i]))
            return fmt::format("{} is '{}'", kind.columns[i].name, fact.cells[i]);
    return {};
}

[[noreturn]] void failDamaged(const Fact& fact, const std::string& why) {
    throw StoreFailure({ErrorKind::FileDamaged,
                        fmt::format("the record of the manifests cannot be read: {}", why),
                        fmt::format("fact {} of machine {}", fact.seq, fact.device),
                        "take an older backup, or look at it with `verify`"});
}

Instant instantOf(const std::string& text) {
    if (const auto instant = Instant::parse(text)) return *instant;
    throw std::invalid_argument(fmt::format("'{}' is no time", text));
}

ManifestFact factOf(const Fact& fact, SheetId id, const json& body, const StoredRow& row) {
    ManifestFact made{
        .stamp = fact.stamp(), .device = fact.device, .seq = fact.seq, .by = fact.by, .sheet = id};
    made.recordedAt = instantOf(fact.atUtc);
    if (body.contains("at")) made.at = instantOf(body["at"].get<std::string>());
    made.key = body.at("key").get<std::string>();
    made.position = row.position;
    made.cells = row.cells;
    made.isGone = row.isGone;
    if (const std::string fault = faultOf(made); !fault.empty()) throw std::invalid_argument(fault);
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
        failDamaged(fact, "it is not as this program writes it");
    } catch (const std::invalid_argument& fault) {
        failDamaged(fact, fault.what());
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
