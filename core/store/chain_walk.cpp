#include "core/store/chain_walk.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/record/machine_key.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

namespace core {

void ChainWalk::report(ErrorCode code, const Fact& fact, const std::vector<std::string>& more) {
    std::vector<std::string> arguments{std::to_string(fact.seq), fact.machine};
    arguments.insert(arguments.end(), more.begin(), more.end());
    m_into.problems.push_back({code, std::move(arguments)});
}

/// A chain begins with the fact that tells the machine's key.
void ChainWalk::begin(const Fact& fact) {
    m_seq = 0;
    m_hash.clear();
    m_publicKey.clear();
    m_atUtc.clear();
    MachineRecord machine{.machine = fact.machine, .first = fact.atUtc};
    const auto body = bodyOf(fact);
    const auto* begun = body && *body ? std::get_if<MachineBegun>(&**body) : nullptr;
    if (begun != nullptr && machineOf(begun->publicKey) == fact.machine) {
        m_publicKey = begun->publicKey;
        machine.name = begun->name;
        m_beginnings.push_back({fact.machine, begun->continues});
        machine.isSigned = true;
    } else {
        report(ErrorCode::MachineUnknown, fact);
    }
    m_into.machines.push_back(std::move(machine));
}

void ChainWalk::goOnAfter(const Fact& fact, const std::string& publicKey) {
    m_seq = fact.seq;
    m_hash = fact.hash;
    m_publicKey = publicKey;
    m_atUtc = fact.atUtc;
    m_into.machines.push_back({.machine = fact.machine});
    if (publicKey.empty()) report(ErrorCode::MachineUnknown, fact);
}

void ChainWalk::visit(const Fact& fact) {
    if (m_into.machines.empty() || fact.machine != m_into.machines.back().machine) begin(fact);
    ++m_into.facts;
    if (fact.seq != m_seq + 1)
        report(ErrorCode::FactsMissing, fact, {std::to_string(m_seq + 1), std::to_string(fact.seq - 1)});
    if (fact.prevHash != m_hash) report(ErrorCode::FactOutOfChain, fact);
    if (!isCanonical(fact.body))
        report(ErrorCode::FactBodyChanged, fact);
    else if (hashOf(fact) != fact.hash)
        report(ErrorCode::FactChanged, fact);
    else
        lookAtSignature(fact);
    lookAtTexts(fact);
    if (sheetOfTable(fact.kind) != nullptr) lookAtRow(fact);
    if (fact.kind == PhotoAdded::kind) lookAtPhoto(fact);
    if (fact.kind == PinSet::kind) lookAtPin(fact);
    m_seq = fact.seq;
    m_hash = fact.hash;
    MachineRecord& machine = m_into.machines.back();
    ++machine.facts;
    machine.head = fact.hash;
    machine.newest = fact.atUtc;
}

/// Each machine but the first goes on from a fact: were that one cut off, and all that is behind it, this
/// shows it.
void ChainWalk::end() {
    const std::string founder = clubOf(m_database);
    for (const Beginning& each : m_beginnings) {
        const bool isThere =
            each.continues.empty() ? each.machine == founder : factTable::isThere(m_database, each.continues);
        if (!isThere) m_into.problems.push_back({ErrorCode::FactsCutOff, {"1", each.machine}});
    }
    for (const std::string& hash : photoTable::kept(m_database))
        if (!m_photos.contains(hash)) m_into.problems.push_back({ErrorCode::PhotoStray, {hash}});
}

/// What no program writes, although it may be signed: instants that cannot be, bytes that are no text.
void ChainWalk::lookAtTexts(const Fact& fact) {
    constexpr std::int64_t day = 24 * 60 * 60 * std::int64_t{1000};
    const auto at = Instant::parse(fact.atUtc);
    const bool isPossible = at && at->iso() == fact.atUtc && at->millis() >= 0 &&
                            at->millis() <= Instant::now().millis() + day && fact.atUtc >= m_atUtc;
    if (!isPossible) report(ErrorCode::FactImpossible, fact, {"at_utc"});
    m_atUtc = fact.atUtc;
    if (!isUtf8(fact.by)) report(ErrorCode::FactImpossible, fact, {"by"});
}

void ChainWalk::lookAtRow(const Fact& fact) {
    const auto body = bodyOf(fact);
    const auto* row = body && *body ? std::get_if<RowWritten>(&**body) : nullptr;
    if (row == nullptr) return; // the rebuild tells it
    if (row->key != keyOf(sheet(row->sheet), row->keyCells))
        report(ErrorCode::FactImpossible, fact, {fact.kind + ".key"});
    if (!row->sealed.empty()) lookAtPrivateCells(fact, **body);
}

void ChainWalk::lookAtSignature(const Fact& fact) {
    if (m_publicKey.empty() || isSignedBy(fact, m_publicKey)) return; // an unknown machine is told once
    m_into.machines.back().isSigned = false;
    report(ErrorCode::FactNotSigned, fact);
}

void ChainWalk::lookAtPin(const Fact& fact) {
    const auto body = bodyOf(fact);
    if (body && *body) lookAtPrivateCells(fact, **body); // else the rebuild tells it
}

void ChainWalk::lookAtPrivateCells(const Fact& fact, const FactBody& body) {
    const bool isErased = privateTable::isErased(m_database, fact.id);
    const bool isNotHere = privateTable::isNotHere(m_database, fact.id);
    for (const auto& [name, digest] : sealedCells(body)) {
        const auto cell = privateTable::find(m_database, fact.id, name);
        if (cell && digestOf(fact.id, *cell) != digest) report(ErrorCode::PrivateCellChanged, fact, {name});
        if (cell && isErased)
            m_into.problems.push_back({ErrorCode::PrivateCellStray, {fact.id + ' ' + name}});
        if (!cell && !isErased && !isNotHere) report(ErrorCode::PrivateCellMissing, fact, {name});
        m_into.erased += !cell && isErased ? 1 : 0;
        m_into.notHere += !cell && isNotHere ? 1 : 0;
    }
}

/// Two facts may tell of one picture, which is weighed once.
void ChainWalk::lookAtPhoto(const Fact& fact) {
    const auto body = bodyOf(fact);
    const auto* photo = body && *body ? std::get_if<PhotoAdded>(&**body) : nullptr;
    if (photo == nullptr) return; // the rebuild tells it
    const auto bytes = photoTable::bytesOf(m_database, photo->sha256);
    if (!bytes) return report(ErrorCode::PhotoMissing, fact);
    if (sha256Hex(*bytes) != photo->sha256) report(ErrorCode::PhotoChanged, fact);
    if (!m_photos.insert(photo->sha256).second) return;
    ++m_into.photos;
    m_into.photoBytes += static_cast<std::int64_t>(bytes->size());
}

} // namespace core
