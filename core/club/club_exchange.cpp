#include "core/club/club_exchange.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/taken_in.h"
#include "core/store/club_file.h"
#include "core/store/other_record.h"

namespace core {
namespace {

Result<CameIn> takeAll(ClubState& state, const std::vector<std::filesystem::path>& others,
                       ClubExchange::Forks allowed) {
    Intake intake;
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
        if (const Outcome taken = takeInLooked(state, news, other.get(), file.string(), intake); !taken)
            return taken.error();
    }
    state.heldCheck.forget();
    return intake.cameIn;
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
