#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QString>

#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/register/operation.h"

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace app {

/// What the lists say beside the answer itself.
struct CheckContext {
    std::vector<std::string> askWhom;       ///< return: who was aboard when the boat went out
    std::optional<core::Instant> launched;  ///< return: when the launch check was signed
    std::map<std::string, core::Item> worn; ///< by id: what a person of the answer wears
    std::set<std::string> wornTypes;        ///< kit types of which each person needs one that fits
};

/// Everything that the check page shows, as it stands on disk.
struct CheckState {
    core::OpenCheck open;
    core::CheckAnswer answer;
    std::vector<std::string> names;  ///< driver first
    std::vector<std::string> people; ///< all of the club, by name
    std::vector<core::LogEntry> log; ///< the boat's: open first, then newest first
    CheckContext context;
    std::optional<core::Operation> trip;  ///< of a return: what was written of it
    std::optional<core::CheckAct> newest; ///< what an undo would take back; empty: nothing stands
    std::string lastItem;                 ///< id of the item that the tag for damaged kit would withdraw
};

/// What stands around a check while kit is scanned: read when it is opened, and when more than a scan was
/// done.
struct CheckSurroundings {
    std::vector<std::string> people;
    std::vector<core::LogEntry> log;
    std::optional<core::Operation> trip;
    CheckContext context; ///< without what is worn
};

/// What became of a check's state.
struct CheckChange {
    core::CheckAnswer answer;
    std::vector<std::string> names;
    std::optional<core::CheckAct> newest;
    std::map<std::string, core::Item> worn;
    std::optional<CheckSurroundings> surroundings; ///< empty: as they were
};

CheckState stateOf(core::OpenCheck open, CheckChange change);
void apply(CheckState& state, CheckChange change);

/// Reads a check for the page: all of it when it is opened, afterwards what a step can have changed. Used on
/// the thread of the club.
class CheckReader {
public:
    enum class Extent { Scan, All };

    explicit CheckReader(core::OpenCheck open)
        : m_open(std::move(open)) {}

    /// Whether somebody else wrote into the file since the last reading: then everything is to be read.
    bool isStale(const core::Club& club) const { return club.changeMark() != m_changeMark; }
    /// The first reading is of everything.
    core::Result<CheckChange> read(core::Club& club, core::Moment moment, Extent extent);

private:
    CheckSurroundings surroundings(core::Club& club, core::CalendarDay today) const;
    void addWorn(const core::Club& club, const core::CheckAnswer& answer);

    core::OpenCheck m_open;
    std::optional<CheckContext> m_launch; ///< how the boat went out, of which this check is the return
    std::map<std::string, core::Item> m_worn;
    std::int64_t m_changeMark = 0; ///< of the file at the last reading
};

} // namespace app
