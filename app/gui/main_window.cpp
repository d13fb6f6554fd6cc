#include "app/gui/main_window.h"

#include "app/gui/board/event_line.h"
#include "app/gui/board/shed_board.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/code_capture.h"
#include "app/gui/camera/hand_scanner.h"
#include "app/gui/camera/scan_taker.h"
#include "app/gui/check/check_page.h"
#include "app/gui/club/club_copies.h"
#include "app/gui/club/club_lock.h"
#include "app/gui/club/hub_watch.h"
#include "app/gui/club/import_run.h"
#include "app/gui/gear/exchange/exchange_page.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/office/gear_pages.h"
#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/help/help_page.h"
#include "app/gui/menus/check_menu.h"
#include "app/gui/menus/club_menu.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/printout_delivery.h"
#include "app/gui/replaced_strip.h"
#include "app/gui/unlock_strip.h"
#include "app/gui/welcome_page.h"
#include "app/gui/widgets/gear_page.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/set_up.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"

#include <QApplication>
#include <QMenuBar>
#include <QProgressBar>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

MainWindow::MainWindow(TimeSource time, Choosers choosers)
    : m_time(std::move(time))
    , m_choosers(std::move(choosers))
    , m_import(new ImportRun(m_club, this))
    , m_printouts(new PrintoutDelivery(m_club, m_choosers, this))
    , m_papers(new PaperDelivery(m_club, m_choosers, this))
    , m_copies(new ClubCopies(m_club, m_choosers, m_time, this))
    , m_lock(new ClubLock(m_club, this))
    , m_hub(new HubWatch(m_time, this))
    , m_scanner(new HandScanner(*this))
    , m_progress(new QProgressBar(this)) {
    setObjectName("mainWindow");
    setWindowTitle(tr("Tholepin"));
    m_progress->setObjectName("workProgress");
    statusBar()->addPermanentWidget(m_progress, 1);
    statusBar()->setVisible(false);
    connect(m_import, &ImportRun::progressed, m_progress, &QProgressBar::setValue);
    connect(m_import, &ImportRun::finished, this, [this](const QString& sentence) {
        statusBar()->setVisible(false);
        showBoard(sentence);
    });
    connect(
        m_import, &ImportRun::pinNeeded, this,
        [this](const QString& folder) {
            m_unlock->ask(
                this, m_office->officer(), [this, folder] { importFrom(folder); }, [] {});
        },
        Qt::QueuedConnection); // when the board is shown, and says why
    connect(&m_club, &ClubThread::failed, this, [this](const core::Error& error) {
        leavePage();
        build(); // some page waits for an answer that never comes
        leaveClub(error);
    });
    connect(&m_club, &ClubThread::fileReplaced, this, [this] { m_replaced->setVisible(m_isClubOpen); });
    connect(m_printouts, &PrintoutDelivery::done, this,
            [this](const QString& sentence) { m_check->printoutDone(sentence); });
    connectCopies();
    connectHub();
    connect(m_lock, &ClubLock::changed, this, &MainWindow::showLock);
    connect(&m_club, &ClubThread::signersPinWanted, this,
            [this](QObject* asker, const QString& person, const core::Error& why,
                   const ClubThread::SignWith& sign) { m_unlock->askSigner(asker, person, why, sign); });
    qApp->installEventFilter(this);
    connect(m_scanner, &HandScanner::scanned, this, &MainWindow::takeScan);
    m_sounds.setVolume(QSettings().value("sound/volume", 70).toInt());
    build();
    m_welcome->setFocus(Qt::OtherFocusReason);
    resize(1280, 800);
}

MainWindow::~MainWindow() {
    m_check->close();
}

void MainWindow::build() {
    m_progress->setAccessibleName(tr("how much of the import is done"));
    buildPages();
    connectPages();
    connectCheck();
    setMenuBar(new QMenuBar(this)); // the old one goes, with its menus
    buildMenus();
    adaptMenus();
}

