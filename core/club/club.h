#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>

namespace core {

class ClubAnswers;
class ClubChecks;
class ClubEvents;
class ClubExchange;
class ClubHub;
class ClubKit;
class ClubLog;
class ClubManifests;
class ClubPhotos;
class ClubPins;
class ClubPlans;
class CalendarDay;
class ClubRecord;
class ClubRegister;
struct ClubState;
struct ImportPlan;

/// A club file and everything a person does with it, by subject. Each subject is a small face of its own
/// header, valid as long as this Club.
///
/// What holds of every function of every face: what it writes is durable when it returns, and one that fails
/// changes nothing; what it answers is the club as of one moment, whatever other programs write meanwhile.
/// Names given are found without regard to case and outer blanks; codes may be typed
/// forgivingly. `Moment` says when something is done; rules never look at a clock. Functions that return a
/// Result never throw; the others throw StoreFailure when the file fails beneath them. Not for sharing
/// between threads: each thread opens its own.
class Club {
public:
    /// Refuses an existing file (FileExists). The file is whole and durable when this returns.
    static Result<Club> create(const std::filesystem::path& file, const std::string& name);
    /// The same with a register from a folder of CSV, in one: with a row rejected there is no file, and the
    /// plan says which.
    static Result<ImportPlan> createFrom(const std::filesystem::path& file, const std::string& name,
                                         const std::filesystem::path& folder, CalendarDay today,
                                         const std::function<void(int done, int of)>& progress = {});
    /// Migrates an older file after backing it up; refuses a newer one. ReadOnly never writes, not even that.
    enum class Access { ReadWrite, ReadOnly };
    static Result<Club> open(const std::filesystem::path& file, Access access = Access::ReadWrite);

    Club(Club&&) noexcept;
    Club& operator=(Club&&) noexcept;
    ~Club();

    std::string name() const;
    /// Another number than before whenever something was written since, by this Club or by another program.
    std::int64_t changeMark() const;
    /// Whether the file is still at its path. Once it was moved, deleted or replaced there, whatever would be
    /// written is refused (FileReplaced).
    bool isInPlace() const;
    /// For moments in which nothing is done: puts what the log holds into the file, so that a copy or a file
    /// that takes its place is not mixed with it. Does not wait.
    void rest();

    ClubRegister register_() const;  ///< club_register.h: the register's sheets, boats, people, places
    ClubKit kit() const;             ///< club_kit.h: items, their tags, their service
    ClubManifests manifests() const; ///< club_manifests.h: what each boat must carry, and its points
    ClubChecks checks() const;       ///< club_checks.h: launch and return checks, stocktakes
    ClubEvents events() const; ///< club_events.h: patrols and training days, what a crew writes of its trip
    ClubLog log() const;       ///< club_log.h: remarks and defects
    ClubAnswers
    answers() const; ///< club_answers.h: the board, the missing list, the due list, history, evidence
    ClubPhotos photos() const;     ///< club_photos.h: pictures of items and log entries
    ClubPins pins() const;         ///< club_pins.h: who may do what
    ClubPlans plans() const;       ///< club_plans.h: make-ready, replacement, how long kit lasts
    ClubRecord record() const;     ///< club_record.h: is the record unaltered
    ClubExchange exchange() const; ///< club_exchange.h: what other machines recorded
    ClubHub hub() const;           ///< club_hub.h: exchanging with a district's server

private:
    explicit Club(std::unique_ptr<ClubState> state);
    std::unique_ptr<ClubState> m_state;
};

} // namespace core
