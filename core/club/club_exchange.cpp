#include "core/club/club_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/taken_in.h"
#include "core/store/club_file.h"
#include "core/store/fact_table.h"
#include "core/store/other_record.h"

#include <algorithm>
#include <cstdint>

namespace core {
namespace {

/// What is new in another file, and what is called how there. The file is closed again.
struct Other {
    OtherFacts news;
    std::vector<NamedThing> things;
};

Result<Other> readOther(Database& own, const std::filesystem::path& file, ClubExchange::Forks allowed) {
    const auto other = clubFile::openAside(file);
    const ReadSnapshot asOfNow(*other);
    const auto forks = forksBetween(own, *other);
    if (!forks.empty() && allowed == ClubExchange::Forks::Refused) {
        const Fork& fork = forks.front();
        return Error{ErrorCode::RecordForked,
                     {fork.machine, std::to_string(fork.seq), fork.here, fork.there},
                     file.string()};
    }
    return Other{factsNotHere(own, *other, forks), namedThings(RegisterStore(*other))};
}

Result<CameIn> takeAll(ClubState& state, const std::vector<std::filesystem::path>& others,
                       ClubExchange::Forks allowed) {
    Intake intake;
    for (const std::filesystem::path& file : others) {
        const auto other = readOther(*state.database, file, allowed);
        if (!other) return other.error();
        if (const Outcome taken = takeInLooked(state, other->news, other->things, file.string(), intake);
            !taken)
            return taken.error();
    }
    state.heldCheck.forget();
    return intake.cameIn;
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
        const auto theirs = clubFile::openAside(other);
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
                                            "cell-changed-twice", "out-twice",    "signed-twice",
                                            "pins-changed"};
    static_assert(std::size(names) == static_cast<std::size_t>(LookAt::Kind::Last) + 1);
    return names[static_cast<std::size_t>(kind)];
}

} // namespace core