void MainWindow::buildPages() {
    m_pages = new QStackedWidget(this);
    m_welcome = new WelcomePage(m_choosers, this);
    m_board = new ShedBoard(this);
    m_board->offerPaper(m_club, m_choosers, m_time);
    m_check = new CheckPage(m_club, m_time, m_sounds, this);
    m_welcome->say({});
    m_pages->addWidget(m_welcome);
    m_pages->addWidget(m_check);
    m_office = new GearOffice(this);
    GearTools tools{m_club, m_time, m_sounds, m_choosers, [this] { return m_cameraWanted; }};
    tools.askForPin = [this](QObject* asker, std::function<void()> goOn, std::function<void()> giveUp) {
        m_unlock->ask(asker, m_office->officer(), std::move(goOn), std::move(giveUp));
    };
    tools.pinChanged = [this] { m_lock->refresh(); };
    tools.hub = m_hub;
    addGearPages(*m_office, tools);
    m_pages->addWidget(m_office);
    m_pages->addWidget(m_board);
    m_help = new HelpPage(this);
    m_pages->addWidget(m_help);
    m_replaced = new ReplacedStrip(this);
    auto* all = new QWidget(this);
    auto* column = new QVBoxLayout(all);
    column->setContentsMargins({});
    column->setSpacing(0);
    column->addWidget(m_replaced);
    column->addWidget(m_pages, 1);
    m_unlock = new UnlockStrip(m_club, *m_lock, *all);
    setCentralWidget(all); // the old one goes
}

/// No page keeps a camera that another may want.
void MainWindow::leavePage() {
    m_check->close();
    m_board->camera().stop();
    m_unlock->leave(); // what was pressed there is not gone on with
}

void MainWindow::connectPages() {
    connect(m_replaced, &ReplacedStrip::openPressed, this, &MainWindow::chooseClub);
    connect(m_welcome, &WelcomePage::backPressed, this, [this] { showBoard(); });
    connect(m_welcome, &WelcomePage::openPressed, this, &MainWindow::chooseClub);
    connect(m_welcome, &WelcomePage::newPressed, this, &MainWindow::createClub);
    connect(m_board, &ShedBoard::boatPressed, this, [this](const QString& boat, core::Phase phase) {
        if (m_isBoardFresh) startCheck(boat, phase);
    });
    keepTodaysEvent(m_board->eventLine(), m_club, m_time,
                    [board = m_board](const QString& said) { board->say(said); });
    connect(m_board, &ShedBoard::importPressed, this, &MainWindow::importFolder);
    connect(m_board, &ShedBoard::backUpPressed, m_copies, &ClubCopies::backUp);
    connect(m_board, &ShedBoard::gearPagePressed, this, [this](const QString& page) {
        m_office->showPage(page);
        showOffice();
    });
    connect(m_board, &ShedBoard::hubPressed, this, [this] {
        m_office->showPage("exchange");
        if (auto* page = qobject_cast<ExchangePage*>(m_office->page("exchange"))) page->showDistrict();
        showOffice();
    });
    connect(m_board, &ShedBoard::setUpPutAway, this, &MainWindow::putSetUpAway);
    connect(m_office, &GearOffice::boardWanted, this, [this] { showBoard(); });
    connect(m_office, &GearOffice::pageWanted, this, &MainWindow::showOffice);
    connect(m_office, &GearOffice::pageShown, this, &MainWindow::adaptMenus);
    connect(m_office, &GearOffice::pageShown, m_unlock, &UnlockStrip::leave);
    connect(&m_board->camera(), &CameraPanel::codeSeen, this, &MainWindow::openBoatSeen);
    auto* capture = new CodeCapture(*m_board, m_board->camera().codeEdit());
    connect(capture, &CodeCapture::codeTyped, this, &MainWindow::openBoatOfTag);
    connect(m_board, &ShedBoard::codeScanned, this, &MainWindow::openBoatOfTag);
}

/// The office has the page already; its pages let their camera go when they are hidden.
void MainWindow::showOffice() {
    if (!m_isClubOpen) return;
    if (m_pages->currentWidget() != m_office) leavePage();
    m_pages->setCurrentWidget(m_office);
    adaptMenus();
}

void MainWindow::connectCheck() {
    connect(m_check, &CheckPage::leaveWanted, this, [this] { showBoard(); });
    connect(m_check, &CheckPage::nextBoatWanted, this, &MainWindow::startNext);
    connect(m_check, &CheckPage::printWanted, m_printouts, &PrintoutDelivery::print);
    connect(m_check, &CheckPage::saveWanted, m_printouts, &PrintoutDelivery::save);
    connect(&m_check->camera(), &CameraPanel::picturesPressed, this, [this] { readPictures(false); });
    connect(&m_check->camera(), &CameraPanel::pictureFolderPressed, this, [this] { readPictures(true); });
}

