#pragma once

#include "app/desk/check/check_row.h"
#include "app/desk/check/check_session.h"
#include "app/desk/sheet/check_sheet.h"

#include <QWidget>

#include <memory>

class QLabel;
class QStackedWidget;

namespace app {

class CameraPanel;
class CheckListModel;
class CheckListView;
class ClubThread;
class ItemPanel;
class LogPanel;
class OutcomeFoot;
class PeopleBar;
class PointClock;
class SignPanel;
class SignedPanel;
class Sounds;

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

    void say(const QString& sentence, bool toLookAt = false);

signals:
    void leaveWanted();
    void nextBoatWanted();
    void sheetWanted(const app::CheckSheet& sheet, bool print);
    void answered(); ///< a new answer is shown

public slots:
    void sheetDone(const QString& sentence);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void connectParts();
    QWidget* buildHead();
    QWidget* buildLists();
    void startSession(core::Phase phase);
    void showState();
    void showRows();
    void showScan(const core::Scanned& scan, const QString& text);
    void showNewItem(const core::Scanned& scan);
    void act(core::ControlTag control);
    void finish();
    void showSigned(const core::SignedCheck& check);
    CheckSheet sheetOf(const core::SignedCheck& check) const;
    void showItem(const QString& code, bool toWithdraw);
    void showLists();
    void pressClock(QString point);
    const CheckRow* rowOfCode(const QString& code) const;
    CheckListModel& modelOf(const QString& key) const;
    bool isWide() const;

    ClubThread& m_club;
    TimeSource m_time;
    Sounds& m_sounds;
    std::unique_ptr<CheckSession> m_session;
    QString m_boat;
    QString m_lastItem; ///< code of the item seen last
    std::vector<CheckRow> m_rows;
    std::optional<core::SignedCheck> m_signed;
    PointClock* m_clock;
    CheckListModel* m_model;       ///< everything, or all but the points on a wide page
    CheckListModel* m_pointsModel; ///< the points on a wide page
    CheckListView* m_view;
    CheckListView* m_pointsView;
    QLabel* m_boatLabel;
    QLabel* m_phaseLabel;
    PeopleBar* m_people;
    LogPanel* m_log;
    CameraPanel* m_camera;
    QStackedWidget* m_stack;
    QWidget* m_lists;
    SignPanel* m_sign;
    ItemPanel* m_item;
    SignedPanel* m_signedPanel;
    OutcomeFoot* m_foot;
};

} // namespace app
