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
#include "app/gui/help/field_sentences.h"
#include "app/gui/help/help_page.h"
#include "app/gui/menus/check_menu.h"
#include "app/gui/menus/club_menu.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/printout_delivery.h"
#include "app/gui/replaced_strip.h"
#include "app/gui/unlock_strip.h"
#include "app/gui/welcome_page.h"
#include "app/gui/widgets/gear_page.h"
#include "app/gui/widgets/part_stack.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/set_up.h"

#include <QApplication>
#include <QMenuBar>
#include <QProgressBar>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

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
    m_progress->setTextVisible(false); // words on two grounds are not read
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
    connectLock();
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
    m_pages = new PartStack(this);
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
    tools.clubNamed = [this] { showClubsName(); };
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
    describeFields(*all);
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
    m_club.open(file, [this, name = QString::fromStdString(file.string())](const core::Outcome& opened) {
        takeOpened(opened, name);
    });
}

void MainWindow::chooseClub() {
    const QString file = m_choosers.openClub(this);
    if (!file.isEmpty()) openClub(file.toStdString());
}

void MainWindow::takeOpened(const core::Outcome& opened, const QString& file) {
    if (!opened && m_isClubOpen && !m_club.file().empty()) return stayInClub(opened.error());
    if (!opened) return leaveClub(opened.error());
    leavePage();
    m_isClubOpen = true;
    m_replaced->setVisible(false);
    m_welcome->say({}); // of what was tried before
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

/// Another file was refused: why is said where somebody is, and everything there stays as it was.
void MainWindow::stayInClub(const core::Error& error) {
    const QString why =
        errorSentence(error) + QLatin1Char(' ') + tr("“%1” stays open.").arg(m_board->state().club);
    if (m_pages->currentWidget() == m_welcome)
        m_welcome->say(why);
    else if (dynamic_cast<ScanTaker*>(currentPage()))
        sayWhereItStands(why);
    else
        showBoard(why);
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
    // Until its boats are read, a code that is typed is the board's, and no name of an event.
    if (!m_board->focusWidget()) m_board->setFocus(Qt::OtherFocusReason);
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

void MainWindow::showClubsName() {
    m_club.ask(
        this, [](core::Club& club) { return app::text(club.name()); },
        [this](const QString& name) { setWindowTitle(tr("%1 · Tholepin").arg(name)); });
}

/// On whatever page is shown.
void MainWindow::sayWhereItStands(const QString& sentence) {
    if (auto* page = dynamic_cast<ScanTaker*>(currentPage())) page->sayOfScan(sentence);
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

} // namespace app
