#include "core/club/club_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/merge_look.h"
#include "core/store/club_file.h"
#include "core/store/fact_table.h"
#include "core/store/other_record.h"

#include <set>

namespace core {
namespace {

int count(const OtherFacts& news, std::string_view kind) {
    return static_cast<int>(std::count_if(news.facts.begin(), news.facts.end(),
                                          [&](const Fact& fact) { return fact.kind == kind; }));
}

void add(const OtherFacts& news, std::set<std::string>& machines, CameIn& into) {
    into.facts += static_cast<int>(news.facts.size());
    into.checks += count(news, CheckOpened::kind);
    into.sightings += count(news, TagSeen::kind);
    into.leftOut += news.leftOut;
    for (const Fact& fact : news.facts) {
        into.changes += sheetOfTable(fact.kind) != nullptr ? 1 : 0;
        machines.insert(fact.machine);
    }
    into.machines = static_cast<int>(machines.size());
}

Result<CameIn> takeAll(ClubState& state, const std::vector<std::filesystem::path>& others,
                       ClubExchange::Forks allowed) {
    CameIn cameIn;
    std::set<std::string> machines;
    for (const std::filesystem::path& file : others) {
        const auto other = clubFile::open(file, true);
        const ReadSnapshot asOfNow(*other);
        const auto forks = forksBetween(*state.database, *other);
        if (!forks.empty() && allowed == ClubExchange::Forks::Refused) {
            const Fork& fork = forks.front();
            return Error{ErrorCode::RecordForked,
                         {fork.machine, std::to_string(fork.seq), fork.here, fork.there},
                         file.string()};
        }
        const OtherFacts news = factsNotHere(*state.database, *other, forks);
        MergeLook look(state, news);
        takeIn(*state.database, news);
        look.lookAround(cameIn.lookAt);
        add(news, machines, cameIn);
    }
    state.heldCheck.forget();
    return cameIn;
}

} // namespace

Result<CameIn> ClubExchange::merge(const std::vector<std::filesystem::path>& others, Forks forks) {
    return m_state->write([&](Ledger&) { return takeAll(*m_state, others, forks); });
}

Result<CameIn> ClubExchange::planMerge(const std::vector<std::filesystem::path>& others, Forks forks) {
    return m_state->tried([&](Ledger&) { return takeAll(*m_state, others, forks); });
}

const char* nameOf(LookAt::Kind kind) {
    static constexpr const char* names[] = {"seen-on-two-boats",  "serial-twice", "like-names",
                                            "cell-changed-twice", "out-twice",    "signed-twice"};
    static_assert(std::size(names) == static_cast<std::size_t>(LookAt::Kind::Last) + 1);
    return names[static_cast<std::size_t>(kind)];
}

} // namespace core
