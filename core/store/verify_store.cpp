#include "core/store/ledger.h"

#include "core/base/error_code.h"
#include "core/register/typed_rows.h"
#include "core/store/chain_walk.h"
#include "core/store/fact_table.h"
#include "core/store/machine_names.h"
#include "core/store/migrations.h"
#include "core/store/private_table.h"
#include "core/store/row_table.h"
#include "core/store/schema.h"

#include <cstdlib>
#include <fmt/format.h>
#include <sqlite3.h>

namespace core {
namespace {

/// A disk that fails, or too little memory, is no damage: it is told as what it is.
void noteDamage(const StoreFailure& failure, Verification& into) {
    if (failure.error.kind() == ErrorKind::DiskFailed || failure.error.kind() == ErrorKind::FileLocked)
        throw failure;
    into.problems.push_back(failure.error);
}

/// Of a page that could not be read, by the disk's fault or for want of memory, the integrity check says what
/// it says of damage, and SQLite's code behind it.
bool isReadFailure(const std::string& said) {
    static constexpr std::string_view before = "error code=";
    const auto at = said.find(before);
    if (at == std::string::npos) return false;
    const int code = std::atoi(said.c_str() + at + before.size()) & 0xff;
    return code == SQLITE_IOERR || code == SQLITE_NOMEM;
}

/// Both tables in primary-key order, walked side by side; the first row that differs is reported.
void compareTable(Database& kept, Database& made, const std::string& table, Verification& into) {
    const std::string sql = fmt::format("SELECT * FROM {} ORDER BY 1, 2", table);
    Statement a = kept.prepare(sql);
    Statement b = made.prepare(sql);
    for (bool more = true; more;) {
        const bool inKept = a.step();
        const bool inMade = b.step();
        more = inKept && inMade;
        if (inKept != inMade || (more && a.row() != b.row())) {
            const std::string row = (inKept ? a : b).row();
            into.problems.push_back({ErrorCode::TableDiffers, {table, row.substr(0, 80)}});
            break;
        }
    }
}

void compareTables(Database& database, Database& made, Verification& into) {
    try {
        rebuildTables(database, made);
    } catch (const StoreFailure& failure) {
        return noteDamage(failure, into);
    }
    for (const std::string& table : derivedTables()) {
        try {
            compareTable(database, made, table, into);
        } catch (const StoreFailure& failure) {
            noteDamage(failure, into);
        }
    }
}

/// Cells that no program can read, although the facts say so.
void lookAtCells(Database& database, Verification& into) {
    for (const Sheet& sheet : allSheets())
        for (const Cells& cells : rowTable::all(database, sheet))
            if (const auto fault = faultOf(sheet, cells))
                into.problems.push_back(unreadableCell(
                    {std::string(sheet.file), cells.front(), std::string(fault->column)}, {}, fault->text));
}

/// As somebody named them since they began.
void nameMachines(Database& database, Verification& into) {
    for (MachineRecord& each : into.machines)
        if (std::string given = machineNames::given(database, each.machine); !given.empty())
            each.name = std::move(given);
}

} // namespace

Verification verifyStore(Database& database) {
    const ReadSnapshot snapshot(database);
    Verification result;
    if (const std::string said = database.value("PRAGMA integrity_check"); said != "ok") {
        if (isReadFailure(said)) throw StoreFailure({ErrorCode::DatabaseFailed, {said}, database.path()});
        result.problems.push_back({ErrorCode::FileUnsound, {said}});
    }
    Database made({}, Database::Mode::Memory);
    migrate(made, migrations());
    for (const std::string& difference : schemaDifferences(database))
        result.problems.push_back({ErrorCode::SchemaDiffers, {difference}});
    ChainWalk walk(database, result);
    factTable::forEachInChain(database, [&](const Fact& fact) { walk.visit(fact); });
    walk.end();
    nameMachines(database, result);
    for (const std::string& stray : privateTable::strays(database))
        result.problems.push_back({ErrorCode::PrivateCellStray, {stray}});
    compareTables(database, made, result);
    lookAtCells(database, result);
    result.head = factTable::head(database);
    return result;
}

} // namespace core
