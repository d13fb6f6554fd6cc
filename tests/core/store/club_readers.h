#pragma once

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/event_tally.h"
#include "core/answers/evidence.h"
#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/base/store_failure.h"
#include "core/club/club_answers.h"
#include "core/club/club_pins.h"
#include "core/club/club_plans.h"
#include "core/club/club_record.h"
#include "core/plan/lasting/kit_life.h"
#include "core/plan/make_ready/make_ready.h"
#include "core/plan/replacement/replacement_plan.h"
#include "core/register/manifest_record.h"
#include "tests/core/store/full_club.h"

#include <functional>

namespace support {

/// One way to read a club, and what failed: nothing when it works.
struct ClubReader {
    std::string name;
    std::function<std::optional<core::Error>(FullClub&)> read;
};

template <class Value>
std::optional<core::Error> errorIn(const core::Result<Value>& result) {
    return result ? std::nullopt : std::optional(result.error());
}

/// Every way in which a program reads the tables of a club file. (`verify` compares them, whatever they
/// hold.)
inline std::vector<ClubReader> clubReaders() {
    const auto plain = [](std::string name, std::function<void(FullClub&)> read) {
        return ClubReader{std::move(name), [read](FullClub& full) -> std::optional<core::Error> {
                              try {
                                  read(full);
                                  return std::nullopt;
                              } catch (const core::StoreFailure& failure) {
                                  return failure.error;
                              }
                          }};
    };
    return {
        plain("name", [](FullClub& full) { (void)full.club.name(); }),
        plain("boats", [](FullClub& full) { (void)full.club.answers().boatConditions(full.now.today); }),
        plain("missing", [](FullClub& full) { (void)full.club.answers().missingItems(); }),
        plain("due", [](FullClub& full) { (void)full.club.answers().dueList(full.now.today, 400); }),
        plain("kit", [](FullClub& full) { (void)full.club.kit().all(); }),
        plain("item", [](FullClub& full) { (void)full.club.kit().itemRecord(full.jacket); }),
        plain("register",
              [](FullClub& full) {
                  (void)full.club.register_().boats();
                  (void)full.club.register_().people();
                  (void)full.club.register_().places();
                  (void)full.club.register_().kitTypes();
              }),
        plain("pins",
              [](FullClub& full) {
                  (void)full.club.pins().officers();
                  (void)full.club.pins().resets(full.now.today);
                  (void)full.club.pins().areSignaturesProven();
                  (void)full.club.record().thisMachine();
              }),
        plain("unfinished checks", [](FullClub& full) { (void)full.club.checks().unfinished(); }),
        plain("lasting", [](FullClub& full) { (void)full.club.plans().kitLives(full.now.today); }),
        plain("operation", [](FullClub& full) { (void)full.club.events().operationOf(full.back); }),
        plain("today's event", [](FullClub& full) { (void)full.club.events().held(full.now.at); }),
        plain("photographs", [](FullClub& full) { (void)full.club.photos().all(); }),
        {"open check",
         [](FullClub& full) { return errorIn(full.club.checks().answer(full.stillOpen, full.now.today)); }},
        {"signed check",
         [](FullClub& full) { return errorIn(full.club.checks().answer(full.launch, full.now.today)); }},
        {"points",
         [](FullClub& full) {
             return errorIn(full.club.register_().pointsOf("Petrel", core::Phase::Launch));
         }},
        {"log", [](FullClub& full) { return errorIn(full.club.log().entries({})); }},
        {"labels", [](FullClub& full) { return errorIn(full.club.kit().allTagLabels(full.now.today)); }},
        {"manifests", [](FullClub& full) { return errorIn(full.club.manifests().read()); }},
        {"history of an item",
         [](FullClub& full) { return errorIn(full.club.answers().history(full.jacket)); }},
        {"history of a boat", [](FullClub& full) { return errorIn(full.club.answers().history("Petrel")); }},
        {"history of a person",
         [](FullClub& full) { return errorIn(full.club.answers().history("Bram Oke")); }},
        {"evidence",
         [](FullClub& full) { return errorIn(full.club.answers().evidence("Petrel", full.now.at)); }},
        {"event", [](FullClub& full) { return errorIn(full.club.events().tally("Lake festival")); }},
        {"make-ready",
         [](FullClub& full) { return errorIn(full.club.plans().makeReady({}, full.now.today)); }},
        {"replacement",
         [](FullClub& full) { return errorIn(full.club.plans().replacement({}, full.now.today)); }},
        {"export",
         [](FullClub& full) { return errorIn(full.club.register_().exportCsv(full.folder / "export", {})); }},
    };
}

} // namespace support
