#include "core/answers/history.h"

#include <algorithm>
#include <utility>

namespace core {

std::vector<HistoryLine> historyOf(std::vector<FoundFact> facts) {
    std::ranges::sort(facts, {}, &FoundFact::stamp);
    const auto again = std::ranges::unique(facts, {}, &FoundFact::stamp); // a stamp is one fact's
    facts.erase(again.begin(), again.end());
    std::vector<HistoryLine> lines;
    for (FoundFact& fact : facts)
        lines.push_back(std::move(fact.line));
    return lines;
}

} // namespace core
