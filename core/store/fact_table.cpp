#include "core/store/fact_table.h"

namespace core::factTable {
namespace {

#define FACT_COLUMNS                                                                                         \
    "id, device, seq, at_utc, by, kind, body, prev_hash, hash" // a literal, to join into SQL texts

Fact factOf(const Statement& row) {
    return {row.text(0), row.text(1), row.integer(2), row.text(3), row.text(4),
            row.text(5), row.text(6), row.text(7),    row.text(8)};
}

std::optional<Fact> first(Statement query) {
    if (!query.step()) return std::nullopt;
    Fact fact = factOf(query);
    query.run();
    return fact;
}

std::vector<Fact> all(Statement query) {
    std::vector<Fact> facts;
    while (query.step())
        facts.push_back(factOf(query));
    return facts;
}

} // namespace

std::string device(Database& database) {
    return database.value("SELECT device FROM here");
}

void setDevice(Database& database, const std::string& device) {
    database.prepare("INSERT INTO here (one, device) VALUES (1, ?)").with(device).run();
}

void insert(Database& database, const Fact& fact) {
    database.prepare("INSERT INTO fact (" FACT_COLUMNS ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(fact.id)
        .with(fact.device)
        .with(fact.seq)
        .with(fact.atUtc)
        .with(fact.by)
        .with(fact.kind)
        .with(fact.body)
        .with(fact.prevHash)
        .with(fact.hash)
        .run();
}

std::optional<Fact> newestOf(Database& database, const std::string& device) {
    return first(
        database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE device = ? ORDER BY seq DESC LIMIT 1")
            .with(device));
}

std::optional<Fact> byStamp(Database& database, const std::string& stamp) {
    // A stamp is "instant device number"; device and number are unique.
    const auto blank = stamp.find(' ');
    const auto last = stamp.rfind(' ');
    if (blank == std::string::npos || blank == last) return std::nullopt;
    return first(
        database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE device = ? AND seq = CAST(? AS INTEGER)")
            .with(stamp.substr(blank + 1, last - blank - 1))
            .with(stamp.substr(last + 1)));
}

std::optional<Fact> byId(Database& database, const std::string& id) {
    return first(database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE id = ?").with(id));
}

std::optional<Fact> beside(Database& database, const Fact& fact, int places) {
    return first(database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE device = ? AND seq = ?")
                     .with(fact.device)
                     .with(fact.seq + places));
}

void forEachInChain(Database& database, const std::function<void(const Fact&)>& visit) {
    Statement query = database.prepare("SELECT " FACT_COLUMNS " FROM fact ORDER BY device, seq");
    while (query.step())
        visit(factOf(query));
}

void forEachByStamp(Database& database, const std::function<void(const Fact&)>& visit) {
    Statement query = database.prepare("SELECT " FACT_COLUMNS " FROM fact ORDER BY at_utc, device, seq");
    while (query.step())
        visit(factOf(query));
}

std::vector<Fact> ofRow(Database& database, const std::string& kind, const std::string& key) {
    return all(database
                   .prepare("SELECT " FACT_COLUMNS
                            " FROM fact WHERE kind = ? AND json_extract(body, '$.key') = ? "
                            "AND json_extract(body, '$.key') IS NOT NULL ORDER BY at_utc, device, seq")
                   .with(kind)
                   .with(key));
}

std::vector<Fact> ofRowsUnder(Database& database, const std::string& kind, const std::string& key) {
    return all(database
                   .prepare("SELECT " FACT_COLUMNS
                            " FROM fact WHERE kind = ? AND json_extract(body, '$.key') > ? AND "
                            "json_extract(body, '$.key') < ? AND json_extract(body, '$.key') IS NOT NULL "
                            "ORDER BY at_utc, device, seq")
                   .with(kind)
                   .with(key + '\x1f')
                   .with(key + '\x20'));
}

std::vector<Fact> ofKind(Database& database, const std::string& kind) {
    return all(database
                   .prepare("SELECT " FACT_COLUMNS " FROM fact WHERE kind = ? AND json_extract(body, "
                            "'$.key') IS NOT NULL ORDER BY at_utc, device, seq")
                   .with(kind));
}

std::optional<FactBody> bodyOf(const Fact& fact) {
    auto body = core::bodyOf(fact);
    if (!body) throw StoreFailure(body.error());
    return std::move(*body);
}

RowWritten rowOf(const Fact& fact) {
    return std::get<RowWritten>(*factTable::bodyOf(fact));
}

Instant recordedAt(const Fact& fact) {
    if (const auto at = Instant::parse(fact.atUtc)) return *at;
    throw StoreFailure(unreadableField(fact.seq, fact.device, "at_utc", fact.atUtc));
}

} // namespace core::factTable
