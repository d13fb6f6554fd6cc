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

namespace {

bool isHeadIn(Database& database, const OwnMachine& machine) {
    const auto fact = factTable::inChain(database, machine.key.machine(), machine.head.seq);
    return fact && fact->hash == machine.head.hash;
}

} // namespace

std::string ownMachineOf(Database& database) {
    std::optional<OwnMachine> own;
    for (OwnMachine& each : KeptKeys(clubOf(database)).all())
        if (isHeadIn(database, each) && (!own || each.head.seq > own->head.seq)) own = std::move(each);
    return own ? own->key.machine() : std::string();
}

bool Ledger::isInFile(const OwnMachine& machine) const {
    return machine.head.seq == 0 || isHeadIn(m_database, machine); // a key that nothing was signed with yet
}

void Ledger::chooseMachine() {
    // A key that is not kept is this program's alone: no other can go on with its chain.
    if (m_own && !m_isKept && isInFile(*m_own)) return;
    const std::string club = clubOf(m_database);
    MachineKey fresh = MachineKey::fresh();
    if (!m_keys) m_keys.emplace(club.empty() ? fresh.machine() : club);
    m_turn.emplace(*m_keys);
    m_isKept = m_turn->isHeld();
    // Another program of this user may have written to another file of the club since.
    if (m_own) m_own = m_isKept ? m_keys->of(m_own->key.machine()) : std::nullopt;
    if (m_own && !isInFile(*m_own)) m_own.reset();
    if (!m_own && m_isKept)
        for (OwnMachine& each : m_keys->all())
            if (isInFile(each) && (!m_own || each.head.seq > m_own->head.seq)) m_own = std::move(each);
    if (!m_own) m_own = OwnMachine{std::move(fresh), {}};
}

/// All but what it says, which may want to know its id.
Fact Ledger::next(const std::string& by) const {
    const std::string& machine = m_own->key.machine();
    const auto last = factTable::newestOf(m_database, machine);
    const Instant now = nextInstant(factTable::newest(m_database), machine);
    return {.id = newUuid7(now),
            .machine = machine,
            .seq = last ? last->seq + 1 : 1,
            .atUtc = now.iso(),
            .by = by,
            .prevHash = last ? last->hash : std::string()};
}

std::string Ledger::machineToGoOn() const {
    if (m_own) return isInFile(*m_own) ? m_own->key.machine() : std::string();
    std::optional<OwnMachine> own;
    if (const std::string club = clubOf(m_database); KeptKeys::isAnyOf(club))
        for (OwnMachine& each : KeptKeys(club).all())
            if (isInFile(each) && (!own || each.head.seq > own->head.seq)) own = std::move(each);
    return own ? own->key.machine() : std::string();
}

void Ledger::put(Fact& fact, const FactBody& body, const std::string& proven) {
    fact.kind = kindOf(body);
    fact.body = textOf(body, proven);
    fact.hash = hashOf(fact);
    fact.signature = m_own->key.signatureOf(fact);
    factTable::insert(m_database, fact);
    m_newHead = {fact.seq, fact.hash};
}

void Ledger::begin() {
    chooseMachine();
    m_isWriting = true;
    if (factTable::newestOf(m_database, m_own->key.machine())) return;
    Fact first = next({});
    put(first, MachineBegun{m_own->key.publicKey(), nameOfComputer(), factTable::head(m_database)}, {});
}

Fact Ledger::append(const FactBody& body, const std::string& by) {
    if (!m_isWriting) begin();
    Fact fact = next(by);
    FactBody written = body;
    privateTable::put(m_database, fact.id, seal(written, fact.id));
    put(fact, written, m_proven);
    apply(m_database, fact, written);
    return fact;
}

void Ledger::committing() {
    if (!m_isWriting || !m_isKept) return;
    m_keys->put({m_own->key, m_newHead});
    m_isNoted = true;
}

void Ledger::committed() {
    if (!m_isWriting) return;
    m_own->head = m_newHead;
    end();
}

void Ledger::undone() {
    if (m_isNoted && m_own->head.seq > 0) m_keys->put(*m_own);
    if (m_isNoted && m_own->head.seq == 0) m_keys->remove(m_own->key.machine());
    end();
}

void Ledger::end() {
    m_isNoted = m_isWriting = false;
    m_proven.clear();
    m_turn.reset();
}

} // namespace core
