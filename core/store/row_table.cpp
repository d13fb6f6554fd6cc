#include "core/store/row_table.h"

#include <array>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace core::rowTable {
namespace {

/// SQL texts of one sheet. Made of the descriptors' own names, never of anything a person gave.
struct Texts {
    std::string find;
    std::string put;
    std::string all;
    std::string columns;
};

Texts textsOf(const Sheet& sheet) {
    std::vector<std::string> names;
    std::vector<std::string> updates;
    for (const Column& column : sheet.columns) {
        names.emplace_back(column.name);
        updates.push_back(fmt::format("{0} = excluded.{0}", column.name));
    }
    const std::string columns = fmt::format("{}", fmt::join(names, ", "));
    std::string marks;
    for (std::size_t i = 0; i < names.size(); ++i)
        marks += ", ?";
    Texts texts;
    texts.columns = columns;
    texts.find = fmt::format("SELECT stamp, position, {} FROM {} WHERE key = ?", columns, sheet.table);
    texts.put = fmt::format(
        "INSERT INTO {0} (key, stamp, position, {1}) VALUES (?, ?, ?{2}) ON CONFLICT (key) DO UPDATE SET "
        "stamp = excluded.stamp, position = excluded.position, {3}",
        sheet.table, columns, marks, fmt::join(updates, ", "));
    texts.all = fmt::format("SELECT {} FROM {} ORDER BY {}key", columns, sheet.table,
                            sheet.keepsOrder ? "position, " : "");
    return texts;
}

const Texts& texts(const Sheet& sheet) {
    static const std::array<Texts, sheetCount> made = [] {
        std::array<Texts, sheetCount> result;
        for (const Sheet& each : allSheets())
            result[static_cast<std::size_t>(each.id)] = textsOf(each);
        return result;
    }();
    return made[static_cast<std::size_t>(sheet.id)];
}

Cells cellsOf(const Statement& row, const Sheet& sheet, int from) {
    Cells cells;
    cells.reserve(sheet.columns.size());
    for (std::size_t i = 0; i < sheet.columns.size(); ++i)
        cells.push_back(row.text(from + static_cast<int>(i)));
    return cells;
}

std::vector<Cells> rows(Statement query, const Sheet& sheet) {
    std::vector<Cells> result;
    while (query.step())
        result.push_back(cellsOf(query, sheet, 0));
    return result;
}

} // namespace

std::optional<StoredRow> find(Database& database, const Sheet& sheet, const std::string& key) {
    Statement query = database.prepare(texts(sheet).find).with(key);
    if (!query.step()) return std::nullopt;
    StoredRow row{query.text(0), static_cast<int>(query.integer(1)), cellsOf(query, sheet, 2)};
    query.run();
    return row;
}

void put(Database& database, const Sheet& sheet, const std::string& key, const StoredRow& row) {
    Statement statement = database.prepare(texts(sheet).put).with(key).with(row.stamp).with(row.position);
    for (const std::string& cell : row.cells)
        statement.with(cell);
    statement.run();
}

void remove(Database& database, const Sheet& sheet, const std::string& key) {
    database.prepare(fmt::format("DELETE FROM {} WHERE key = ?", sheet.table)).with(key).run();
}

std::vector<Cells> all(Database& database, const Sheet& sheet) {
    return rows(database.prepare(texts(sheet).all), sheet);
}

std::vector<Cells> where(Database& database, const Sheet& sheet, std::string_view column,
                         const std::string& value) {
    const auto sql = fmt::format("SELECT {} FROM {} WHERE {} = ? ORDER BY {}key", texts(sheet).columns,
                                 sheet.table, column, sheet.keepsOrder ? "position, " : "");
    return rows(database.prepare(sql).with(value), sheet);
}

int placeBehind(Database& database, const Sheet& sheet, std::string_view column, const std::string& value) {
    Statement query = database
                          .prepare(fmt::format("SELECT coalesce(max(position) + 1, 0) FROM {} WHERE {} = ?",
                                               sheet.table, column))
                          .with(value);
    query.step();
    const auto place = static_cast<int>(query.integer(0));
    query.run();
    return place;
}

void putInstant(Database& database, const Sheet& sheet, const std::string& key, const std::string& at) {
    database
        .prepare(
            "INSERT INTO made_at (kind, key, at) VALUES (?, ?, ?) ON CONFLICT (kind, key) DO UPDATE SET at = "
            "max(at, excluded.at)")
        .with(sheet.table)
        .with(key)
        .with(at)
        .run();
}

void removeInstant(Database& database, const Sheet& sheet, const std::string& key) {
    database.prepare("DELETE FROM made_at WHERE kind = ? AND key = ?").with(sheet.table).with(key).run();
}

std::optional<Instant> instantOf(Database& database, const Sheet& sheet, const std::string& key) {
    Statement query =
        database.prepare("SELECT at FROM made_at WHERE kind = ? AND key = ?").with(sheet.table).with(key);
    if (!query.step()) return std::nullopt;
    const std::string text = query.text(0);
    query.run();
    const auto at = Instant::parse(text);
    if (!at)
        throw StoreFailure(
            unreadableCell({"made_at", fmt::format("{} {}", sheet.table, key), "at"}, {}, text));
    return at;
}

void putState(Database& database, const GivenState& state) {
    database
        .prepare("INSERT INTO item_state (code, stamp, id, state, since, why, check_id, rule) "
                 "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING")
        .with(state.code)
        .with(state.stamp)
        .with(state.id)
        .with(state.state)
        .with(state.since)
        .with(state.why)
        .with(state.check)
        .with(state.rule)
        .run();
}

void putClubName(Database& database, const std::string& stamp, const std::string& name) {
    database
        .prepare("INSERT INTO club (key, stamp, name) VALUES ('club', ?, ?) ON CONFLICT (key) DO UPDATE SET "
                 "stamp = "
                 "excluded.stamp, name = excluded.name WHERE excluded.stamp > stamp")
        .with(stamp)
        .with(name)
        .run();
}

std::string clubName(Database& database) {
    return database.value("SELECT name FROM club");
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names = [] {
        std::vector<std::string> result{"club", "made_at", "item_state"};
        for (const Sheet& each : allSheets())
            result.emplace_back(each.table);
        return result;
    }();
    return names;
}

} // namespace core::rowTable
