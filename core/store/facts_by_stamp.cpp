#include "core/store/facts_by_stamp.h"

#include "core/store/fact_table.h"

#include <tuple>
#include <utility>

namespace core {

FactsByStamp::FactsByStamp(const std::vector<Chain>& chains) {
    for (const Chain& chain : chains)
        m_readings.push_back({chain, {}});
}

void FactsByStamp::fill(Reading& reading) {
    constexpr int atOnce = 500;
    Chain& chain = reading.chain;
    if (!reading.facts.empty() || chain.after >= chain.upTo) return;
    for (Fact& fact : factTable::after(*chain.database, chain.machine, chain.after, atOnce)) {
        if (fact.seq > chain.upTo) break;
        reading.facts.push_back(std::move(fact));
    }
    chain.after = reading.facts.empty() ? chain.upTo : reading.facts.back().seq;
}

std::optional<Fact> FactsByStamp::next() {
    const auto stamp = [](const Reading& each) {
        return std::tie(each.facts.front().atUtc, each.facts.front().machine);
    };
    Reading* oldest = nullptr;
    for (Reading& each : m_readings) {
        fill(each);
        if (!each.facts.empty() && (oldest == nullptr || stamp(each) < stamp(*oldest))) oldest = &each;
    }
    if (oldest == nullptr) return std::nullopt;
    Fact fact = std::move(oldest->facts.front());
    oldest->facts.pop_front();
    return fact;
}

} // namespace core
