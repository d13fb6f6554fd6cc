#include "core/answers/history.h"

#include <algorithm>
#include <utility>

namespace core {

std::vector<HistoryLine> historyOf(std::vector<FoundFact> facts) {
    std::ranges::sort(facts, {}, &FoundFact::stamp);
    const auto isSame = [](const FoundFact& a, const FoundFact& b) { return a.stamp == b.stamp; };
    facts.erase(std::unique(facts.begin(), facts.end(), isSame), facts.end()); // a stamp is one fact's
    std::vector<HistoryLine> lines;
    for (FoundFact& fact : facts)
        lines.push_back(std::move(fact.line));
    return lines;
}

} // namespace core
