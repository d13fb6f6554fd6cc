#include "core/hub/hub_facts.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/hub/hub_connection.h"

#include <pqxx/pqxx>
#include <utility>

namespace core::hubFacts {
namespace {

#define HUB_FACT_COLUMNS                                                                                     \
    "encode(uuid_send(machine), 'hex'), number, id, at_utc, by, kind, body, encode(hash, 'hex'), "           \
    "encode(signature, 'hex')"

/// Few enough for the time limit of a call on a slow line, enough for a quick one.
constexpr int pageFacts = 5000;

std::string text(const pqxx::field& field) {
    return {field.c_str(), field.size()};
}

Fact factOf(const pqxx::row& row, std::string prevHash) {
    Fact fact;
    fact.machine = text(row[0]);
    fact.seq = row[1].as<std::int64_t>();
    fact.id = text(row[2]);
    fact.atUtc = text(row[3]);
    fact.by = text(row[4]);
    fact.kind = text(row[5]);
    fact.body = text(row[6]);
    fact.prevHash = std::move(prevHash);
    fact.hash = text(row[7]);
    fact.signature = text(row[8]);
    return fact;
}

} // namespace

Meeting meet(HubConnection& hub, const std::string& founder, const std::vector<Head>& heads,
             const BoardDigest& board) {
    BinaryArray machines(BinaryArray::Of::Uuid), numbers(BinaryArray::Of::BigInt),
        hashes(BinaryArray::Of::Text);
    for (const Head& head : heads) {
        machines.addHex(head.machine);
        numbers.add(head.number);
        hashes.add(head.hash);
    }
    const pqxx::result rows = hub.runBinary(
        "SELECT club, name, is_founded, facts, is_news, encode(uuid_send(machine), 'hex'), newest, met, hash "
        "FROM tholepin.meet($1::text::uuid, $2::uuid[], $3::bigint[], $4::text[], nullif($5::text, "
        "'')::uuid, "
        "$6::text)",
        {founder, machines.parameter(), numbers.parameter(), hashes.parameter(), board.machine,
         board.sha256});
    Meeting meeting;
    for (const pqxx::row& row : rows) {
        meeting.club = row[0].as<int>();
        meeting.name = text(row[1]);
        meeting.isFounded = row[2].as<bool>();
        meeting.facts = row[3].as<std::int64_t>();
        meeting.isNews = row[4].as<bool>();
        if (!row[5].is_null())
            meeting.differences.push_back(
                {text(row[5]), row[6].as<std::int64_t>(), row[7].as<std::int64_t>(), text(row[8])});
    }
    return meeting;
}

void FactBatch::add(const Fact& fact) {
    const auto known = m_last.find(fact.machine);
    if (known == m_last.end() || m_runs[known->second].first + m_runs[known->second].count != fact.seq) {
        m_last[fact.machine] = m_runs.size();
        m_runs.emplace_back();
        m_runs.back().machine = fact.machine;
        m_runs.back().first = fact.seq;
    }
    Run& run = m_runs[m_last.at(fact.machine)];
    ++run.count;
    run.ids.addHex(fact.id);
    run.ats.add(fact.atUtc);
    run.bys.add(fact.by);
    run.kinds.add(fact.kind);
    run.bodies.add(fact.body);
    run.hashes.addHex(fact.hash);
    run.signatures.addHex(fact.signature);
    ++m_facts;
    m_bytes += fact.body.size();
}

std::vector<std::string> FactBatch::parameters() const {
    BinaryArray machines(BinaryArray::Of::Uuid), firsts(BinaryArray::Of::BigInt),
        counts(BinaryArray::Of::BigInt);
    for (const Run& run : m_runs) {
        machines.addHex(run.machine);
        firsts.add(run.first);
        counts.add(run.count);
    }
    const Run none;
    std::vector<std::string> parameters{machines.parameter(), firsts.parameter(), counts.parameter()};
    for (const auto column :
         {&Run::ids, &Run::ats, &Run::bys, &Run::kinds, &Run::bodies, &Run::hashes, &Run::signatures}) {
        BinaryArray all = none.*column;
        for (const Run& run : m_runs)
            all.add(run.*column);
        parameters.push_back(all.parameter());
    }
    return parameters;
}

std::optional<int> push(HubConnection& hub, const std::string& founder, std::int64_t known,
                        const FactBatch& facts) {
    std::vector<std::string> parameters = facts.parameters();
    parameters.insert(parameters.begin(), {founder, std::to_string(known)});
    try {
        return hub
            .runBinary("SELECT tholepin.push($1::text::uuid, $2::text::bigint, $3::uuid[], $4::bigint[], "
                       "$5::bigint[], $6::uuid[], $7::text[], $8::text[], $9::text[], $10::text[], "
                       "$11::bytea[], $12::bytea[])",
                       parameters)
            .at(0)[0]
            .as<int>();
    } catch (const StoreFailure& failure) {
        if (failure.error.code == ErrorCode::HubAhead) return std::nullopt;
        throw;
    }
}

void pushPhoto(HubConnection& hub, const std::string& founder, const std::string& sha256,
               const std::string& bytes) {
    hub.runBinary("SELECT tholepin.push_photo($1::text::uuid, $2::text, $3::bytea)",
                  {founder, sha256, bytes});
}

void pushPrivate(HubConnection& hub, const std::string& founder, const CellsOfFacts& cells) {
    BinaryArray facts(BinaryArray::Of::Uuid), fields(BinaryArray::Of::Text), salts(BinaryArray::Of::Text),
        values(BinaryArray::Of::Text);
    for (const auto& [fact, cell] : cells) {
        facts.addHex(fact);
        fields.add(cell.column);
        salts.add(cell.salt);
        values.add(cell.value);
    }
    hub.runBinary(
        "SELECT tholepin.push_private($1::text::uuid, $2::uuid[], $3::text[], $4::text[], $5::text[])",
        {founder, facts.parameter(), fields.parameter(), salts.parameter(), values.parameter()});
}

void pull(HubConnection& hub, int club, const std::vector<Part>& parts,
          const std::function<std::string(const Part&)>& hashBefore, const std::function<void(Fact)>& take) {
    for (const Part& part : parts) {
        std::string before = hashBefore(part);
        for (std::int64_t after = part.after; after < part.upTo;) {
            const pqxx::result rows = hub.run(
                "SELECT " HUB_FACT_COLUMNS " FROM tholepin.fact WHERE club = $1::int AND machine = "
                "$2::uuid AND number > $3::bigint AND number <= $4::bigint ORDER BY number LIMIT $5::int",
                {std::to_string(club), part.machine, std::to_string(after), std::to_string(part.upTo),
                 std::to_string(pageFacts)});
            if (rows.empty())
                throw StoreFailure(
                    {ErrorCode::HubRefused, {"facts of machine " + part.machine + " are gone"}});
            for (const pqxx::row& row : rows) {
                Fact fact = factOf(row, before);
                before = fact.hash;
                after = fact.seq;
                take(std::move(fact));
            }
        }
    }
}

CellsOfFacts privateCells(HubConnection& hub, int club, const std::vector<std::string>& facts) {
    BinaryArray ids(BinaryArray::Of::Uuid);
    for (const std::string& fact : facts)
        ids.addHex(fact);
    CellsOfFacts cells;
    for (const pqxx::row& row :
         hub.runBinary("SELECT fact, field, salt, value FROM tholepin.private_cell WHERE "
                       "club = $1::text::int AND fact = ANY ($2::uuid[])",
                       {std::to_string(club), ids.parameter()}))
        cells.emplace_back(text(row[0]), PrivateCell{text(row[1]), text(row[2]), text(row[3])});
    return cells;
}

std::optional<std::string> photo(HubConnection& hub, int club, const std::string& sha256) {
    const pqxx::result rows =
        hub.run("SELECT bytes FROM tholepin.photo WHERE club = $1::int AND sha256 = decode($2, 'hex')",
                {std::to_string(club), sha256});
    if (rows.empty()) return std::nullopt;
    return pqxx::binarystring(rows[0][0]).str();
}

std::optional<Fact> inChain(HubConnection& hub, int club, const std::string& machine, std::int64_t number) {
    const pqxx::result rows =
        hub.run("SELECT " HUB_FACT_COLUMNS " FROM tholepin.fact WHERE club = $1::int AND "
                "machine = $2::uuid AND number = $3::bigint",
                {std::to_string(club), machine, std::to_string(number)});
    return rows.empty() ? std::nullopt : std::optional(factOf(rows[0], {}));
}

std::vector<KnownClub> clubs(HubConnection& hub) {
    std::vector<KnownClub> known;
    for (const pqxx::row& row :
         hub.run("SELECT c.number, c.name, encode(uuid_send(f.machine), 'hex') FROM tholepin.club AS c LEFT "
                 "JOIN tholepin.founder AS f ON f.club = c.number ORDER BY c.name",
                 {}))
        known.push_back({row[0].as<int>(), text(row[1]), text(row[2])});
    return known;
}

std::optional<int> ownClub(HubConnection& hub) {
    const pqxx::result rows = hub.run("SELECT tholepin.own_club()", {});
    return rows[0][0].is_null() ? std::nullopt : std::optional(rows[0][0].as<int>());
}

std::string ownRole(HubConnection& hub) {
    return text(hub.run("SELECT session_user::text", {})[0][0]);
}

std::vector<Part> all(HubConnection& hub, int club) {
    std::vector<Part> parts;
    for (const pqxx::row& row : hub.run(
             "SELECT encode(uuid_send(m.machine), 'hex'), (SELECT max(f.number) FROM tholepin.fact AS f "
             "WHERE f.club = $1::int AND f.machine = m.machine) FROM tholepin.machine AS m WHERE m.club = "
             "$1::int ORDER BY m.machine",
             {std::to_string(club)}))
        parts.push_back({text(row[0]), 0, row[1].as<std::int64_t>()});
    return parts;
}

} // namespace core::hubFacts
