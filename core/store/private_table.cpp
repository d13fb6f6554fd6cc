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

std::vector<std::string> strays(Database& database) {
    std::vector<std::string> found;
    Statement query = database.prepare("SELECT fact, field FROM private_cell");
    while (query.step()) {
        const std::string column = query.text(1);
        const auto fact = factTable::byId(database, query.text(0));
        const auto body =
            fact ? core::bodyOf(*fact) : Result<std::optional<FactBody>>(std::optional<FactBody>());
        const auto sealed = body && *body ? sealedCells(**body) : std::vector<SealedCell>();
        const bool isTold = std::any_of(sealed.begin(), sealed.end(),
                                        [&](const SealedCell& each) { return each.column == column; });
        if (!isTold) found.push_back(query.text(0) + ' ' + column);
    }
    return found;
}

void erase(Database& database, const std::string& fact, const std::string& stamp) {
    database.prepare("DELETE FROM private_cell WHERE fact = ?").with(fact).run();
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
