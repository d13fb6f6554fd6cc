#include "app/gui/main_window.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/hand_scanner.h"
#include "app/gui/check/check_page.h"
#include "app/gui/club/club_copies.h"
#include "app/gui/club/club_lock.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/register/register_page.h"
#include "app/gui/menus/camera_menu.h"
#include "app/gui/menus/check_menu.h"
#include "app/gui/menus/club_menu.h"
#include "app/gui/menus/page_menu.h"
#include "app/gui/menus/view_menu.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/palette.h"
#include "app/gui/welcome_page.h"
#include "app/text/text.h"

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QMenuBar>
#include <QPushButton>
#include <QSettings>
#include <QStackedWidget>

// The window's menus, its language and its look.

namespace app {

void MainWindow::buildMenus() {
    buildClubMenu();
    m_lockMark = new QPushButton(menuBar());
    m_lockMark->setObjectName("lockMark");
    // As high as the menus beside it.
    m_lockMark->setStyleSheet(
        QStringLiteral("QPushButton { min-height: 28px; font-size: 14pt; padding: 0px 12px; }"));
    menuBar()->setCornerWidget(m_lockMark);
    connect(m_lockMark, &QPushButton::clicked, m_lock, &ClubLock::lock);
    showLock();
    m_checkMenu = new CheckMenu(*m_check, menuBar());
    connect(m_checkMenu, &CheckMenu::startWanted, this, &MainWindow::startOnBoard);
    connect(m_checkMenu, &CheckMenu::paperWanted, this, &MainWindow::saveOnPaper);
    menuBar()->addMenu(m_checkMenu);
    m_cameraMenu = new CameraMenu(m_check->camera(), menuBar());
    menuBar()->addMenu(m_cameraMenu);
    menuBar()->addMenu(tr("&Gear officer"))->addActions(m_office->pageActions());
    m_pageMenu = new PageMenu(menuBar());
    menuBar()->addMenu(m_pageMenu);
    buildViewMenu();
    buildHelpMenu();
}

/// At the right of the menus, on whatever page.
void MainWindow::showLock() {
    const QString person = m_lock->person();
    m_lockMark->setText(tr("■ unlocked: %1 · Lock").arg(app::text(person)));
    m_lockMark->setAccessibleName(tr("unlocked by %1: lock").arg(app::text(person)));
    m_lockMark->setVisible(!person.isEmpty());
    m_clubMenu->setUnlocked(!person.isEmpty());
}

void MainWindow::buildClubMenu() {
    auto* menu = new ClubMenu(menuBar());
    m_clubMenu = menu;
    menuBar()->addMenu(menu);
    connect(menu, &ClubMenu::backUpPressed, m_copies, &ClubCopies::backUp);
    connect(menu, &ClubMenu::restorePressed, m_copies, &ClubCopies::restore);
    connect(menu, &ClubMenu::copyFolderPressed, m_copies, &ClubCopies::chooseFolder);
    connect(menu, &ClubMenu::noCopiesPressed, m_copies, &ClubCopies::endCopies);
    connect(menu, &ClubMenu::openPressed, this, &MainWindow::chooseClub);
    connect(menu, &ClubMenu::newPressed, this, [this] {
        if (m_isClubOpen) m_welcome->say({}); // what another file had is no matter any more
        showWelcome();
        m_welcome->beginNew();
    });
    connect(menu, &ClubMenu::importPressed, this, &MainWindow::importFolder);
    connect(menu, &ClubMenu::spreadsheetPressed, this, &MainWindow::importSpreadsheet);
    connect(menu, &ClubMenu::namePressed, this, [this] {
        if (!m_isClubOpen) return;
        m_office->showPage("register");
        showOffice();
        if (auto* page = qobject_cast<RegisterPage*>(m_office->page("register"))) page->askClubsName();
    });
    connect(menu, &ClubMenu::exchangePressed, this, [this] {
        if (m_isClubOpen) m_office->showPage("exchange");
        showOffice();
    });
    connect(menu, &ClubMenu::lockPressed, m_lock, &ClubLock::lock);
    connect(menu, &ClubMenu::boatsPressed, this, [this] {
        if (m_isClubOpen) showBoard();
    });
    connect(menu, &ClubMenu::quitPressed, this, &QWidget::close);
}

void MainWindow::buildViewMenu() {
    m_view = new ViewMenu(m_sounds, menuBar());
    menuBar()->addMenu(m_view);
    connect(m_view, &ViewMenu::themeChosen, this, &MainWindow::setTheme);
    // Queued: the menu that was pressed is built anew.
    connect(m_view, &ViewMenu::languageChosen, this, &MainWindow::setLanguage, Qt::QueuedConnection);
    connect(m_view, &ViewMenu::fullScreenPressed, this,
            [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
}

void MainWindow::setLanguage(const QString& code) {
    QSettings().setValue("look/language", code);
    const bool inCheck = m_check->isOpen();
    const QString boat = m_check->boat();
    const core::Phase phase = m_check->phase();
    leavePage();
    speak(code);
    build();
    if (!m_isClubOpen) return;
    if (inCheck)
        startCheck(boat, phase);
    else
        showBoard();
}

void MainWindow::setTheme(const QString& name) {
    dress(*qApp, paletteOf(name));
    QSettings().setValue("look/theme", currentPalette().name);
    m_view->markTheme(currentPalette().name);
    for (QWidget* widget : findChildren<QWidget*>())
        widget->update();
}

/// Not a button to which the keyboard goes while another widget deals with that very key: a sentence that is
/// ended leads to its button and does not press it. A key that is held down presses nothing either.
bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    auto* button = qobject_cast<QAbstractButton*>(watched);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (!button || !enter || key->modifiers() & ~Qt::KeypadModifier || !isAncestorOf(button)) return false;
    event->accept();
    if (!key->isAutoRepeat()) button->click();
    return true;
}

void MainWindow::adaptMenus() {
    QWidget* page = m_pages->currentWidget();
    m_checkMenu->setInCheck(page == m_check);
    m_cameraMenu->setInCheck(page == m_check);
    m_pageMenu->showPage(currentPage());
    m_scanner->comeFirst(); // a page that was made just now has filters of its own
}

} // namespace app
