#pragma once

#include "app/gui/club/check_session.h"
#include "app/gui/printout/check_printout.h"

#include <QWidget>

#include <memory>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace app {

class CameraPanel;
class CheckLists;
class ClubThread;
class ItemPanel;
class LogPanel;
class OutcomeFoot;
class PeopleBar;
class PointClock;
class Signing;
class Sounds;
class TripPanel;

/// A launch or return check on one page: who is aboard, the boat's log, the camera, what is still to find, to
/// look at, found, the points, and the outcome at the foot. Everything shown is on disk.
class CheckPage : public QWidget {
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
    void toggleClock();    ///< of the current timed point, else of the first that is open
    void goToPoints();
    void goToPeople();
    void goToTrip(); ///< of a return

    QString itemOf(const std::string& tag) const;      ///< the code of the item that a printed tag names
    core::Scanned inPrinted(core::Scanned scan) const; ///< named by the tag that is on the thing
    void say(const QString& sentence, bool toLookAt = false);

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
    QWidget* buildHead();
    void startSession(core::Phase phase);
    void showState();
    void takeCode(const QString& text, core::SeenBy seenBy);
    void nameSigner(const std::string& code);
    void showScan(const core::Scanned& scan, const QString& text);
    void act(core::ControlTag control);
    void finish();
    void showSigned(const core::SignedCheck& check);
    void showItem(const QString& code, bool toWithdraw);
    void showLists();
    void showTrip();
    void pressClock(const QString& point);

    ClubThread& m_club;
    TimeSource m_time;
    Sounds& m_sounds;
    std::unique_ptr<CheckSession> m_session;
    QString m_boat;
    core::Phase m_phase = core::Phase::Launch;
    QString m_lastItem; ///< code of the item seen last
    PointClock* m_clock;
    QLabel* m_boatLabel;
    QLabel* m_phaseLabel;
    PeopleBar* m_people;
    LogPanel* m_log;
    QPushButton* m_tripButton;
    CameraPanel* m_camera;
    QHBoxLayout* m_body;
    QStackedWidget* m_stack;
    CheckLists* m_lists;
    ItemPanel* m_item;
    Signing* m_signing;
    TripPanel* m_trip;
    OutcomeFoot* m_foot;
};

} // namespace app
