#include "core/base/error_code.h"
#include "core/record/row_of_facts.h"
#include "core/register/typed_rows.h"
#include "core/store/fact_table.h"
#include "core/store/names_now.h"
#include "core/store/register_store.h"
#include "core/store/sign_off_tables.h"

#include <algorithm>
#include <map>

namespace core {
namespace {

/// The row as the fact left it, which a reader of typed rows may have. Throws StoreFailure with the fact's
/// place.
ManifestFact factOf(const Fact& fact, const RowWritten& written, const StoredRow& row) {
    ManifestFact made{.stamp = fact.stamp(),
                      .machine = fact.machine,
                      .seq = fact.seq,
                      .by = fact.by,
                      .sheet = written.sheet};
    made.recordedAt = factTable::recordedAt(fact);
    made.at = written.at;
    made.key = written.key;
    made.position = row.position;
    made.cells = row.cells;
    made.isGone = row.isGone;
    if (const auto fault = row.isGone ? std::nullopt : faultOf(sheet(written.sheet), row.cells))
        throw StoreFailure(unreadableField(fact.seq, fact.machine, std::string(fault->column), fault->text));
    return made;
}

void addFacts(Database& database, SheetId id, std::vector<ManifestFact>& facts) {
    std::map<std::string, StoredRow> rows; // by key
    for (const Fact& fact : factTable::ofKind(database, std::string(sheet(id).table))) {
        const RowWritten written = namesNow::row(database, factTable::rowOf(fact));
        StoredRow& row = rows[written.key];
        overlay(written, fact.stamp(), row);
        facts.push_back(factOf(fact, written, row));
    }
}

std::vector<ManifestCheck> checks(Database& database) {
    std::vector<ManifestCheck> checks;
    for (const SignOff& each : signOffTables::signOffsOfBoats(database))
        checks.push_back({each.stamp, each.location.name, nameOf(each.phase), each.by, each.at});
    return checks;
}

} // namespace

ManifestRecord RegisterStore::manifestRecord() const {
    std::vector<ManifestFact> facts;
    try {
        for (const SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points})
            addFacts(m_database, id, facts);
    } catch (StoreFailure& failure) { // which is said of the record of the manifests
        ErrorCode& code = failure.error.code;
        if (code == ErrorCode::FactUnreadable) code = ErrorCode::ManifestFactUnreadable;
        if (code == ErrorCode::FactFieldMissing) code = ErrorCode::ManifestFieldMissing;
        throw;
    }
    std::sort(facts.begin(), facts.end(),
              [](const ManifestFact& a, const ManifestFact& b) { return a.stamp < b.stamp; });
    return {std::move(facts), checks(m_database)};
}

} // namespace core
