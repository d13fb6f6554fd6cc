#include "app/desk/main_window.h"

#include "app/common/sentences.h"
#include "app/common/words.h"
#include "app/desk/board/shed_board.h"
#include "app/desk/camera/camera_panel.h"
#include "app/desk/camera/code_capture.h"
#include "app/desk/check/check_page.h"
#include "app/desk/club/import_run.h"
#include "app/desk/gear/office/gear_office.h"
#include "app/desk/gear/office/gear_pages.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/language.h"
#include "app/desk/look/palette.h"
#include "app/desk/look/view_menu.h"
#include "app/desk/sheet/sheet_delivery.h"
#include "app/desk/welcome_page.h"

#include <QAbstractButton>
#include <QActionGroup>
#include <QApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QMenuBar>
#include <QProgressBar>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>

#include <algorithm>

namespace app {
namespace {

QString sentence(const core::Error& error) {
    return withCapital(errorLine(error)) + QLatin1Char('.');
}

} // namespace

MainWindow::MainWindow(TimeSource time, Choosers choosers)
    : m_time(std::move(time))
    , m_choosers(std::move(choosers))
    , m_import(new ImportRun(m_club, this))
    , m_sheets(new SheetDelivery(m_club, m_choosers, this))
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
    connect(m_sheets, &SheetDelivery::done, this,
            [this](const QString& sentence) { m_check->sheetDone(sentence); });
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
    delete m_checkActions;
    m_checkActions = new QActionGroup(this);
    m_checkActions->setExclusive(false);
    buildPages();
    connectPages();
    connectCheck();
    menuBar()->clear();
    delete m_view;
    buildMenus();
    enableActions();
}

void MainWindow::buildPages() {
    m_pages = new QStackedWidget(this);
    m_welcome = new WelcomePage(this);
    m_board = new ShedBoard(this);
    m_check = new CheckPage(m_club, m_time, m_sounds, this);
    m_welcome->say({});
    m_pages->addWidget(m_welcome);
    m_pages->addWidget(m_check);
    m_office = new GearOffice(this);
    addGearPages(*m_office, {m_club, m_time, m_sounds, m_choosers, [this] { return m_cameraWanted; }});
    m_pages->addWidget(m_office);
    m_menuPages.clear();
    addPage({tr("The &boats"), QKeySequence("Ctrl+B"), m_board, [this] { showBoard(); }});
    setCentralWidget(m_pages); // the old one goes
}

void MainWindow::addPage(const WindowPage& page) {
    m_pages->addWidget(page.widget);
    m_menuPages.push_back(page);
}

void MainWindow::openPage(const WindowPage& page) {
    if (!m_isClubOpen) return;
    leavePage();
    m_pages->setCurrentWidget(page.widget);
    enableActions();
    page.open();
}

/// No page keeps a camera that another may want.
void MainWindow::leavePage() {
    m_check->close();
    m_board->camera().stop();
}

void MainWindow::connectPages() {
    connect(m_welcome, &WelcomePage::openPressed, this, &MainWindow::chooseClub);
    connect(m_welcome, &WelcomePage::newPressed, this, &MainWindow::createClub);
    connect(m_board, &ShedBoard::boatPressed, this, [this](const QString& boat, core::Phase phase) {
        if (m_isBoardFresh) startCheck(boat, phase);
    });
    connect(m_board, &ShedBoard::importPressed, this, &MainWindow::importFolder);
    connect(m_board, &ShedBoard::gearPagePressed, this, [this](const QString& page) {
        m_office->showPage(page);
        showOffice();
    });
    connect(m_office, &GearOffice::pageWanted, this, &MainWindow::showOffice);
    connect(&m_board->camera(), &CameraPanel::codeSeen, this, &MainWindow::openBoatSeen);
    auto* capture = new CodeCapture(*m_board, m_board->camera().codeEdit());
    connect(capture, &CodeCapture::codeTyped, this, &MainWindow::openBoatOfTag);
}

/// The office has the page already; its pages let their camera go when they are hidden.
void MainWindow::showOffice() {
    if (!m_isClubOpen) return;
    if (m_pages->currentWidget() != m_office) leavePage();
    m_pages->setCurrentWidget(m_office);
    enableActions();
}

