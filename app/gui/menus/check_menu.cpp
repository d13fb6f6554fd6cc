#include "app/gui/menus/check_menu.h"

#include "app/gui/check/check_page.h"
#include "core/check/boat_check.h"

#include <QActionGroup>

namespace app {

CheckMenu::CheckMenu(CheckPage& page, QWidget* parent)
    : QMenu(tr("Ch&eck"), parent)
    , m_page(page)
    , m_ofCheck(new QActionGroup(this)) {
    m_ofCheck->setExclusive(false);
    addAction(tr("&Launch check of this boat"), QKeySequence("Ctrl+L"), this,
              [this] { emit startWanted(core::Phase::Launch); });
    addAction(tr("&Return check of this boat"), QKeySequence("Ctrl+R"), this,
              [this] { emit startWanted(core::Phase::Return); });
    addAction(tr("C&heck list on paper…"), QKeySequence("Ctrl+Shift+L"), this,
              [this] { emit paperWanted(false); });
    addAction(tr("Wall c&ard…"), QKeySequence("Ctrl+Shift+W"), this, [this] { emit paperWanted(true); });
    addSeparator();
    addOfCheck(tr("&Sign…"), QKeySequence("Ctrl+Return"), &CheckPage::beginSigning);
    addOfCheck(tr("Save for &later"), QKeySequence::Save, &CheckPage::leaveWanted);
    addOfCheck(tr("Cl&ose unsigned…"), QKeySequence("Ctrl+Shift+U"), &CheckPage::letGo);
    addOfCheck(tr("&Next boat"), QKeySequence("Ctrl+Right"), &CheckPage::nextBoatWanted);
    addSeparator();
    addOfCheck(tr("&Undo what was done last"), QKeySequence::Undo, &CheckPage::undo);
    addOfCheck(tr("Take this line's scan &back"), QKeySequence("Ctrl+Backspace"),
               &CheckPage::takeBackCurrent);
    addOfCheck(tr("&Damaged…"), QKeySequence("Ctrl+D"), &CheckPage::damagedCurrent);
    addSeparator();
    addOfCheck(tr("&Who is aboard"), QKeySequence("Ctrl+W"), &CheckPage::goToPeople);
    addOfCheck(tr("The &points"), QKeySequence("Ctrl+P"), &CheckPage::goToPoints);
    addOfCheck(tr("The &trip…"), QKeySequence("Ctrl+T"), &CheckPage::goToTrip);
    addOfCheck(tr("Start or stop the &clock"), QKeySequence("Ctrl+K"), &CheckPage::toggleClock);
}

template <class Does>
void CheckMenu::addOfCheck(const QString& text, const QKeySequence& keys, Does does) {
    QAction* action = addAction(text, keys, &m_page, does);
    action->setAutoRepeat(false); // held down, the key that asks for the signature would give it
    m_ofCheck->addAction(action);
}

void CheckMenu::setInCheck(bool inCheck) {
    m_ofCheck->setEnabled(inCheck);
}

} // namespace app
