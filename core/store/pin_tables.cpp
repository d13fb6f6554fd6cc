#include "core/store/pin_tables.h"

#include "core/base/plain_text.h"
#include "core/store/fact_table.h"
#include "core/store/private_table.h"

#include <algorithm>

namespace core::pinTables {
namespace {

constexpr const char* words[] = {"set", "cleared", "reset"};

const char* nameOf(Change change) {
    return words[static_cast<std::size_t>(change)];
}

#define CHANGES "SELECT id, stamp, person, change, at, by FROM pin_change AS each "
#define NEWEST                                                                                               \
    "NOT EXISTS (SELECT 1 FROM pin_change AS later WHERE later.key = each.key AND later.stamp > "            \
    "each.stamp) "

ChangeRow rowOf(const Statement& row) {
    const auto change = std::find(std::begin(words), std::end(words), row.text(3));
    const auto at = Instant::parse(row.text(4));
    if (change == std::end(words))
        throw StoreFailure(unreadableCell({"pin_change", row.text(0), "change"}, {}, row.text(3)));
    if (!at) throw StoreFailure(unreadableCell({"pin_change", row.text(0), "at"}, {}, row.text(4)));
    return {row.text(0), row.text(1), row.text(2), static_cast<Change>(change - std::begin(words)),
            *at,         row.text(5)};
}

std::vector<ChangeRow> rowsOf(Statement query) {
    std::vector<ChangeRow> rows;
    while (query.step())
        rows.push_back(rowOf(query));
    return rows;
}

/// With what is kept of it, where that is what the fact tells of.
std::optional<PinNow> pinOf(Database& database, const ChangeRow& row) {
    const auto fact = factTable::byId(database, row.id);
    const auto body = fact ? factTable::bodyOf(*fact) : std::nullopt;
    const auto sealed = body ? sealedCells(*body) : std::vector<SealedCell>();
    const auto cell = sealed.empty() ? std::nullopt : privateTable::find(database, row.id, sealed[0].column);
    if (!cell) return std::nullopt;
    const bool isWhole = digestOf(row.id, *cell) == sealed.front().digest;
    return PinNow{row.id, row.person, isWhole ? cell->value : std::string()};
}

} // namespace

void put(Database& database, const ChangeRow& row) {
    database
        .prepare("INSERT INTO pin_change (id, stamp, key, person, change, at, by) VALUES (?, ?, ?, ?, ?, ?, "
                 "?) ON CONFLICT DO NOTHING")
        .with(row.id)
        .with(row.stamp)
        .with(foldName(row.person))
        .with(row.person)
        .with(nameOf(row.change))
        .with(row.at.iso())
        .with(row.by)
        .run();
}

std::optional<PinNow> of(Database& database, const std::string& person) {
    const auto rows =
        rowsOf(database.prepare(CHANGES "WHERE each.key = ? AND " NEWEST).with(foldName(person)));
    if (rows.empty() || rows.front().change != Change::Set) return std::nullopt;
    return pinOf(database, rows.front());
}

std::vector<PinNow> all(Database& database) {
    std::vector<PinNow> pins;
    for (const ChangeRow& row : rowsOf(database.prepare(CHANGES "WHERE " NEWEST "ORDER BY each.key")))
        if (row.change == Change::Set)
            if (auto pin = pinOf(database, row)) pins.push_back(std::move(*pin));
    return pins;
}

std::vector<std::string> factsThatSet(Database& database, const std::string& person) {
    std::vector<std::string> ids;
    Statement query =
        database.prepare("SELECT id FROM pin_change WHERE key = ? AND change = 'set'").with(foldName(person));
    while (query.step())
        ids.push_back(query.text(0));
    return ids;
}

std::vector<ChangeRow> resetsSince(Database& database, Instant at) {
    return rowsOf(
        database.prepare(CHANGES "WHERE change = 'reset' AND at >= ? ORDER BY stamp DESC").with(at.iso()));
}

void putSignaturesProven(Database& database, const std::string& stamp, bool isAsked) {
    database.prepare("INSERT INTO signing (stamp, proven) VALUES (?, ?) ON CONFLICT DO NOTHING")
        .with(stamp)
        .with(isAsked ? 1 : 0)
        .run();
}

bool areSignaturesProven(Database& database) {
    Statement query = database.prepare("SELECT proven FROM signing ORDER BY stamp DESC LIMIT 1");
    return query.step() && query.integer(0) != 0;
}

WrongPins wrongPins(Database& database, const std::string& computer, const std::string& person) {
    Statement query = database
                          .prepare("SELECT wrong, at, boot, awake FROM wrong_pin WHERE computer = ? AND "
                                   "person = ?")
                          .with(computer)
                          .with(foldName(person));
    if (!query.step()) return {};
    return {query.integer(0), query.integer(1), query.text(2), query.integer(3)};
}

void putWrongPins(Database& database, const std::string& computer, const std::string& person,
                  const WrongPins& wrong) {
    database.prepare("DELETE FROM wrong_pin WHERE computer = ? AND person = ?")
        .with(computer)
        .with(foldName(person))
        .run();
    if (wrong.wrong == 0) return;
    database
        .prepare("INSERT INTO wrong_pin (computer, person, wrong, at, boot, awake) VALUES (?, ?, ?, ?, ?, ?)")
        .with(computer)
        .with(foldName(person))
        .with(wrong.wrong)
        .with(wrong.at)
        .with(wrong.boot)
        .with(wrong.awake)
        .run();
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"pin_change", "signing"};
    return names;
}

} // namespace core::pinTables
