#include "core/store/ledger.h"

#include "core/store/fact_table.h"

#include <algorithm>
#include <array>
#include <sodium.h>

namespace core {

Ledger::Ledger(Database& database)
    : m_database(database)
    , m_device(factTable::device(database)) {}

void Ledger::nameDevice(Database& database) {
    std::array<unsigned char, 8> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    std::array<char, 17> hex{};
    sodium_bin2hex(hex.data(), hex.size(), bytes.data(), bytes.size());
    factTable::setDevice(database, hex.data());
}

Fact Ledger::append(const FactBody& body, const std::string& by) {
    const auto last = factTable::newestOf(m_database, m_device);
    const Instant now = Instant::now();
    Fact fact;
    fact.id = newUuid7(now);
    fact.device = m_device;
    fact.seq = last ? last->seq + 1 : 1;
    // A clock that was put back must not make a later fact of this machine look older than an earlier one.
    fact.atUtc = (last ? std::max(now, factTable::recordedAt(*last)) : now).iso();
    fact.by = by;
    fact.kind = kindOf(body);
    fact.body = textOf(body);
    fact.prevHash = last ? last->hash : std::string();
    fact.hash = hashOf(fact);
    factTable::insert(m_database, fact);
    apply(m_database, fact, body);
    return fact;
}

std::string Ledger::head() const {
    const auto last = factTable::newestOf(m_database, m_device);
    return last ? last->hash : std::string();
}

} // namespace core
