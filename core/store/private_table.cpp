#include "core/store/private_table.h"

#include "core/store/fact_table.h"

#include <algorithm>

namespace core::privateTable {

void put(Database& database, const std::string& fact, const std::vector<PrivateCell>& cells) {
    for (const PrivateCell& cell : cells)
        database.prepare("INSERT INTO private_cell (fact, field, salt, value) VALUES (?, ?, ?, ?)")
            .with(fact)
            .with(cell.column)
            .with(cell.salt)
            .with(cell.value)
            .run();
}

std::optional<PrivateCell> find(Database& database, const std::string& fact, const std::string& column) {
    Statement query = database.prepare("SELECT salt, value FROM private_cell WHERE fact = ? AND field = ?")
                          .with(fact)
                          .with(column);
    if (!query.step()) return std::nullopt;
    return PrivateCell{column, query.text(0), query.text(1)};
}

std::vector<PrivateCell> of(Database& database, const std::string& fact) {
    std::vector<PrivateCell> cells;
    Statement query =
        database.prepare("SELECT field, salt, value FROM private_cell WHERE fact = ?").with(fact);
    while (query.step())
        cells.push_back({query.text(0), query.text(1), query.text(2)});
    return cells;
}

int cellsOf(Database& database, const std::string& fact) {
    Statement query = database.prepare("SELECT count(*) FROM private_cell WHERE fact = ?").with(fact);
    query.step();
    return static_cast<int>(query.integer(0));
}

namespace {

/// The columns whose cells that fact seals, by name.
std::vector<std::string> sealedBy(Database& database, const std::string& id) {
    const auto fact = factTable::byId(database, id);
    const auto body = fact ? core::bodyOf(*fact) : Result<std::optional<FactBody>>(std::optional<FactBody>());
    std::vector<std::string> columns;
    if (body && *body)
        for (SealedCell& sealed : sealedCells(**body))
            columns.push_back(std::move(sealed.column));
    return columns;
}

} // namespace

std::vector<std::string> strays(Database& database) {
    std::vector<std::string> found;
    Statement query = database.prepare("SELECT fact, field FROM private_cell");
    while (query.step()) {
        const auto sealed = sealedBy(database, query.text(0));
        if (std::find(sealed.begin(), sealed.end(), query.text(1)) == sealed.end())
            found.push_back(query.text(0) + ' ' + query.text(1));
    }
    for (const std::string& fact : notHere(database))
        if (sealedBy(database, fact).empty() || cellsOf(database, fact) > 0 || isErased(database, fact))
            found.push_back(fact);
    return found;
}

void noteNotHere(Database& database, const std::string& fact) {
    database.prepare("INSERT INTO private_not_here (fact) VALUES (?) ON CONFLICT DO NOTHING")
        .with(fact)
        .run();
}

bool isNotHere(Database& database, const std::string& fact) {
    return database.prepare("SELECT 1 FROM private_not_here WHERE fact = ?").with(fact).step();
}

std::vector<std::string> notHere(Database& database) {
    std::vector<std::string> facts;
    Statement query = database.prepare("SELECT fact FROM private_not_here ORDER BY fact");
    while (query.step())
        facts.push_back(query.text(0));
    return facts;
}

void putWhatWasNotHere(Database& database, const std::string& fact, const std::vector<PrivateCell>& cells) {
    database.prepare("DELETE FROM private_not_here WHERE fact = ?").with(fact).run();
    put(database, fact, cells);
}

void erase(Database& database, const std::string& fact, const std::string& stamp) {
    database.prepare("DELETE FROM private_cell WHERE fact = ?").with(fact).run();
    database.prepare("DELETE FROM private_not_here WHERE fact = ?").with(fact).run();
    database
        .prepare("INSERT INTO erased (fact, stamp) VALUES (?, ?) ON CONFLICT (fact) DO UPDATE SET stamp = "
                 "min(stamp, excluded.stamp)")
        .with(fact)
        .with(stamp)
        .run();
}

bool isErased(Database& database, const std::string& fact) {
    return database.prepare("SELECT 1 FROM erased WHERE fact = ?").with(fact).step();
}

void open(Database& database, const std::string& fact, RowWritten& row) {
    for (const auto& [column, digest] : row.sealed) {
        const std::string name(sheet(row.sheet).columns[static_cast<std::size_t>(column)].name);
        const auto cell = find(database, fact, name);
        row.set.emplace_back(column, cell ? cell->value : std::string());
    }
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"erased"};
    return names;
}

} // namespace core::privateTable