QWidget* MainWindow::currentPage() const {
    QWidget* page = m_pages->currentWidget();
    return page == m_office ? m_office->page(m_office->currentPage()) : page;
}

/// A dialog that asks something holds the page up.
void MainWindow::takeScan(const QString& text, core::SeenBy how) {
    auto* page = dynamic_cast<ScanTaker*>(currentPage());
    if (!page || (!QApplication::activeModalWidget() && page->takeScan(text, how))) return;
    m_sounds.play(Sound::LookAtThis);
    page->sayOfScan(tr("%1 was scanned; nothing here asks for a tag.").arg(codeInWords(text.toStdString())));
}

bool MainWindow::isBoardShown() const {
    return m_pages->currentWidget() == m_board;
}

void MainWindow::openClub(const std::filesystem::path& file) {
    leavePage();
    m_club.open(file, [this, name = QString::fromStdString(file.string())](const core::Outcome& opened) {
        takeOpened(opened, name);
    });
}

void MainWindow::chooseClub() {
    const QString file = m_choosers.openClub(this);
    if (!file.isEmpty()) openClub(file.toStdString());
}

void MainWindow::takeOpened(const core::Outcome& opened, const QString& file) {
    m_isClubOpen = static_cast<bool>(opened);
    m_replaced->setVisible(false);
    if (!opened) return leaveClub(opened.error());
    QSettings().setValue("club/file", file);
    m_lock->refresh(); // of each opened club anew
    m_hub->watch(file.toStdString());
    showBoard();
}

void MainWindow::showWelcome() {
    leavePage();
    m_welcome->setOpenClub(m_isClubOpen ? m_board->state().club : QString());
    m_pages->setCurrentWidget(m_welcome);
    adaptMenus();
}

/// A file that cannot be read is left alone; what was written before is on disk.
void MainWindow::leaveClub(const core::Error& error) {
    m_isClubOpen = false;
    m_hub->watch({});
    m_replaced->setVisible(false);
    m_welcome->say(errorSentence(error));
    showWelcome();
}

void MainWindow::showBoard(const QString& saying) {
    leavePage();
    m_pages->setCurrentWidget(m_board);
    m_isBoardFresh = false;
    adaptMenus();
    if (m_cameraWanted) m_board->camera().startCamera();
    readBoardAnew(saying);
}

void MainWindow::readBoardAnew(const QString& saying) {
    m_club.ask(
        this,
        [now = m_time(), notes = SetUpNotes(m_club.file())](core::Club& club) {
            return std::pair(readBoard(club, now.today,
                                       notes.isWanted() ? BoardReads::SetUpToo : BoardReads::Boats,
                                       notes.arePrinted()),
                             readTodaysEvent(club, now));
        },
        [this, saying](const std::pair<BoardState, TodaysEvent>& read) {
            const BoardState& state = read.first;
            m_board->eventLine().setEvent(read.second);
            if (core::isSetUp(state.setUp)) SetUpNotes(m_club.file()).noteDone();
            setWindowTitle(tr("%1 · Tholepin").arg(state.club));
            m_isBoardFresh = true;
            m_board->setState(state);
            m_board->remindOfBackup(m_copies->reminder(state.began, state.today));
            m_board->sayOfHub(m_hub->news());
            m_clubMenu->setCopying(m_copies->isCopying());
            m_board->say(saying);
            emit boardShown();
        });
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

/// On whatever page is shown.
void MainWindow::sayWhereItStands(const QString& sentence) {
    if (auto* page = dynamic_cast<ScanTaker*>(currentPage())) page->sayOfScan(sentence);
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

void MainWindow::importFolder() {
    if (!m_isClubOpen) return;
    const QString folder = m_choosers.importFolder(this);
    if (!folder.isEmpty()) importFrom(folder);
}

void MainWindow::importFrom(const QString& folder) {
    m_progress->setValue(0);
    m_progress->setVisible(true);
    statusBar()->setVisible(true);
    m_import->start(folder, m_time().today);
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
