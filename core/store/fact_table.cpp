#include "core/store/fact_table.h"

#include "core/record/machine_key.h"

namespace core::factTable {
namespace {

#define FACT_COLUMNS                                                                                         \
    "id, machine, seq, at_utc, by, kind, body, prev_hash, hash, signature" // a literal, to join into SQL
                                                                           // texts

#define FACTS_OF_ROWS "SELECT " FACT_COLUMNS " FROM fact WHERE id IN (SELECT fact FROM fact_of_row WHERE "
#define BY_STAMP "ORDER BY at_utc, machine, seq"

Fact factOf(const Statement& row) {
    return {row.text(0), row.text(1), row.integer(2), row.text(3), row.text(4),
            row.text(5), row.text(6), row.text(7),    row.text(8), row.text(9)};
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

void insert(Database& database, const Fact& fact) {
    database.prepare("INSERT INTO fact (" FACT_COLUMNS ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(fact.id)
        .with(fact.machine)
        .with(fact.seq)
        .with(fact.atUtc)
        .with(fact.by)
        .with(fact.kind)
        .with(fact.body)
        .with(fact.prevHash)
        .with(fact.hash)
        .with(fact.signature)
        .run();
}

std::optional<Fact> newestOf(Database& database, const std::string& machine) {
    return first(
        database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE machine = ? ORDER BY seq DESC LIMIT 1")
            .with(machine));
}

std::vector<std::string> machines(Database& database) {
    std::vector<std::string> ids;
    // One look into the index for each, where DISTINCT would read all of it.
    for (std::string before;;) {
        Statement next = database.prepare("SELECT min(machine) FROM fact WHERE machine > ?").with(before);
        if (!next.step() || next.isNull(0)) return ids;
        before = next.text(0);
        ids.push_back(before);
    }
}

void forEachAfter(Database& database, const std::string& machine, std::int64_t seq,
                  const std::function<void(const Fact&)>& visit) {
    Statement query =
        database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE machine = ? AND seq > ? ORDER BY seq")
            .with(machine)
            .with(seq);
    while (query.step())
        visit(factOf(query));
}

std::vector<Fact> after(Database& database, const std::string& machine, std::int64_t seq, int most) {
    return all(
        database
            .prepare("SELECT " FACT_COLUMNS " FROM fact WHERE machine = ? AND seq > ? ORDER BY seq LIMIT ?")
            .with(machine)
            .with(seq)
            .with(most));
}

std::optional<Fact> inChain(Database& database, const std::string& machine, std::int64_t seq) {
    return first(database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE machine = ? AND seq = ?")
                     .with(machine)
                     .with(seq));
}

std::optional<Fact> newest(Database& database) {
    return first(database.prepare("SELECT " FACT_COLUMNS
                                  " FROM fact ORDER BY at_utc DESC, machine DESC, seq DESC LIMIT 1"));
}

std::string head(Database& database) {
    const auto fact = newest(database);
    return fact ? fact->hash : std::string();
}

bool isThere(Database& database, const std::string& hash) {
    return database.prepare("SELECT 1 FROM fact WHERE hash = ?").with(hash).step();
}

std::optional<Fact> oldest(Database& database) {
    return first(database.prepare("SELECT " FACT_COLUMNS " FROM fact ORDER BY at_utc, machine, seq LIMIT 1"));
}

std::optional<Fact> byStamp(Database& database, const std::string& stamp) {
    // A stamp is "instant machine number"; machine and number are unique.
    const auto blank = stamp.find(' ');
    const auto last = stamp.rfind(' ');
    if (blank == std::string::npos || blank == last) return std::nullopt;
    return first(
        database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE machine = ? AND seq = CAST(? AS INTEGER)")
            .with(stamp.substr(blank + 1, last - blank - 1))
            .with(stamp.substr(last + 1)));
}

std::optional<Fact> byId(Database& database, const std::string& id) {
    return first(database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE id = ?").with(id));
}

std::optional<Fact> beside(Database& database, const Fact& fact, int places) {
    return inChain(database, fact.machine, fact.seq + places);
}

std::string publicKeyOf(Database& database, const std::string& machine) {
    const auto beginning = inChain(database, machine, 1);
    const auto body = beginning ? factTable::bodyOf(*beginning) : std::nullopt;
    const auto* begun = body ? std::get_if<MachineBegun>(&*body) : nullptr;
    return begun != nullptr && machineOf(begun->publicKey) == machine ? begun->publicKey : std::string();
}

void forEachInChain(Database& database, const std::function<void(const Fact&)>& visit) {
    Statement query = database.prepare("SELECT " FACT_COLUMNS " FROM fact ORDER BY machine, seq");
    while (query.step())
        visit(factOf(query));
}

void forEachByStamp(Database& database, const std::function<void(const Fact&)>& visit) {
    Statement query = database.prepare("SELECT " FACT_COLUMNS " FROM fact ORDER BY at_utc, machine, seq");
    while (query.step())
        visit(factOf(query));
}

void putRowOf(Database& database, const std::string& fact, std::string_view kind, const std::string& key) {
    database.prepare("INSERT OR IGNORE INTO fact_of_row (fact, kind, key) VALUES (?, ?, ?)")
        .with(fact)
        .with(kind)
        .with(key)
        .run();
}

std::vector<Fact> ofRow(Database& database, const std::string& kind, const std::string& key) {
    return all(database.prepare(FACTS_OF_ROWS "kind = ? AND key = ?) " BY_STAMP).with(kind).with(key));
}

std::vector<Fact> ofRowsUnder(Database& database, const std::string& kind, const std::string& key) {
    return all(database.prepare(FACTS_OF_ROWS "kind = ? AND key > ? AND key < ?) " BY_STAMP)
                   .with(kind)
                   .with(key + '\x1f')
                   .with(key + '\x20'));
}

std::vector<Fact> ofKind(Database& database, const std::string& kind) {
    return all(database.prepare(FACTS_OF_ROWS "kind = ?) " BY_STAMP).with(kind));
}

std::vector<Fact> ofPlainKind(Database& database, const std::string& kind) {
    return all(database.prepare("SELECT " FACT_COLUMNS " FROM fact WHERE kind = ? " BY_STAMP).with(kind));
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"fact_of_row"};
    return names;
}

std::optional<FactBody> bodyOf(const Fact& fact) {
    auto body = core::bodyOf(fact);
    if (!body) throw StoreFailure(body.error());
    return std::move(*body);
}

RowWritten rowOf(const Fact& fact) {
    const auto body = factTable::bodyOf(fact);
    if (const auto* row = body ? std::get_if<RowWritten>(&*body) : nullptr) return *row;
    throw StoreFailure(unreadableField(fact.seq, fact.machine, "kind", fact.kind));
}

Instant recordedAt(const Fact& fact) {
    if (const auto at = Instant::parse(fact.atUtc)) return *at;
    throw StoreFailure(unreadableField(fact.seq, fact.machine, "at_utc", fact.atUtc));
}

} // namespace core::factTable