void MainWindow::connectCheck() {
    connect(m_check, &CheckPage::leaveWanted, this, [this] { showBoard(); });
    connect(m_check, &CheckPage::nextBoatWanted, this, &MainWindow::startNext);
    connect(m_check, &CheckPage::printWanted, m_sheets, &SheetDelivery::print);
    connect(m_check, &CheckPage::saveWanted, m_sheets, &SheetDelivery::save);
    connect(&m_check->camera(), &CameraPanel::picturesPressed, this, [this] { readPictures(false); });
    connect(&m_check->camera(), &CameraPanel::pictureFolderPressed, this, [this] { readPictures(true); });
}

QAction* MainWindow::addAction(QMenu& menu, const QString& text, const QKeySequence& keys,
                               std::function<void()> act, bool onlyInCheck) {
    QAction* action = menu.addAction(text);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, std::move(act));
    if (onlyInCheck) m_checkActions->addAction(action);
    return action;
}

void MainWindow::buildMenus() {
    buildClubMenu();
    buildCheckMenu();
    buildCameraMenu();
    buildGearMenu();
    buildViewMenu();
}

void MainWindow::buildClubMenu() {
    QMenu& menu = *menuBar()->addMenu(tr("&Club"));
    addAction(menu, tr("&Open a club file…"), QKeySequence::Open, [this] { chooseClub(); });
    addAction(menu, tr("&New club file…"), QKeySequence::New, [this] {
        leavePage();
        m_pages->setCurrentWidget(m_welcome);
        enableActions();
    });
    addAction(menu, tr("&Import a folder of CSV…"), QKeySequence("Ctrl+I"), [this] { importFolder(); });
    menu.addSeparator();
    for (const WindowPage& page : m_menuPages)
        addAction(menu, page.name, page.keys, [this, page] { openPage(page); });
    menu.addSeparator();
    addAction(menu, tr("&Quit"), QKeySequence("Ctrl+Q"), [this] { QWidget::close(); });
}

void MainWindow::buildCheckMenu() {
    QMenu& menu = *menuBar()->addMenu(tr("Ch&eck"));
    addAction(menu, tr("&Launch check of this boat"), QKeySequence("Ctrl+L"),
              [this] { startOnBoard(core::Phase::Launch); });
    addAction(menu, tr("&Return check of this boat"), QKeySequence("Ctrl+R"),
              [this] { startOnBoard(core::Phase::Return); });
    menu.addSeparator();
    addAction(
        menu, tr("&Sign…"), QKeySequence("Ctrl+Return"), [this] { m_check->beginSigning(); }, true);
    addAction(
        menu, tr("Save for &later"), QKeySequence::Save, [this] { showBoard(); }, true);
    addAction(
        menu, tr("&Next boat"), QKeySequence("Ctrl+Right"), [this] { startNext(); }, true);
    menu.addSeparator();
    addAction(
        menu, tr("&Undo the last scan"), QKeySequence::Undo, [this] { m_check->undo(); }, true);
    addAction(
        menu, tr("Take this line's scan &back"), QKeySequence("Ctrl+Backspace"),
        [this] { m_check->takeBackCurrent(); }, true);
    addAction(
        menu, tr("&Damaged…"), QKeySequence("Ctrl+D"), [this] { m_check->damagedCurrent(); }, true);
    menu.addSeparator();
    addAction(
        menu, tr("&Who is aboard"), QKeySequence("Ctrl+W"), [this] { m_check->goToPeople(); }, true);
    addAction(
        menu, tr("The &points"), QKeySequence("Ctrl+P"), [this] { m_check->goToPoints(); }, true);
    addAction(
        menu, tr("The &trip…"), QKeySequence("Ctrl+T"), [this] { m_check->goToTrip(); }, true);
    addAction(
        menu, tr("Start or stop the &clock"), QKeySequence("Ctrl+K"), [this] { m_check->toggleClock(); },
        true);
}

void MainWindow::buildCameraMenu() {
    QMenu& menu = *menuBar()->addMenu(tr("Ca&mera"));
    addAction(
        menu, tr("&Start the camera"), QKeySequence("F5"), [this] { m_check->camera().startCamera(); }, true);
    addAction(
        menu, tr("S&top the camera"), QKeySequence("F6"), [this] { m_check->camera().stop(); }, true);
    QAction* mirror = menu.addAction(tr("&Mirror the picture"));
    mirror->setShortcut(QKeySequence("F7"));
    mirror->setCheckable(true);
    mirror->setChecked(QSettings().value("camera/mirrored", false).toBool());
    connect(mirror, &QAction::toggled, &m_check->camera(), &CameraPanel::setMirrored);
    connect(&m_check->camera(), &CameraPanel::mirroredChanged, mirror, &QAction::setChecked);
    m_checkActions->addAction(mirror);
    menu.addSeparator();
    addAction(
        menu, tr("Read a &video or pictures…"), QKeySequence("F8"), [this] { readPictures(false); }, true);
    addAction(
        menu, tr("Read a &folder of pictures…"), QKeySequence("F9"), [this] { readPictures(true); }, true);
}

