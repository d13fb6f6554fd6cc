#include "core/store/outgoing_facts.h"

#include "core/store/fact_table.h"

#include <utility>

namespace core {

OutgoingFacts::OutgoingFacts(Database& database, const std::vector<Chain>& chains)
    : m_database(database) {
    for (const Chain& chain : chains)
        m_readings.push_back({chain, {}});
}

void OutgoingFacts::fill(Reading& reading) {
    constexpr int atOnce = 500;
    if (!reading.facts.empty() || reading.chain.after >= reading.chain.upTo) return;
    for (Fact& fact : factTable::after(m_database, reading.chain.machine, reading.chain.after, atOnce)) {
        if (fact.seq > reading.chain.upTo) break;
        reading.facts.push_back(std::move(fact));
    }
    reading.chain.after = reading.facts.empty() ? reading.chain.upTo : reading.facts.back().seq;
}

std::optional<Fact> OutgoingFacts::next() {
    Reading* oldest = nullptr;
    for (Reading& each : m_readings) {
        fill(each);
        if (each.facts.empty()) continue;
        if (oldest == nullptr || std::pair(each.facts.front().atUtc, each.facts.front().machine) <
                                     std::pair(oldest->facts.front().atUtc, oldest->facts.front().machine))
            oldest = &each;
    }
    if (oldest == nullptr) return std::nullopt;
    Fact fact = std::move(oldest->facts.front());
    oldest->facts.pop_front();
    return fact;
}

} // namespace core
