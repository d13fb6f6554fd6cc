#include "core/store/ledger.h"

#include "core/base/error_code.h"
#include "core/store/chain_walk.h"
#include "core/store/check_acts.h"
#include "core/store/check_tables.h"
#include "core/store/fact_table.h"
#include "core/store/migrations.h"
#include "core/store/private_table.h"
#include "core/store/row_table.h"
#include "core/store/schema.h"
#include "core/store/tag_tables.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace core {
namespace {

std::string rowText(sqlite3_stmt* row) {
    std::string text;
    for (int i = 0; i < sqlite3_column_count(row); ++i) {
        const auto* cell = reinterpret_cast<const char*>(sqlite3_column_text(row, i));
        text += fmt::format("{}={} ", sqlite3_column_name(row, i), cell != nullptr ? cell : "NULL");
    }
    return text;
}

/// Both tables in primary-key order, walked side by side; the first row that differs is reported.
void compareTable(Database& kept, Database& made, const std::string& table, Verification& into) {
    const std::string sql = fmt::format("SELECT * FROM {} ORDER BY 1, 2", table);
    sqlite3_stmt* a = nullptr;
    sqlite3_stmt* b = nullptr;
    sqlite3_prepare_v2(kept.handle(), sql.c_str(), -1, &a, nullptr);
    sqlite3_prepare_v2(made.handle(), sql.c_str(), -1, &b, nullptr);
    for (bool more = true; more;) {
        const bool inKept = sqlite3_step(a) == SQLITE_ROW;
        const bool inMade = sqlite3_step(b) == SQLITE_ROW;
        more = inKept && inMade;
        if (inKept != inMade || (more && rowText(a) != rowText(b))) {
            const std::string row = rowText(inKept ? a : b);
            into.problems.push_back({ErrorCode::TableDiffers, {table, row.substr(0, 80)}});
            break;
        }
    }
    sqlite3_finalize(a);
    sqlite3_finalize(b);
}

void compareTables(Database& database, Database& made, Verification& into) {
    try {
        rebuildTables(database, made);
    } catch (const StoreFailure& failure) {
        into.problems.push_back(failure.error);
        return;
    }
    for (const auto* tables : {&rowTable::tables(), &checkTables::tables(), &checkActs::tables(),
                               &tagTables::tables(), &privateTable::tables(), &factTable::tables()})
        for (const std::string& table : *tables)
            compareTable(database, made, table, into);
}

} // namespace

Verification verifyStore(Database& database) {
    Verification result;
    if (const std::string said = database.value("PRAGMA integrity_check"); said != "ok")
        result.problems.push_back({ErrorCode::FileUnsound, {said}});
    Database made({}, Database::Mode::Memory);
    migrate(made, migrations());
    for (const std::string& difference : schemaDifferences(database))
        result.problems.push_back({ErrorCode::SchemaDiffers, {difference}});
    ChainWalk walk(database, result);
    factTable::forEachInChain(database, [&](const Fact& fact) { walk.visit(fact); });
    for (const std::string& stray : privateTable::strays(database))
        result.problems.push_back({ErrorCode::PrivateCellStray, {stray}});
    compareTables(database, made, result);
    const auto newest = factTable::newest(database);
    result.head = newest ? newest->hash : std::string();
    return result;
}

} // namespace core
