#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <atomic>
#include <barrier>
#include <cstring>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <thread>

namespace {

using core::Club;
using core::ErrorCode;
using support::SmallClub;

std::atomic<int> delays = 0;

/// Whoever has begun to write waits a moment, so that all others come to where they want to begin.
int waitAfterBegin(unsigned, void*, void* statement, void*) {
    const char* sql = sqlite3_sql(static_cast<sqlite3_stmt*>(statement));
    if (sql == nullptr || std::strcmp(sql, "BEGIN IMMEDIATE") != 0) return 0;
    std::this_thread::sleep_for(std::chrono::milliseconds(3));
    ++delays;
    return 0;
}
int delayEach(sqlite3* database, char**, const sqlite3_api_routines*) {
    return sqlite3_trace_v2(database, SQLITE_TRACE_PROFILE, waitAfterBegin, nullptr);
}

/// Several programs on one file, each with a connection of its own, who all do the same at the same moment.
/// Whatever each is told, it is in the record once.
class Race : public testing::TestWithParam<int> {
protected:
    static constexpr int rounds = 6;
    static constexpr auto knife = "KGFB6J8WF9";

    static void SetUpTestSuite() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(delayEach)); }
    static void TearDownTestSuite() {
        sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(delayEach));
        EXPECT_GT(delays, 0);
    }

    /// What each was told: no error, or which.
    std::vector<std::optional<ErrorCode>> all(const std::function<core::Outcome(Club&, int)>& act) {
        std::vector<std::optional<ErrorCode>> told(static_cast<std::size_t>(GetParam()));
        std::barrier together(GetParam());
        std::vector<std::jthread> programs;
        for (int number = 0; number < GetParam(); ++number)
            programs.emplace_back([&, number] {
                Club club = Club::open(small.file()).value();
                together.arrive_and_wait();
                if (const core::Outcome done = act(club, number); !done)
                    told[static_cast<std::size_t>(number)] = done.error().code;
            });
        programs.clear();
        return told;
    }
    void expectOnce(const std::vector<std::optional<ErrorCode>>& told, ErrorCode refusal) {
        EXPECT_EQ(std::count(told.begin(), told.end(), std::nullopt), 1);
        EXPECT_EQ(std::count(told.begin(), told.end(), refusal), GetParam() - 1);
    }
    int factsOf(const std::string& subject, const std::string& kind) {
        const auto history = small.club.answers().history(subject);
        return static_cast<int>(std::count_if(history->begin(), history->end(),
                                              [&](const auto& line) { return line.kind == kind; }));
    }
    void expectSound() { EXPECT_THAT(small.club.record().verify(false)->problems, testing::IsEmpty()); }

    SmallClub small;
};

TEST_P(Race, aCheckIsSignedByOne) {
    for (int round = 1; round <= rounds; ++round) {
        const auto check = small.open();
        small.scan(check, knife);
        expectOnce(all([&](Club& club, int) -> core::Outcome {
                       const auto done = club.checks().sign(check, "Bram Oke", "a drill afloat", small.now);
                       return done ? core::Outcome(core::Done{}) : done.error();
                   }),
                   ErrorCode::CheckSigned);
        EXPECT_EQ(factsOf("Petrel", "check-signed"), round);
    }
    expectSound();
}

TEST_P(Race, aBoatHasOneUnfinishedCheck) {
    std::vector<std::string> checks(static_cast<std::size_t>(GetParam()));
    all([&](Club& club, int number) -> core::Outcome {
        checks[static_cast<std::size_t>(number)] =
            club.checks().open("Petrel", core::Phase::Launch, small.now)->check;
        return core::Done{};
    });
    EXPECT_THAT(checks, testing::Each(checks.front()));
    EXPECT_EQ(factsOf("Petrel", "check-opened"), 1);
}

TEST_P(Race, aThingIsSeenWrittenOffAndReinstatedOnce) {
    for (int round = 1; round <= rounds; ++round) {
        const auto check = small.open();
        all([&](Club& club, int) -> core::Outcome {
            const auto seen =
                club.checks().scan(check, core::ScannedText::typed(knife), core::SeenBy::Scanner, small.now);
            return seen ? core::Outcome(core::Done{}) : seen.error();
        });
        ASSERT_TRUE(small.club.checks().discard(check, "nobody goes", small.now));
        EXPECT_EQ(factsOf(knife, "tag-seen"), round);
        expectOnce(
            all([&](Club& club, int) { return club.kit().writeOff(knife, "lost", "Bram Oke", small.now); }),
            ErrorCode::WrittenOffAlready);
        expectOnce(all([&](Club& club, int) {
                       return club.kit().reinstate(knife, "in the van", "Bram Oke", small.now);
                   }),
                   ErrorCode::NotWrittenOff);
    }
    expectSound();
}

TEST_P(Race, aLogEntryIsClosedOnceAndEachDamageHasItsOwn) {
    const auto entry = small.club.log().add("Petrel", "valve hisses", core::Severity::Stop, {}, small.now);
    ASSERT_TRUE(entry);
    expectOnce(all([&](Club& club, int number) {
                   return club.log().close(entry->id, "tightened, " + std::to_string(number), "Bram Oke",
                                           small.now);
               }),
               ErrorCode::LogEntryClosed);
    const auto check = small.open();
    all([&](Club& club, int) { return club.checks().withdraw(check, knife, "loose grip", small.now); });
    EXPECT_EQ(small.club.log().entries()->size(), static_cast<std::size_t>(1 + GetParam()));
    expectSound();
}

/// What is on disk when somebody signs is what was signed; nothing comes in behind it.
TEST_P(Race, nothingIsSeenInACheckAfterItsSignature) {
    for (int round = 0; round < rounds; ++round) {
        const auto check = small.open();
        const auto told = all([&](Club& club, int number) -> core::Outcome {
            if (number == 0) {
                const auto done = club.checks().sign(check, "Bram Oke", "a drill afloat", small.now);
                return done ? core::Outcome(core::Done{}) : done.error();
            }
            for (const auto& [code, type] : support::publishedKit) {
                const auto seen = club.checks().scan(check, core::ScannedText::typed(code),
                                                     core::SeenBy::Scanner, small.now);
                if (!seen) return seen.error();
            }
            return core::Done{};
        });
        EXPECT_EQ(told.front(), std::nullopt);
        int afterIt = 0;
        for (const auto& [code, type] : support::publishedKit) {
            const auto history = small.club.answers().history(code);
            const auto signedAt = small.club.answers().history("Petrel")->back();
            for (const core::HistoryLine& line : *history)
                if (line.kind == "tag-seen" && line.machine == signedAt.machine && line.seq > signedAt.seq)
                    ++afterIt;
        }
        EXPECT_EQ(afterIt, 0);
    }
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(Programs, Race, testing::Values(2, 3, 8));

} // namespace
