#include "app/gui/gear/exchange/exchange_run.h"

#include "core/base/store_failure.h"
#include "core/club/club.h"

#include <unistd.h>

namespace app {
namespace {

using core::ClubExchange;

/// SQLite keeps files of its own beside the club file, so that its folder must take them too.
bool canBeWritten(const std::filesystem::path& file) {
    std::error_code unknown;
    const std::filesystem::path real = std::filesystem::canonical(file, unknown);
    return !unknown && ::access(real.c_str(), W_OK) == 0 && ::access(real.parent_path().c_str(), W_OK) == 0;
}

core::Result<core::CameIn> giveTo(const std::filesystem::path& other, const std::filesystem::path& own) {
    try {
        auto theirs = core::Club::open(other);
        if (!theirs) return theirs.error();
        auto went = theirs->exchange().merge({own}, ClubExchange::Forks::Refused);
        theirs->rest(); // all of it is in the file itself when the stick is taken out
        return went;
    } catch (const std::exception& thrown) {
        return core::errorOf(thrown);
    }
}

} // namespace

core::Result<ExchangePlan> planExchange(core::Club& club, const std::filesystem::path& other,
                                        ClubExchange::Forks forks) {
    auto cameIn = club.exchange().planMerge({other}, forks);
    if (!cameIn) return cameIn.error();
    const auto goes = club.exchange().newsFor(other);
    if (!goes) return goes.error();
    return ExchangePlan{std::move(*cameIn), *goes, !canBeWritten(other),
                        forks == ClubExchange::Forks::AsNewMachine};
}

core::Result<Exchanged> exchange(core::Club& club, const std::filesystem::path& own,
                                 const std::filesystem::path& other, const ExchangePlan& plan) {
    auto cameIn = club.exchange().merge({other}, plan.isAsNewMachine ? ClubExchange::Forks::AsNewMachine
                                                                     : ClubExchange::Forks::Refused);
    if (!cameIn) return cameIn.error();
    Exchanged done{std::move(*cameIn), std::nullopt};
    if (!plan.isReadOnly && !plan.isAsNewMachine) done.went = giveTo(other, own);
    return done;
}

} // namespace app
