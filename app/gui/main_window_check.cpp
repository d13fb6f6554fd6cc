#include "app/gui/main_window.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/check/check_page.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/printout_delivery.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"

#include <QStackedWidget>

#include <algorithm>

// How somebody comes to a boat's check: by its strip, its tag or the menu; and what is read for it from
// pictures.

namespace app {

void MainWindow::connectCheck() {
    connect(m_check, &CheckPage::leaveWanted, this, [this] { showBoard(); });
    connect(m_check, &CheckPage::nextBoatWanted, this, &MainWindow::startNext);
    connect(m_check, &CheckPage::printWanted, m_printouts, &PrintoutDelivery::print);
    connect(m_check, &CheckPage::saveWanted, m_printouts, &PrintoutDelivery::save);
    connect(&m_check->camera(), &CameraPanel::picturesPressed, this, [this] { readPictures(false); });
    connect(&m_check->camera(), &CameraPanel::pictureFolderPressed, this, [this] { readPictures(true); });
}

void MainWindow::startCheck(const QString& boat, core::Phase phase) {
    leavePage();
    m_pages->setCurrentWidget(m_check);
    m_check->open(boat, phase, m_cameraWanted);
    adaptMenus();
}

QString MainWindow::boatAtHand() const {
    return isBoardShown() ? m_board->currentBoat() : m_check->boat();
}

/// The boat's check list to tick by hand, or the card for the wall, as a PDF.
void MainWindow::saveOnPaper(bool card) {
    const QString boat = boatAtHand();
    if (!m_isClubOpen || boat.isEmpty()) return sayWhereItStands(tr("Choose a boat first."));
    const core::CalendarDay today = m_time().today;
    m_papers->savePdf(card ? wallCardPaper(boat, today) : checkListPaper(boat, today));
}

void MainWindow::startOnBoard(core::Phase phase) {
    const QString boat = boatAtHand();
    if (m_isClubOpen && !boat.isEmpty()) startCheck(boat, phase);
}

/// The boat after this one on the board, from the last to the first again.
void MainWindow::startNext() {
    const auto& boats = m_board->state().boats;
    if (boats.empty()) return;
    const std::string here = m_check->boat().toStdString();
    auto at = std::find_if(boats.begin(), boats.end(), [&](const auto& boat) { return boat.boat == here; });
    if (at == boats.end() || ++at == boats.end()) at = boats.begin();
    startCheck(text(at->boat), nextPhase(*at, m_board->state().unfinished));
}

void MainWindow::openBoatOfTag(const QString& code) {
    const auto tag = core::TagCode::parse(code.toStdString());
    m_club.ask(
        this,
        [text = tag ? tag->text() : std::string()](core::Club& club) {
            return club.register_().boatOfTag(text);
        },
        [this, code](const std::optional<core::Boat>& boat) {
            const auto& boats = m_board->state().boats;
            const auto at = std::find_if(boats.begin(), boats.end(),
                                         [&](const auto& each) { return boat && each.boat == boat->name; });
            if (at == boats.end() && boat && !core::isHere(boat->until, m_time().today))
                m_board->say(
                    errorSentence({core::ErrorCode::NoLongerHere, {boat->name, boat->until->iso()}}));
            else if (at == boats.end())
                m_board->say(tr("%1 is no boat's tag. Choose the boat first, then scan its kit.").arg(code));
            else
                startCheck(text(at->boat), nextPhase(*at, m_board->state().unfinished));
        });
}

/// A camera on the board sees kit too: only a boat's tag means something here.
void MainWindow::openBoatSeen(const core::ScannedText& scan) {
    const auto tag = core::TagCode::exact(scan.text);
    if (tag && tag->tagClass() == core::TagClass::Boat && m_isBoardFresh)
        openBoatOfTag(QString::fromStdString(scan.text));
}

void MainWindow::readPictures(bool folder) {
    if (!m_check->isOpen()) return;
    // A dialog holds everything else up, so the camera does not run meanwhile.
    m_check->camera().stop();
    const QStringList chosen =
        folder ? QStringList{m_choosers.pictureFolder(this)} : m_choosers.pictures(this);
    std::vector<std::filesystem::path> paths;
    for (const QString& path : chosen)
        if (!path.isEmpty()) paths.emplace_back(path.toStdString());
    if (paths.empty()) {
        if (m_cameraWanted) m_check->camera().startCamera();
        return;
    }
    m_check->camera().readRecording(paths);
}

} // namespace app
