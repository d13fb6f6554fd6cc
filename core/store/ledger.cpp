#include "core/store/ledger.h"

#include "core/record/private_cells.h"
#include "core/store/fact_table.h"
#include "core/store/private_table.h"

#include <algorithm>
#include <array>
#include <unistd.h>

namespace core {
namespace {

std::string nameOfComputer() {
    std::array<char, 65> name{}; // HOST_NAME_MAX of Linux, and its end
    return ::gethostname(name.data(), name.size() - 1) == 0 ? name.data() : std::string();
}

/// When the next fact is recorded: never before what stands in the file already, so that it sorts behind what
/// was known when it was written, whatever the clocks of the machines say. Facts of one machine may share an
/// instant: their numbers order them.
Instant nextInstant(const std::optional<Fact>& newest, const std::string& machine) {
    const Instant now = Instant::now();
    if (!newest) return now;
    const Instant last = factTable::recordedAt(*newest);
    return std::max(now, newest->machine == machine ? last : Instant::fromMillis(last.millis() + 1));
}

} // namespace

std::string clubOf(Database& database) {
    const auto oldest = factTable::oldest(database);
    return oldest ? oldest->machine : std::string();
}

bool Ledger::isInFile(const OwnMachine& machine) const {
    if (machine.head.seq == 0) return true; // a key that nothing was signed with yet
    const auto fact = factTable::inChain(m_database, machine.key.machine(), machine.head.seq);
    return fact && fact->hash == machine.head.hash;
}

void Ledger::chooseMachine() {
    const std::string club = clubOf(m_database);
    std::optional<MachineKey> founder;
    if (club.empty()) founder = MachineKey::fresh();
    if (!m_keys) m_keys.emplace(founder ? founder->machine() : club);
    m_turn.emplace(*m_keys);
    // Another program of this user may have written to another file of the club since; or it keeps the lock,
    // and then its key is not ours to use.
    if (m_own) m_own = m_keys->of(m_own->key.machine(), *m_own);
    if (!m_turn->isHeld() || (m_own && !isInFile(*m_own))) m_own.reset();
    if (!m_own && !founder && m_turn->isHeld())
        for (OwnMachine& each : m_keys->all())
            if (isInFile(each) && (!m_own || each.head.seq > m_own->head.seq)) m_own = std::move(each);
    if (!m_own) m_own = OwnMachine{founder ? std::move(*founder) : MachineKey::fresh(), {}};
}

std::string Ledger::newId() {
    return newUuid7(nextInstant(factTable::newest(m_database), m_own->key.machine()));
}

Fact Ledger::put(const FactBody& body, const std::string& by, const std::string& id) {
    const std::string& machine = m_own->key.machine();
    const auto last = factTable::newestOf(m_database, machine);
    const Instant now = nextInstant(factTable::newest(m_database), machine);
    Fact fact;
    fact.id = id;
    fact.machine = machine;
    fact.seq = last ? last->seq + 1 : 1;
    fact.atUtc = now.iso();
    fact.by = by;
    fact.kind = kindOf(body);
    fact.body = textOf(body);
    fact.prevHash = last ? last->hash : std::string();
    fact.hash = hashOf(fact);
    fact.signature = m_own->key.signatureOf(fact);
    factTable::insert(m_database, fact);
    m_newHead = {fact.seq, fact.hash};
    return fact;
}

Fact Ledger::append(const FactBody& body, const std::string& by) {
    if (!m_turn) {
        chooseMachine();
        if (!factTable::newestOf(m_database, m_own->key.machine())) {
            const auto newest = factTable::newest(m_database);
            put(MachineBegun{m_own->key.publicKey(), nameOfComputer(), newest ? newest->hash : std::string()},
                {}, newId());
        }
    }
    if (!std::holds_alternative<RowWritten>(body)) {
        Fact fact = put(body, by, newId());
        apply(m_database, fact, body);
        return fact;
    }
    RowWritten row = std::get<RowWritten>(body);
    const std::string id = newId();
    const std::vector<PrivateCell> hidden = seal(row, id);
    Fact fact = put(row, by, id);
    privateTable::put(m_database, fact.id, hidden);
    apply(m_database, fact, row);
    return fact;
}

void Ledger::committing() {
    if (!m_turn || !m_turn->isHeld()) return;
    m_keys->put({m_own->key, m_newHead});
    m_isNoted = true;
}

void Ledger::committed() {
    if (!m_turn) return;
    m_own->head = m_newHead;
    m_isNoted = false;
    m_turn.reset();
}

void Ledger::undone() {
    if (m_isNoted && m_own->head.seq > 0) m_keys->put(*m_own);
    if (m_isNoted && m_own->head.seq == 0) m_keys->remove(m_own->key.machine());
    m_isNoted = false;
    m_turn.reset();
}

} // namespace core
