#include "core/club/hub_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/hub/hub_connection.h"
#include "core/record/machine_key.h"
#include "core/store/fact_table.h"
#include "core/store/other_record.h"
#include "core/store/outgoing_facts.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

#include <map>

namespace core {
namespace {

/// Of one round trip: whichever comes first. So many are a moment's work for the server, and few enough for
/// the time limit of a call on a slow line.
constexpr std::size_t batchFacts = 5000;
constexpr std::size_t batchBytes = 4 * 1024 * 1024;

/// The cells that stand beside that fact.
hubFacts::CellsOfFacts cellsBeside(Database& database, const Fact& fact) {
    hubFacts::CellsOfFacts cells;
    if (!mayHoldPrivateCells(fact)) return cells;
    for (PrivateCell& cell : privateTable::of(database, fact.id))
        cells.emplace_back(fact.id, std::move(cell));
    return cells;
}

} // namespace

/// What is not signed the hub would take, and every other machine refuse. As each hash holds the one before,
/// which the hub checks, the last signature of a chain vouches for what is before it.
void HubExchange::requireSigned(const std::vector<Fact>& batch) const {
    std::map<std::string, const Fact*> lastOf;
    for (const Fact& fact : batch)
        lastOf[fact.machine] = &fact;
    for (const auto& [machine, fact] : lastOf)
        if (!isSignedBy(*fact, factTable::publicKeyOf(*m_state.database, machine)))
            throw StoreFailure({ErrorCode::RecordDamaged,
                                {},
                                m_state.database->path(),
                                {{ErrorCode::FactNotSigned, {std::to_string(fact->seq), machine}}}});
}

void HubExchange::sendBeside(const std::vector<Fact>& batch) {
    hubFacts::CellsOfFacts cells;
    for (const Fact& fact : batch) {
        if (m_place.sendsPrivate)
            for (auto& cell : cellsBeside(*m_state.database, fact))
                cells.push_back(std::move(cell));
        if (fact.kind != PhotoAdded::kind) continue;
        const auto body = factTable::bodyOf(fact);
        const auto* photo = body ? std::get_if<PhotoAdded>(&*body) : nullptr;
        const auto bytes = photo ? photoTable::bytesOf(*m_state.database, photo->sha256) : std::nullopt;
        if (photo && !bytes)
            throw StoreFailure({ErrorCode::RecordDamaged,
                                {},
                                m_state.database->path(),
                                {{ErrorCode::PhotoMissing, {std::to_string(fact.seq), fact.machine}}}});
        if (bytes) hubFacts::pushPhoto(m_hub, m_founder, photo->sha256, *bytes);
    }
    if (!cells.empty()) hubFacts::pushPrivate(m_hub, m_founder, cells);
}

bool HubExchange::send(Exchanged& into) {
    std::vector<OutgoingFacts::Chain> chains;
    for (const hubFacts::Difference& each : m_meeting.differences)
        if (const std::int64_t own = ownNewest(each.machine); own > each.newest)
            chains.push_back({each.machine, each.newest, own});
    OutgoingFacts outgoing(*m_state.database, chains);
    std::int64_t known = m_meeting.facts;
    std::vector<Fact> batch;
    std::size_t bytes = 0;
    for (auto fact = outgoing.next(); fact || !batch.empty(); fact = outgoing.next()) {
        if (fact) {
            bytes += fact->body.size();
            batch.push_back(std::move(*fact));
            if (batch.size() < batchFacts && bytes < batchBytes) continue;
        }
        requireSigned(batch);
        sendBeside(batch); // first, so that whoever pulls a fact finds what is beside it
        const auto added = hubFacts::push(m_hub, m_founder, known, batch);
        if (!added) return false;
        into.sent += *added;
        known += *added;
        batch.clear();
        bytes = 0;
    }
    return true;
}

void HubExchange::sendAllPrivate() {
    hubFacts::CellsOfFacts cells;
    factTable::forEachInChain(*m_state.database, [&](const Fact& fact) {
        for (auto& cell : cellsBeside(*m_state.database, fact))
            cells.push_back(std::move(cell));
    });
    if (!cells.empty()) hubFacts::pushPrivate(m_hub, m_founder, cells);
}

} // namespace core
