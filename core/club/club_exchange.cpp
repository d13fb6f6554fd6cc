#include "core/club/club_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/merge_look.h"
#include "core/store/club_file.h"
#include "core/store/fact_table.h"
#include "core/store/names_now.h"
#include "core/store/other_record.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>
#include <tuple>

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

/// Everything that has a name of its own in one file, as it is called there.
struct NamedThing {
    Named named = Named::Boat;
    std::string of, name; ///< `of`: of a size its kit type
};
using NamedThings = std::vector<NamedThing>;

NamedThings namedThings(const RegisterStore& store) {
    NamedThings things;
    for (const Named named : {Named::Boat, Named::Place, Named::Person, Named::KitType})
        for (const Cells& row : store.all(*sheetOf(named)))
            things.push_back({named, {}, row.front()});
    for (const Cells& row : store.all(SheetId::Sizes))
        things.push_back({Named::Size, row[0], row[1]});
    std::set<std::string> classes;
    for (const SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points}) {
        const auto column = static_cast<std::size_t>(sheet(id).indexOf("boat_class"));
        for (const Cells& row : store.all(id))
            if (!row[column].empty() && classes.insert(foldName(row[column])).second)
                things.push_back({Named::BoatClass, {}, row[column]});
    }
    return things;
}

/// Whether no two of them have one name now: two machines may have given it to different things, and nothing
/// could part those again.
Outcome areApart(const NamedThings& things, Database& merged) {
    std::map<std::tuple<Named, std::string, std::string>, const NamedThing*> known;
    for (const NamedThing& each : things) {
        const std::string of =
            each.named == Named::Size ? namesNow::of(merged, Named::KitType, each.of, {}) : std::string();
        const std::string now = namesNow::of(merged, each.named, each.name, of);
        const auto [other, isFirst] =
            known.emplace(std::tuple(each.named, foldName(of), foldName(now)), &each);
        if (!isFirst) return Error{ErrorCode::NamesFused, {other->second->name, each.name, now}};
    }
    return Done{};
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
        const std::vector<NamedThings> things{namedThings(state.registerStore),
                                              namedThings(RegisterStore(*other))};
        takeIn(*state.database, news);
        for (const NamedThings& each : things)
            if (const Outcome apart = areApart(each, *state.database); !apart) {
                Error fused = apart.error();
                fused.where = file.string();
                return fused;
            }
        look.lookAround(cameIn.lookAt);
        add(news, machines, cameIn);
    }
    state.heldCheck.forget();
    return cameIn;
}

} // namespace

Result<CameIn> ClubExchange::merge(const std::vector<std::filesystem::path>& others, Forks forks) {
    return m_state->write(Right::GearOfficer, [&](Ledger&) { return takeAll(*m_state, others, forks); });
}

Result<CameIn> ClubExchange::planMerge(const std::vector<std::filesystem::path>& others, Forks forks) {
    return m_state->tried([&](Ledger&) { return takeAll(*m_state, others, forks); });
}

Result<CameIn> ClubExchange::give(const std::filesystem::path& other) {
    return guarded([&]() -> Result<CameIn> {
        const auto prover = m_state->pinLock.proverOf(Right::GearOfficer);
        if (!prover) return prover.error();
        ClubState theirs(clubFile::open(other, false));
        auto went = theirs.write(Right::Anybody, [&](Ledger&) {
            return takeAll(theirs, {m_state->database->path()}, Forks::Refused);
        });
        theirs.database->rest(); // all of it is in the file itself when a stick is taken out
        return went;
    });
}

Result<int> ClubExchange::newsFor(const std::filesystem::path& other) const {
    return guarded([&]() -> Result<int> {
        const auto theirs = clubFile::open(other, true);
        if (clubOf(*theirs) != clubOf(*m_state->database))
            return Error{ErrorCode::OtherClub, {}, other.string()};
        std::int64_t news = 0;
        for (const std::string& machine : factTable::machines(*m_state->database)) {
            const auto own = factTable::newestOf(*m_state->database, machine);
            const auto known = factTable::newestOf(*theirs, machine);
            news += std::max<std::int64_t>(0, own->seq - (known ? known->seq : 0));
        }
        return static_cast<int>(news);
    });
}

const char* nameOf(LookAt::Kind kind) {
    static constexpr const char* names[] = {"seen-on-two-boats",  "serial-twice", "like-names",
                                            "cell-changed-twice", "out-twice",    "signed-twice"};
    static_assert(std::size(names) == static_cast<std::size_t>(LookAt::Kind::Last) + 1);
    return names[static_cast<std::size_t>(kind)];
}

} // namespace core
