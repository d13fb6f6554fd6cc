#pragma once

#include "app/gui/camera/scan_taker.h"
#include "app/gui/club/check_session.h"
#include "app/gui/printout/check_printout.h"

#include <QWidget>

#include <memory>
#include <optional>

class QHBoxLayout;
class QPushButton;
class QShortcut;

namespace app {

class CameraPanel;
class CheckHead;
class CheckLists;
class ClubThread;
class ItemPanel;
class LetGoPanel;
class LogPanel;
class OutcomeFoot;
class PartStack;
class PointClock;
struct ScanWords;
class Signing;
class Sounds;
class TripPanel;

/// A launch or return check on one page: who is aboard, the boat's log, the camera, what is still to find, to
/// look at, found, the points, and the outcome at the foot. Everything shown is on disk.
class CheckPage : public QWidget, public ScanTaker {
    Q_OBJECT

public:
    CheckPage(ClubThread& club, TimeSource time, Sounds& sounds, QWidget* parent = nullptr);
    ~CheckPage() override;

    void open(const QString& boat, core::Phase phase, bool withCamera);
    void close(); ///< lets the camera go; the check stays open on disk

    QString boat() const { return m_boat; }
    core::Phase phase() const { return m_phase; }
    bool isOpen() const { return m_session != nullptr; }
    CameraPanel& camera() { return *m_camera; }
    CheckSession* session() { return m_session.get(); }

    // What menus, buttons and control tags do.
    void beginSigning();
    void undo();
    void takeBackCurrent();
    void damagedCurrent(); ///< the item of the current line, else the one seen last
    void toggleClock();    ///< of the timed point that runs, else of the first that is open
    void goToPoints();
    void goToPeople();
    void goToTrip(); ///< of a return; also after it is signed
    void letGo();    ///< where nothing stands at once, else it is asked why

    void say(const QString& sentence, bool toLookAt = false);
    bool takeScan(const QString& text, core::SeenBy how) override;
    void sayOfScan(const QString& sentence) override { say(sentence, true); }

signals:
    void leaveWanted();
    void nextBoatWanted();
    void printWanted(const app::CheckPrintout& printout);
    void saveWanted(const app::CheckPrintout& printout);
    void answered(); ///< a new answer is shown

public slots:
    void printoutDone(const QString& sentence);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void connectParts();
    void connectCamera();
    void connectLists();
    void connectSigning();
    void startSession(core::Phase phase);
    void showState();
    bool isOpenToScans() const; ///< a check is open, and not signed yet
    void showStep(const FlowStep& step, const QString& text);
    void showScan(const FlowStep& step, const QString& text);
    void say(const ScanWords& words);
    void pressSignature(); ///< as its button, its key and the tag for finishing do
    void showSigned(const core::SignedCheck& check);
    void showItem(const QString& code, bool toWithdraw);
    void showPart(QWidget* part);
    void arrangeHalves();
    void showLists();
    void leavePart(); ///< back to the lists, or to what is signed
    void showTrip();
    void leaveTrip();
    void openDrafts();

    ClubThread& m_club;
    TimeSource m_time;
    Sounds& m_sounds;
    std::unique_ptr<CheckSession> m_session;
    QString m_boat;
    QString m_drafts;                          ///< where what is half written of this check is kept
    std::optional<core::Operation> m_tripSent; ///< and not yet on disk
    core::Phase m_phase = core::Phase::Launch;
    PointClock* m_clock;
    CheckHead* m_head;
    LogPanel* m_log;
    QPushButton* m_tripButton;
    CameraPanel* m_camera;
    QHBoxLayout* m_body;
    PartStack* m_stack;
    QShortcut* m_escape; ///< of what is not the lists, where it clears a code that was begun
    CheckLists* m_lists;
    ItemPanel* m_item;
    Signing* m_signing;
    TripPanel* m_trip;
    LetGoPanel* m_letGo;
    OutcomeFoot* m_foot;
};

} // namespace app
