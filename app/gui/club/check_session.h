#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>

#include "app/gui/club/club_thread.h"
#include "app/text/printed_tags.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/register/operation.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace app {

/// What the lists say beside the answer itself.
struct CheckContext {
    std::vector<std::string> askWhom;       ///< return: who was aboard when the boat went out
    std::optional<core::Instant> launched;  ///< return: when the launch check was signed
    std::map<std::string, core::Item> worn; ///< by code: what a person of the answer wears
    PrintedTags tags;
};

/// Everything that the check page shows, as it stands on disk.
struct CheckState {
    core::OpenCheck open;
    core::CheckAnswer answer;
    std::vector<std::string> names;  ///< driver first
    std::vector<std::string> people; ///< all of the club, by name
    std::vector<core::LogEntry> log; ///< the boat's: open first, then newest first
    CheckContext context;
    std::optional<core::Operation> trip; ///< of a return: what was written of it
};

/// One check at work: each call is written to the club file on the club's thread; the answer comes back by
/// signal, after it is on disk. GUI thread.
class CheckSession : public QObject {
    Q_OBJECT

public:
    CheckSession(ClubThread& club, TimeSource time, QObject* parent = nullptr);

    /// Opens the boat's check of that phase, or goes on with its unfinished one. For a stocktake `boat` is
    /// the place.
    void open(const QString& boat, core::Phase phase);
    void giveNames(const QStringList& people);
    /// Scans are written one after the other; those that come while the disk is busy are written together
    /// with one answer after them.
    void scan(const QString& text, core::SeenBy seenBy);
    void undo();
    void takeBack(const QString& code);
    void recordPoint(const QString& point, double value);
    void withdraw(const QString& code, const QString& text);
    void recordTrip(const core::Operation& trip);
    void sign(const QString& by, const QString& urgent);

    const std::optional<CheckState>& state() const { return m_state; }
    bool isBusy() const { return m_jobs > 0; }
    const core::Moment moment() const { return m_time(); }

signals:
    void changed();                                               ///< `state` is new
    void scanned(const core::Scanned& what, const QString& text); ///< on disk; `changed` comes before it
    void tookBack(const core::Scanned& what);                     ///< by undo
    void signedOff(const core::SignedCheck& check);
    void failed(const QString& sentence); ///< nothing was changed

private:
    struct Waiting {
        std::string text;
        core::SeenBy seenBy;
    };
    struct Scans {
        core::Result<CheckState> state;
        std::vector<std::pair<core::Result<core::Scanned>, std::string>> scans;
    };

    void writeScans();
    void takeScans(Scans scans);
    void take(const core::Result<CheckState>& state);
    void fail(const core::Error& error);
    /// Runs `change` and reads the new state.
    void change(std::function<core::Outcome(core::Club&, const std::string& check, core::Moment)> what);

    ClubThread& m_club;
    TimeSource m_time;
    std::optional<CheckState> m_state;
    std::vector<Waiting> m_waiting;
    bool m_scanning = false;
    int m_jobs = 0;
};

} // namespace app
