#pragma once

#include "app/gui/choosers.h"
#include "app/gui/club/check_session.h"
#include "app/gui/club/club_thread.h"
#include "app/gui/theme/sounds.h"

#include <QMainWindow>
#include <QPointer>

#include <filesystem>

class QProgressBar;
class QPushButton;
class QStackedWidget;

namespace app {

class CameraMenu;
class CheckMenu;
class ClubCopies;
class ClubLock;
class ClubMenu;
class PaperDelivery;
class CheckPage;
class GearOffice;
class HubWatch;
class HandScanner;
class HelpPage;
class ImportRun;
class PageMenu;
class PrintoutDelivery;
class ReplacedStrip;
class ShedBoard;
class UnlockStrip;
class ViewMenu;
class WelcomePage;
struct NewClub;

/// The window: the shed board, the page of the check that is done, and what else has a page. Every action is
/// in its menus.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(TimeSource time = machineTime(), Choosers choosers = systemChoosers());
    ~MainWindow() override;

    void openClub(const std::filesystem::path& file);
    void setTheme(const QString& name);
    /// Builds everything anew in that language and goes on where it was. Kept for the next time.
    void setLanguage(const QString& code);
    /// Whether a check starts the camera; off where there must be none.
    void setCameraWanted(bool wanted) { m_cameraWanted = wanted; }

    ShedBoard& board() { return *m_board; }
    CheckPage& checkPage() { return *m_check; }
    GearOffice& gearOffice() { return *m_office; }
    ClubLock& lock() { return *m_lock; }
    Sounds& sounds() { return m_sounds; }
    HelpPage& helpPage() { return *m_help; }
    HandScanner& handScanner() { return *m_scanner; }
    bool isBoardShown() const;

public slots:
    void startCheck(const QString& boat, core::Phase phase);

signals:
    void boardShown(); ///< what was read of the club stands on the board

protected:
    /// Enter presses the button that gets it, as Space does.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void buildPages();
    void leavePage();
    void connectPages();
    void connectCheck();
    void showOffice();
    void buildMenus();
    void buildClubMenu();
    void showWelcome();
    void buildViewMenu();
    void connectCopies();
    void sayWhereItStands(const QString& sentence);
    QString boatAtHand() const; ///< of the check, or on the board; empty: none
    void saveOnPaper(bool card);
    void chooseClub();
    void createClub(const NewClub& wanted);
    void goOnWith(const NewClub& made);
    void takeOpened(const core::Outcome& opened, const QString& file);
    void leaveClub(const core::Error& error);
    void stayInClub(const core::Error& error);
    void importFolder();
    void importFrom(const QString& folder);
    void showLock();
    void connectHub();
    void connectLock();
    void showClubsName(); ///< above the window, as it is by now
    void readBoardAnew(const QString& saying);
    void importSpreadsheet();
    void putSetUpAway();
    void showBoard(const QString& saying = {});
    void startNext();
    QWidget* currentPage() const; ///< of the gear officer's the one that is shown
    void takeScan(const QString& text, core::SeenBy how);
    void openBoatOfTag(const QString& code);
    void openBoatSeen(const core::ScannedText& scan);
    void startOnBoard(core::Phase phase);
    void readPictures(bool folder);
    void buildHelpMenu();
    void showHelp(); ///< of the page that is shown, which stays as it is; shown already: back
    void leaveHelp();
    QString pageAtHand() const; ///< its id, as the help knows it
    void adaptMenus();          ///< to the page that is shown

    TimeSource m_time;
    Choosers m_choosers;
    ClubThread m_club;
    Sounds m_sounds;
    bool m_isClubOpen = false;
    bool m_cameraWanted = true;
    bool m_isBoardFresh = false; ///< what the board shows is newer than what was done last
    ImportRun* m_import;
    PrintoutDelivery* m_printouts;
    PaperDelivery* m_papers;
    ClubCopies* m_copies;
    ClubLock* m_lock;
    HubWatch* m_hub;
    HandScanner* m_scanner;
    QProgressBar* m_progress;
    // Made anew with each language.
    QStackedWidget* m_pages = nullptr;
    ReplacedStrip* m_replaced = nullptr;
    UnlockStrip* m_unlock = nullptr;
    QPushButton* m_lockMark = nullptr; ///< who has unlocked; a press locks
    WelcomePage* m_welcome = nullptr;
    ShedBoard* m_board = nullptr;
    CheckPage* m_check = nullptr;
    GearOffice* m_office = nullptr;
    HelpPage* m_help = nullptr;
    QPointer<QWidget> m_beforeHelp;  ///< the page that help was asked for
    QPointer<QWidget> m_focusBefore; ///< what had the keyboard there
    ClubMenu* m_clubMenu = nullptr;
    CheckMenu* m_checkMenu = nullptr;
    CameraMenu* m_cameraMenu = nullptr;
    PageMenu* m_pageMenu = nullptr;
    ViewMenu* m_view = nullptr;
};

} // namespace app
