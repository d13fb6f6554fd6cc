#include "app/gui/main_window.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/club/club_copies.h"
#include "app/gui/club/club_lock.h"
#include "app/gui/club/hub_watch.h"
#include "app/gui/menus/club_menu.h"
#include "app/gui/printout/paper_delivery.h"
#include "app/gui/unlock_strip.h"
#include "app/gui/widgets/gear_page.h"
#include "app/text/errors.h"

// What goes on beside the pages: copies of the file, its lock, the district's server.

namespace app {

void MainWindow::connectCopies() {
    connect(m_papers, &PaperDelivery::done, this, [this](const core::Result<QString>& done) {
        sayWhereItStands(done ? *done : errorSentence(done.error()));
    });
    connect(m_copies, &ClubCopies::said, this, &MainWindow::sayWhereItStands);
    connect(m_copies, &ClubCopies::restored, this,
            [this](const QString& file) { openClub(file.toStdString()); });
    connect(m_copies, &ClubCopies::pinWanted, this,
            [this](const QStringList& officers, const QString& likely, const core::Error& why,
                   const ClubCopies::GiveBy& give) {
                m_unlock->askForBackup(m_copies, officers, likely, why, give);
            });
    connect(m_copies, &ClubCopies::changed, this, [this] {
        m_clubMenu->setCopying(m_copies->isCopying());
        m_board->remindOfBackup(m_copies->reminder(m_board->state().began, m_time().today));
    });
}

/// What came in stands on the board and on the page that is shown, without anybody's asking. A check reads
/// what it needs with its next step.
void MainWindow::connectHub() {
    connect(m_hub, &HubWatch::changed, this, [this] {
        if (m_board) m_board->sayOfHub(m_hub->news());
    });
    connect(m_hub, &HubWatch::cameIn, this, [this] {
        if (!m_isClubOpen) return;
        if (isBoardShown()) return readBoardAnew(m_board->said());
        if (auto* page = qobject_cast<GearPage*>(currentPage()); page && page->isVisible()) page->refresh();
    });
}

void MainWindow::connectLock() {
    connect(m_lock, &ClubLock::changed, this, &MainWindow::showLock);
    connect(&m_club, &ClubThread::signersPinWanted, this,
            [this](QObject* asker, const QString& person, const core::Error& why,
                   const ClubThread::SignWith& sign) { m_unlock->askSigner(asker, person, why, sign); });
}

} // namespace app
