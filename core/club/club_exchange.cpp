#include "core/club/club_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/taken_in.h"
#include "core/store/club_file.h"
#include "core/store/fact_table.h"
#include "core/store/other_record.h"

#include <algorithm>
#include <cstdint>
#include <memory>

namespace core {
namespace {

/// Another file, and what is new in it: looked through as of one moment.
struct OtherFile {
    explicit OtherFile(const std::filesystem::path& file)
        : path(file)
        , database(clubFile::openAside(file))
        , asOfNow(*database) {}

    Outcome lookThrough(Database& own, ClubExchange::Forks allowed) {
        const auto forks = forksBetween(own, *database);
        if (!forks.empty() && allowed == ClubExchange::Forks::Refused) {
            const Fork& fork = forks.front();
            return Error{ErrorCode::RecordForked,
                         {fork.machine, std::to_string(fork.seq), fork.here, fork.there},
                         path.string()};
        }
        news = factsNotHere(own, *database, forks);
        return Done{};
    }

    std::filesystem::path path;
    std::unique_ptr<Database> database;
    ReadSnapshot asOfNow;
    OtherFacts news;
};
using OtherFiles = std::vector<std::unique_ptr<OtherFile>>;

bool isAnyOf(const OtherFiles& others, const std::filesystem::path& file) {
    std::error_code unknown; // of what is not there, which its opening says
    return std::any_of(others.begin(), others.end(), [&](const auto& other) {
        return std::filesystem::equivalent(other->path, file, unknown);
    });
}

/// Before anything is locked: that is most of the work. A file that is named twice is read once.
Result<OtherFiles> lookedThrough(Database& own, const std::vector<std::filesystem::path>& files,
                                 ClubExchange::Forks allowed) {
    OtherFiles others;
    const ReadSnapshot asOfNow(own);
    for (const std::filesystem::path& file : files) {
        if (isAnyOf(others, file)) continue;
        others.push_back(std::make_unique<OtherFile>(file));
        if (const Outcome sound = others.back()->lookThrough(own, allowed); !sound) return sound.error();
    }
    return others;
}

Result<CameIn> takeAll(ClubState& state, OtherFiles& others, ClubExchange::Forks allowed) {
    Database& own = *state.database;
    Intake intake;
    for (const auto& other : others) {
        if (!isStillNew(own, other->news))
            if (const Outcome sound = other->lookThrough(own, allowed); !sound) return sound.error();
        const auto things = namedThings(RegisterStore(*other->database));
        if (const Outcome taken = takeInLooked(state, other->news, things, other->path.string(), intake);
            !taken)
            return taken.error();
    }
    state.heldCheck.forget();
    return intake.cameIn;
}

} // namespace

Result<CameIn> ClubExchange::merge(const std::vector<std::filesystem::path>& files, Forks forks) {
    return guarded([&]() -> Result<CameIn> {
        if (const Outcome may = m_state->mayDo(Right::GearOfficer); !may) return may.error();
        auto others = lookedThrough(*m_state->database, files, forks);
        if (!others) return others.error();
        return m_state->write(Right::GearOfficer, [&](Ledger&) { return takeAll(*m_state, *others, forks); });
    });
}

Result<CameIn> ClubExchange::planMerge(const std::vector<std::filesystem::path>& files, Forks forks) {
    return guarded([&]() -> Result<CameIn> {
        auto others = lookedThrough(*m_state->database, files, forks);
        if (!others) return others.error();
        return m_state->tried([&](Ledger&) { return takeAll(*m_state, *others, forks); });
    });
}

Result<CameIn> ClubExchange::give(const std::filesystem::path& other) {
    return guarded([&]() -> Result<CameIn> {
        if (const Outcome may = m_state->mayDo(Right::GearOfficer); !may) return may.error();
        ClubState theirs(clubFile::open(other, false));
        auto own = lookedThrough(*theirs.database, {m_state->database->path()}, Forks::Refused);
        if (!own) return own.error();
        auto went =
            theirs.write(Right::Anybody, [&](Ledger&) { return takeAll(theirs, *own, Forks::Refused); });
        own->clear();
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
    static constexpr const char* names[] = {"seen-on-two-boats",  "serial-twice",  "like-names",
                                            "cell-changed-twice", "out-twice",     "signed-twice",
                                            "pins-changed",       "renamed-twice", "came-back"};
    static_assert(std::size(names) == static_cast<std::size_t>(LookAt::Kind::Last) + 1);
    return names[static_cast<std::size_t>(kind)];
}

} // namespace core
