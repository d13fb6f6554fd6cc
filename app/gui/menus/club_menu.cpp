#include "app/gui/menus/club_menu.h"

namespace app {

ClubMenu::ClubMenu(QWidget* parent)
    : QMenu(tr("&Club"), parent) {
    addAction(tr("&Open a club file…"), QKeySequence::Open, this, &ClubMenu::openPressed);
    addAction(tr("&New club file…"), QKeySequence::New, this, &ClubMenu::newPressed);
    addAction(tr("&Import a folder of CSV…"), QKeySequence("Ctrl+I"), this, &ClubMenu::importPressed);
    addAction(tr("Import a &spreadsheet…"), QKeySequence("Ctrl+Shift+I"), this,
              &ClubMenu::spreadsheetPressed);
    addSeparator();
    addAction(tr("The &boats"), QKeySequence("Ctrl+B"), this, &ClubMenu::boatsPressed);
    addSeparator();
    addAction(tr("&Quit"), QKeySequence("Ctrl+Q"), this, &ClubMenu::quitPressed);
}

} // namespace app
