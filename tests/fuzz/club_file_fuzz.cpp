// libFuzzer target: a club file of which another program altered pages, cells of tables, its header or its
// write-ahead log, as the input says. Whatever was done, opening, verifying, rebuilding and reading end with
// an answer or an error; and a record that verify finds unaltered holds no fact that its machines did not
// write.

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/evidence.h"
#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/base/store_failure.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_plans.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/plan/replacement/replacement_plan.h"
#include "core/store/fact_table.h"
#include "tests/fuzz/altered_file.h"

#include <cstdlib>
#include <set>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::Club;

const core::Moment now{*core::Instant::parse("2026-03-14T10:00:00Z"),
                       *core::CalendarDay::parse("2026-03-14")};

std::set<std::string> hashesIn(const fs::path& file) {
    std::set<std::string> hashes;
    core::Database database(file, core::Database::Mode::ReadOnly);
    core::factTable::forEachInChain(
        database, [&](const core::Fact& fact) { hashes.insert(fact.hash + fact.signature); });
    return hashes;
}

/// Reading may fail only as every face of the club says it may.
template <class Read>
void readOrFail(Read read) {
    try {
        read();
    } catch (const core::StoreFailure&) { // said to whoever asked
    }
}

void readAll(Club& club) {
    readOrFail([&] { (void)club.name(); });
    readOrFail([&] { (void)club.answers().boatConditions(now.today); });
    readOrFail([&] { (void)club.answers().missingItems(); });
    readOrFail([&] { (void)club.answers().dueList(now.today, 400); });
    readOrFail([&] { (void)club.kit().all(); });
    readOrFail([&] { (void)club.register_().people(); });
    readOrFail([&] { (void)club.register_().kitTypes(); });
    readOrFail([&] { (void)club.log().entries({}); });
    readOrFail([&] { (void)club.plans().replacement({}, now.today); });
    for (const char* subject : {"Petrel", "Odalys Finch", "KGFB6J8WF9"})
        readOrFail([&] { (void)club.answers().history(subject); });
    readOrFail([&] { (void)club.answers().evidence("Petrel", now.at); });
}

void requireOwnFacts(const fs::path& file, const std::set<std::string>& own) {
    for (const std::string& hash : hashesIn(file))
        if (own.count(hash) == 0) std::abort(); // told to be unaltered
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    static const fs::path folder = fuzz::scratchFolder();
    static const fs::path file = folder / "club.tholepin";
    static const fs::path sample = CLUB_FILE_SAMPLE;
    static const std::set<std::string> own = hashesIn(sample);
    fuzz::alter(sample, file, {bytes, size});
    if (auto club = Club::open(file, Club::Access::ReadOnly)) {
        const auto found = club->record().verify(false);
        if (found && found->problems.empty()) requireOwnFacts(file, own);
        readAll(*club);
    }
    if (auto club = Club::open(file)) {
        (void)club->record().verify(true);
        (void)club->log().add("Petrel", "bung seeps", core::Severity::Remark, "", now);
    }
    return 0;
}
