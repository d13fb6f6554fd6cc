#include "app/gui/main_window.h"

#include "app/gui/check/check_page.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/help/help_page.h"

#include <QMenuBar>
#include <QStackedWidget>

// The help of the page that is shown, in the window.

namespace app {

void MainWindow::buildHelpMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    QAction* action = menu->addAction(tr("Help on this &page"), this, &MainWindow::showHelp);
    action->setObjectName("helpAction");
    action->setShortcut(QKeySequence(Qt::Key_F1));
    connect(m_help, &HelpPage::leaveWanted, this, &MainWindow::leaveHelp);
}

QString MainWindow::pageAtHand() const {
    const QWidget* page = m_pages->currentWidget();
    if (page == m_office) return m_office->currentPage();
    if (page == m_check) return m_check->phase() == core::Phase::Return ? "return" : "launch";
    return isBoardShown() ? "board" : "welcome";
}

/// A check stays open beneath, and its camera goes on: what was begun is not disturbed.
void MainWindow::showHelp() {
    if (m_pages->currentWidget() == m_help) return leaveHelp();
    m_help->showPage(pageAtHand());
    m_beforeHelp = m_pages->currentWidget();
    m_focusBefore = focusWidget();
    m_pages->setCurrentWidget(m_help);
    m_help->setFocus(Qt::OtherFocusReason);
    adaptMenus();
}

void MainWindow::leaveHelp() {
    if (m_beforeHelp) m_pages->setCurrentWidget(m_beforeHelp);
    if (m_focusBefore) m_focusBefore->setFocus(Qt::OtherFocusReason);
    adaptMenus();
}

} // namespace app
