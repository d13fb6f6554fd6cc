#include "core/club/hub_exchange.h"

#include "core/base/error_code.h"
#include "core/hub/hub_connection.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/migrations.h"
#include "core/store/other_record.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

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
    hubFacts::pull(hub, club, parts, hashBefore, [&](const Fact& fact) {
        factTable::insert(m_database, fact);
        noteBeside(fact);
    });
    pullBeside(hub, club, wantsPrivate, own);
    together.commit();
}

/// A body that cannot be read is told by the look-through.
void IncomingFacts::noteBeside(const Fact& fact) {
    if (!mayHoldPrivateCells(fact) && fact.kind != PhotoAdded::kind) return;
    const auto body = bodyOf(fact);
    if (!body || !*body) return;
    if (!sealedCells(**body).empty()) m_sealing.push_back(fact.id);
    if (const auto* photo = std::get_if<PhotoAdded>(&**body)) m_photos.insert(photo->sha256);
}

void IncomingFacts::pullBeside(HubConnection& hub, int club, bool wantsPrivate, Database* own) {
    if (wantsPrivate && !m_sealing.empty()) pullCellsOf(hub, club, m_sealing);
    for (const std::string& fact : m_sealing)
        if (privateTable::cellsOf(m_database, fact) == 0) privateTable::noteNotHere(m_database, fact);
    for (const std::string& sha256 : m_photos) {
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
