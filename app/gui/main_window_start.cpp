#include "app/gui/main_window.h"

#include "app/gui/club/new_club.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/welcome_page.h"
#include "core/exchange/csv_import.h"

// A new club's first steps in the window.

namespace app {

void MainWindow::createClub(const NewClub& wanted) {
    m_club.create(
        wanted.file.toStdString(), [wanted, today = m_time().today] { return makeClub(wanted, today); },
        [this, wanted](const core::Result<core::ImportPlan>& plan) {
            m_welcome->takeMade(wanted, plan);
            if (!plan || !plan->rejected.empty()) return;
            takeOpened(core::Done{}, wanted.file);
            goOnWith(wanted);
        });
}

/// A new club sees what is still to do.
void MainWindow::goOnWith(const NewClub& made) {
    m_office->showPage("setup");
    showOffice();
    if (made.begins == NewClub::Begins::Spreadsheet) importSpreadsheet();
}

void MainWindow::importSpreadsheet() {
    if (!m_isClubOpen) return;
    m_office->showPage("spreadsheet");
    showOffice();
    if (auto* page = qobject_cast<SpreadsheetPage*>(m_office->page("spreadsheet"))) page->chooseFile();
}

void MainWindow::putSetUpAway() {
    SetUpNotes(m_club.file()).putAway(true);
    showBoard();
}

} // namespace app
