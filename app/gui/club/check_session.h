#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>

#include "app/flow/check_flow.h"
#include "app/gui/club/check_state.h"
#include "app/gui/club/club_thread.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/register/operation.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace app {

/// One check at work: what is scanned and pressed goes to its CheckFlow on the club's thread, one after the
/// other; what it came to returns by signal, after it is on disk. What comes while the disk is busy is
/// written together, with one answer after it. GUI thread.
class CheckSession : public QObject {
    Q_OBJECT

public:
    CheckSession(ClubThread& club, TimeSource time, QObject* parent = nullptr);

    /// Opens the boat's check of that phase, or goes on with its unfinished one. For a stocktake `boat` is
    /// the place.
    void open(const QString& boat, core::Phase phase);
    void scan(const core::ScannedText& scan, core::SeenBy seenBy);
    void scan(const QString& typed, core::SeenBy seenBy); ///< by hand, or by a scanner that types
    void undo();
    void takeBack(const QString& code);
    void withdraw(const QString& code, const QString& text);
    void happened(const QString& code, const QString& event);
    void giveNames(const QStringList& people);
    void recordPoint(const QString& point, double value);
    void recordTrip(const core::Operation& trip);
    void turnClock(); ///< of the first timed point that is open, or the one that runs
    void turnClockOf(const QString& point);
    void discard(const QString& reason);
    void setSignatureAsked(bool isAsked); ///< as the tag for finishing does; see CheckFlow
    /// `missing`: see Signature. Where the club asks for the signer's PIN, that is asked for in the window
    /// (ClubThread::signersPinWanted), and it is signed with it.
    void sign(const QString& by, const QString& urgent, std::optional<int> missing = std::nullopt);

    const std::optional<CheckState>& state() const { return m_state; }
    bool isBusy() const { return m_isOpening || m_isWriting || !m_waiting.empty(); }
    core::Moment moment() const { return m_time(); }

signals:
    void changed(); ///< `state` is new
    /// What one thing came to; `changed` comes before it. `text` is what was scanned, as it came.
    void stepped(const app::FlowStep& step, const QString& text);
    void failed(const QString& sentence); ///< nothing was changed

private:
    using Act = std::function<core::Result<FlowStep>(core::Club&, CheckFlow&)>;
    struct Waiting {
        Act act;
        QString text;
    };
    /// What the club's thread remembers of the check.
    struct Work {
        CheckFlow flow;
        CheckReader reader;
    };
    struct Opened {
        std::shared_ptr<Work> work;
        CheckState state;
    };
    struct Written {
        std::vector<std::pair<core::Result<FlowStep>, QString>> steps;
        std::optional<core::Result<CheckChange>> change; ///< empty: all is as it was
        std::string lastItem;
    };

    void takeOpened(core::Result<Opened> opened);
    void scanAs(const QString& asItCame, const core::ScannedText& scan, core::SeenBy seenBy);
    void perform(Act act, const QString& text = {});
    void write();
    static Written written(core::Club& club, Work& work, const std::vector<Waiting>& waiting,
                           core::Moment moment);
    void takeWritten(Written written);
    void fail(const core::Error& error);
    void signAs(Signature signature);
    void askForPin(const core::Error& error);

    ClubThread& m_club;
    TimeSource m_time;
    std::optional<CheckState> m_state;
    std::shared_ptr<Work> m_work; ///< touched on the club's thread only
    std::vector<Waiting> m_waiting;
    Signature m_signature; ///< given last
    bool m_isOpening = false;
    bool m_isWriting = false;
};

} // namespace app
