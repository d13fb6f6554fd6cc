#pragma once

#include "app/desk/check/check_session.h"
#include "app/desk/choosers.h"
#include "app/desk/club/club_thread.h"
#include "app/desk/look/sounds.h"
#include "app/desk/sheet/check_sheet.h"
#include "core/exchange/csv_import.h"

#include <QMainWindow>

#include <filesystem>

class QActionGroup;
class QProgressBar;
class QStackedWidget;

namespace app {

class CheckPage;
class ShedBoard;
class WelcomePage;

/// The window: the shed board, and the page of the check that is done. Every action is in its menus.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(TimeSource time = machineTime(), Choosers choosers = systemChoosers());
    ~MainWindow() override;

    void openClub(const std::filesystem::path& file);
    void setTheme(const QString& name);
    /// Whether a check starts the camera; off where there must be none.
    void setCameraWanted(bool wanted) { m_cameraWanted = wanted; }

    ShedBoard& board() { return *m_board; }
    CheckPage& checkPage() { return *m_check; }
    Sounds& sounds() { return m_sounds; }
    bool isBoardShown() const;

public slots:
    void startCheck(const QString& boat, core::Phase phase);

signals:
    void boardShown();

protected:
    /// Enter presses the button that has the keyboard, as Space does.
    void keyPressEvent(QKeyEvent* event) override;

private:
    void connectPages();
    void buildMenus();
    void buildFileMenu();
    void buildCheckMenu();
    void buildCameraMenu();
    void buildViewMenu();
    QAction* addAction(QMenu& menu, const QString& text, const QKeySequence& keys, std::function<void()> act,
                       bool onlyInCheck = false);
    void chooseClub();
    void createClub(const QString& name);
    void takeOpened(const core::Outcome& opened, const QString& file);
    void importFolder();
    void showImport(const core::Result<core::ImportPlan>& plan);
    void showBoard(const QString& saying = {});
    void startNext();
    void openBoatOfTag(const QString& code);
    void startOnBoard(core::Phase phase);
    void readPictures(bool folder);
    void giveSheet(const CheckSheet& sheet, bool print);
    void writeSheet(const CheckSheet& sheet, bool print);
    void enableActions();

    TimeSource m_time;
    Choosers m_choosers;
    ClubThread m_club;
    Sounds m_sounds;
    bool m_isClubOpen = false;
    bool m_cameraWanted = true;
    bool m_isBoardFresh = false; ///< what the board shows is newer than what was done last
    QStackedWidget* m_pages;
    WelcomePage* m_welcome;
    ShedBoard* m_board;
    CheckPage* m_check;
    QProgressBar* m_progress;
    QActionGroup* m_checkActions;
    QActionGroup* m_themes;
};

} // namespace app
