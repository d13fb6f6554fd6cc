#include "core/hub/hub_facts.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/hub/hub_connection.h"
#include "core/hub/text_array.h"

#include <pqxx/pqxx>
#include <sodium.h>
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
    TextArray machines, numbers, hashes;
    for (const Head& head : heads) {
        machines.add(head.machine);
        numbers.add(std::to_string(head.number));
        hashes.add(head.hash);
    }
    const pqxx::result rows = hub.run(
        "SELECT club, name, is_founded, facts, is_news, encode(uuid_send(machine), 'hex'), newest, met, hash "
        "FROM tholepin.meet($1::uuid, $2::uuid[], $3::bigint[], $4::text[], nullif($5, '')::uuid, $6)",
        {founder, machines.literal(), numbers.literal(), hashes.literal(), board.machine, board.sha256});
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

std::optional<int> push(HubConnection& hub, const std::string& founder, std::int64_t known,
                        const std::vector<Fact>& facts) {
    TextArray machines, numbers, ids, ats, bys, kinds, bodies, hashes, signatures;
    for (const Fact& fact : facts) {
        machines.add(fact.machine);
        numbers.add(std::to_string(fact.seq));
        ids.add(fact.id);
        ats.add(fact.atUtc);
        bys.add(fact.by);
        kinds.add(fact.kind);
        bodies.add(fact.body);
        hashes.add(fact.hash);
        signatures.add(fact.signature);
    }
    try {
        return hub
            .run("SELECT tholepin.push($1::uuid, $2::bigint, $3::uuid[], $4::bigint[], $5::uuid[], "
                 "$6::text[], "
                 "$7::text[], $8::text[], $9::text[], $10::text[], $11::text[])",
                 {founder, std::to_string(known), machines.literal(), numbers.literal(), ids.literal(),
                  ats.literal(), bys.literal(), kinds.literal(), bodies.literal(), hashes.literal(),
                  signatures.literal()})
            .at(0)[0]
            .as<int>();
    } catch (const StoreFailure& failure) {
        if (failure.error.code == ErrorCode::HubAhead) return std::nullopt;
        throw;
    }
}

void pushPhoto(HubConnection& hub, const std::string& founder, const std::string& sha256,
               const std::string& bytes) {
    std::string hex(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
                   bytes.size());
    hex.pop_back();
    hub.run("SELECT tholepin.push_photo($1::uuid, $2, decode($3, 'hex'))", {founder, sha256, hex});
}

void pushPrivate(HubConnection& hub, const std::string& founder, const CellsOfFacts& cells) {
    TextArray facts, fields, salts, values;
    for (const auto& [fact, cell] : cells) {
        facts.add(fact);
        fields.add(cell.column);
        salts.add(cell.salt);
        values.add(cell.value);
    }
    hub.run("SELECT tholepin.push_private($1::uuid, $2::uuid[], $3::text[], $4::text[], $5::text[])",
            {founder, facts.literal(), fields.literal(), salts.literal(), values.literal()});
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
    TextArray ids;
    for (const std::string& fact : facts)
        ids.add(fact);
    CellsOfFacts cells;
    for (const pqxx::row& row : hub.run("SELECT fact, field, salt, value FROM tholepin.private_cell WHERE "
                                        "club = $1::int AND fact = ANY ($2::uuid[])",
                                        {std::to_string(club), ids.literal()}))
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
