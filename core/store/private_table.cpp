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
        const auto* row = body && *body ? std::get_if<RowWritten>(&**body) : nullptr;
        const int index = row != nullptr ? sheet(row->sheet).indexOf(column) : -1;
        const bool isTold =
            index >= 0 && std::any_of(row->sealed.begin(), row->sealed.end(),
                                      [&](const auto& sealed) { return sealed.first == index; });
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
