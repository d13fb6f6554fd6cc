#include "app/gui/gear/exchange/exchange_run.h"

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

core::Result<Exchanged> exchange(core::Club& club, const std::filesystem::path& other,
                                 const ExchangePlan& plan) {
    auto cameIn = club.exchange().merge({other}, plan.isAsNewMachine ? ClubExchange::Forks::AsNewMachine
                                                                     : ClubExchange::Forks::Refused);
    if (!cameIn) return cameIn.error();
    Exchanged done{std::move(*cameIn), std::nullopt};
    if (!plan.isReadOnly && !plan.isAsNewMachine) done.went = club.exchange().give(other);
    return done;
}

} // namespace app
