#pragma once

#include "app/gui/board/boat_strip.h"
#include "app/gui/camera/scan_taker.h"
#include "app/gui/choosers.h"
#include "app/gui/club/club_thread.h"
#include "core/answers/board.h"
#include "core/answers/set_up.h"
#include "core/base/calendar_day.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_pins.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QHBoxLayout;
class QVBoxLayout;

namespace app {

class CameraPanel;
class EventLine;
struct HubNews;
class SetUpStrip;

/// What the shed board shows, read from the club file in one go.
struct BoardState {
    QString club;
    core::CalendarDay today;
    std::vector<core::BoatCondition> boats;
    std::vector<core::OpenCheck> unfinished;
    int missing = 0;
    int dueSoon = 0;                         ///< rows of the due list within `dueWithin` days
    std::optional<core::Instant> began{};    ///< the club
    std::vector<core::SetUpTick> setUp = {}; ///< empty: nobody asked
    std::vector<core::PinReset> resets = {}; ///< PINs that the file's owner took away of late, newest first
};
inline constexpr int dueWithin = 30;

/// Reads it; on the club's thread. `arePrinted`: the club's tags, for what is still to be set up.
enum class BoardReads { Boats, SetUpToo };
BoardState readBoard(const core::Club& club, core::CalendarDay today, BoardReads reads = BoardReads::Boats,
                     bool arePrinted = false);

/// What a boat needs next.
core::Phase nextPhase(const core::BoatCondition& boat, const std::vector<core::OpenCheck>& unfinished);
BoatWords wordsOf(const core::BoatCondition& boat, const BoardState& board);

/// The first screen: a strip per boat, and two lines for the gear officer.
class ShedBoard : public QWidget, public ScanTaker {
    Q_OBJECT

public:
    explicit ShedBoard(QWidget* parent = nullptr);

    void setState(const BoardState& state);
    const BoardState& state() const { return m_state; }
    /// The boat whose strip has the keyboard; empty when none has.
    QString currentBoat() const;
    void say(const QString& sentence);            ///< what became of a code typed here
    void remindOfBackup(const QString& sentence); ///< empty: nothing is to be said
    QString said() const;
    void sayOfHub(const HubNews& news); ///< how it stands with the district's server
    /// Lets the boats be printed, saved or copied, and their check lists.
    void offerPaper(ClubThread& club, const Choosers& choosers, const TimeSource& time);
    CameraPanel& camera() { return *m_camera; } ///< for a boat's tag
    EventLine& eventLine() { return *m_event; }
    bool takeScan(const QString& text, core::SeenBy how) override;
    void sayOfScan(const QString& sentence) override { say(sentence); }

signals:
    void boatPressed(const QString& boat, core::Phase phase); ///< `phase`: what it needs next
    void codeScanned(const QString& text);
    void backUpPressed();
    void importPressed(); ///< of a board without boats
    void setUpPutAway();
    void hubPressed();                       ///< the line about the district's server
    void gearPagePressed(const QString& id); ///< see GearOffice

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fillStrips();

    BoardState m_state;
    QLabel* m_title;
    SetUpStrip* m_setUp;
    EventLine* m_event;
    QWidget* m_strips;
    QVBoxLayout* m_stripLayout;
    QPushButton* m_missing;
    QPushButton* m_due;
    QPushButton* m_hub; ///< how it stands with the district's server; leads to its page
    QLabel* m_said;
    QLabel* m_resets;
    QLabel* m_reminder;
    QPushButton* m_backUp; ///< beside the reminder
    QHBoxLayout* m_gear;   ///< the lines for the gear officer
    CameraPanel* m_camera;
};

} // namespace app
