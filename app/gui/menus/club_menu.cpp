#include "app/gui/menus/club_menu.h"

namespace app {

ClubMenu::ClubMenu(QWidget* parent)
    : QMenu(tr("&Club"), parent) {
    addAction(tr("&Open a club file…"), QKeySequence::Open, this, &ClubMenu::openPressed);
    addAction(tr("&New club file…"), QKeySequence::New, this, &ClubMenu::newPressed);
    addAction(tr("&Import a folder of CSV…"), QKeySequence("Ctrl+I"), this, &ClubMenu::importPressed);
    addAction(tr("Import a &spreadsheet…"), QKeySequence("Ctrl+Shift+I"), this,
              &ClubMenu::spreadsheetPressed);
    addAction(tr("Mend the club’s n&ame…"), QKeySequence("Ctrl+Shift+M"), this, &ClubMenu::namePressed);
    addAction(tr("&Exchange with another file…"), QKeySequence("Ctrl+Shift+X"), this,
              &ClubMenu::exchangePressed);
    addSeparator();
    addAction(tr("Back &up…"), QKeySequence("Ctrl+Shift+B"), this, &ClubMenu::backUpPressed);
    addAction(tr("&Restore a backup…"), QKeySequence("Ctrl+Shift+R"), this, &ClubMenu::restorePressed);
    addAction(tr("A &copy after each signed check…"), QKeySequence("Ctrl+Shift+C"), this,
              &ClubMenu::copyFolderPressed);
    m_noCopies = addAction(tr("No &more copies after checks"), QKeySequence("Ctrl+Shift+N"), this,
                           &ClubMenu::noCopiesPressed);
    m_noCopies->setVisible(false);
    addSeparator();
    m_lock = addAction(tr("&Lock"), QKeySequence("Ctrl+Shift+K"), this, &ClubMenu::lockPressed);
    m_lock->setVisible(false);
    addAction(tr("The &boats"), QKeySequence("Ctrl+B"), this, &ClubMenu::boatsPressed);
    addSeparator();
    addAction(tr("&Quit"), QKeySequence("Ctrl+Q"), this, &ClubMenu::quitPressed);
}

void ClubMenu::setCopying(bool isCopying) {
    m_noCopies->setVisible(isCopying);
}

void ClubMenu::setUnlocked(bool isUnlocked) {
    m_lock->setVisible(isUnlocked);
}

} // namespace app
