#include "core/club/hub_exchange.h"

#include "core/base/error_code.h"
#include "core/hub/hub_connection.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/migrations.h"
#include "core/store/other_record.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

#include <set>

namespace core {

IncomingFacts::IncomingFacts()
    : m_database({}, Database::Mode::Passing) {
    migrate(m_database, migrations());
}

void IncomingFacts::pull(HubConnection& hub, int club, const std::vector<hubFacts::Part>& parts,
                         bool wantsPrivate, Database* own) {
    Transaction together(m_database);
    const auto hashBefore = [&](const hubFacts::Part& part) {
        const auto before = own && part.after > 0 ? factTable::inChain(*own, part.machine, part.after)
                                                  : std::optional<Fact>();
        return before ? before->hash : std::string();
    };
    hubFacts::pull(hub, club, parts, hashBefore,
                   [&](const Fact& fact) { factTable::insert(m_database, fact); });
    pullBeside(hub, club, wantsPrivate, own);
    together.commit();
}

namespace {

/// What stands beside the facts of this database: the facts that seal private cells, and the hashes of
/// photographs. A body that cannot be read is told by the look-through.
struct Beside {
    std::vector<std::string> sealing;
    std::set<std::string> photos;
};

Beside besideFactsIn(Database& database) {
    Beside beside;
    factTable::forEachInChain(database, [&](const Fact& fact) {
        if (!mayHoldPrivateCells(fact) && fact.kind != PhotoAdded::kind) return;
        const auto body = bodyOf(fact);
        if (!body || !*body) return;
        if (!sealedCells(**body).empty()) beside.sealing.push_back(fact.id);
        if (const auto* photo = std::get_if<PhotoAdded>(&**body)) beside.photos.insert(photo->sha256);
    });
    return beside;
}

} // namespace

void IncomingFacts::pullBeside(HubConnection& hub, int club, bool wantsPrivate, Database* own) {
    const Beside beside = besideFactsIn(m_database);
    if (wantsPrivate && !beside.sealing.empty()) pullCellsOf(hub, club, beside.sealing);
    for (const std::string& fact : beside.sealing)
        if (privateTable::cellsOf(m_database, fact) == 0) privateTable::noteNotHere(m_database, fact);
    for (const std::string& sha256 : beside.photos) {
        if (own && photoTable::bytesOf(*own, sha256)) {
            photoTable::keep(m_database, sha256, *photoTable::bytesOf(*own, sha256));
            continue;
        }
        if (const auto bytes = hubFacts::photo(hub, club, sha256))
            photoTable::keep(m_database, sha256, *bytes);
    }
}

Database& IncomingFacts::withTables(Database& own, const HubsNewest& hubsNewest) {
    Transaction together(m_database);
    for (const std::string& machine : factTable::machines(own)) {
        const std::int64_t newest = hubsNewest(machine);
        factTable::forEachAfter(own, machine, 0, [&](const Fact& fact) {
            if (fact.seq <= newest && !factTable::inChain(m_database, machine, fact.seq))
                factTable::insert(m_database, fact);
        });
    }
    rebuildTables(m_database, m_database);
    together.commit();
    return m_database;
}

void IncomingFacts::pullCellsOf(HubConnection& hub, int club, const std::vector<std::string>& facts) {
    for (const auto& [fact, cell] : hubFacts::privateCells(hub, club, facts))
        privateTable::put(m_database, fact, {cell});
}

} // namespace core