void MainWindow::buildGearMenu() {
    menuBar()->addMenu(tr("&Gear officer"))->addActions(m_office->pageActions());
}

void MainWindow::buildViewMenu() {
    m_view = new ViewMenu(m_sounds, this);
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

void MainWindow::keyPressEvent(QKeyEvent* event) {
    auto* button = qobject_cast<QAbstractButton*>(QApplication::focusWidget());
    if (button && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        button->click();
        return;
    }
    QMainWindow::keyPressEvent(event);
}

void MainWindow::enableActions() {
    const bool inCheck = m_pages->currentWidget() == m_check;
    for (QAction* action : m_checkActions->actions())
        action->setEnabled(inCheck);
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

void MainWindow::createClub(const QString& name) {
    const QString file = m_choosers.newClub(this);
    if (file.isEmpty()) return;
    m_club.create(file.toStdString(), name.toStdString(),
                  [this, file](const core::Outcome& opened) { takeOpened(opened, file); });
}

void MainWindow::takeOpened(const core::Outcome& opened, const QString& file) {
    m_isClubOpen = static_cast<bool>(opened);
    if (!opened) {
        m_welcome->say(sentence(opened.error()));
        m_pages->setCurrentWidget(m_welcome);
        enableActions();
        return;
    }
    QSettings().setValue("club/file", file);
    showBoard();
}

void MainWindow::showBoard(const QString& saying) {
    leavePage();
    m_pages->setCurrentWidget(m_board);
    m_isBoardFresh = false;
    enableActions();
    if (m_cameraWanted) m_board->camera().startCamera();
    m_club.ask(
        this, [today = m_time().today](core::Club& club) { return readBoard(club, today); },
        [this, saying](BoardState state) {
            setWindowTitle(tr("%1 · Tholepin").arg(state.club));
            m_isBoardFresh = true;
            m_board->setState(state);
            m_board->say(saying);
            emit boardShown();
        });
}

void MainWindow::startCheck(const QString& boat, core::Phase phase) {
    leavePage();
    m_pages->setCurrentWidget(m_check);
    m_check->open(boat, phase, m_cameraWanted);
    enableActions();
}

void MainWindow::startOnBoard(core::Phase phase) {
    const QString boat = isBoardShown() ? m_board->currentBoat() : m_check->boat();
    if (m_isClubOpen && !boat.isEmpty()) startCheck(boat, phase);
}

/// The boat after this one on the board, from the last to the first again.
void MainWindow::startNext() {
    const auto& boats = m_board->state().boats;
    if (boats.empty()) return;
    const std::string here = m_check->boat().toStdString();
    auto at = std::find_if(boats.begin(), boats.end(), [&](const auto& boat) { return boat.boat == here; });
    if (at == boats.end() || ++at == boats.end()) at = boats.begin();
    startCheck(QString::fromStdString(at->boat), nextPhase(*at, m_board->state().unfinished));
}

void MainWindow::openBoatOfTag(const QString& code) {
    const auto tag = core::TagCode::parse(code.toStdString());
    m_club.ask(
        this, [text = tag ? tag->text() : std::string()](core::Club& club) { return club.boatOfTag(text); },
        [this, code](const std::optional<core::Boat>& boat) {
            const auto& boats = m_board->state().boats;
            const auto at = std::find_if(boats.begin(), boats.end(),
                                         [&](const auto& each) { return boat && each.boat == boat->boat; });
            if (at == boats.end())
                m_board->say(tr("%1 is no boat's tag. Choose the boat first, then scan its kit.").arg(code));
            else
                startCheck(QString::fromStdString(at->boat), nextPhase(*at, m_board->state().unfinished));
        });
}

/// A camera on the board sees kit too: only a boat's tag means something here.
void MainWindow::openBoatSeen(const QString& text) {
    const auto tag = core::TagCode::exact(text.toStdString());
    if (tag && tag->tagClass() == core::TagClass::Boat && m_isBoardFresh) openBoatOfTag(text);
}

void MainWindow::importFolder() {
    if (!m_isClubOpen) return;
    const QString folder = m_choosers.importFolder(this);
    if (folder.isEmpty()) return;
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
