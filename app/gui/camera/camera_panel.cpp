#include "app/gui/camera/camera_panel.h"

#include "app/flow/seen_text.h"
#include "app/gui/camera/camera_view.h"
#include "app/gui/camera/network_row.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "scanner/files/file_fault.h"
#include "scanner/files/network_address.h"
#include "scanner/reader/live_reader.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>
#include <chrono>
#include <memory>

namespace app {
namespace {

using scanner::SourceState;

constexpr std::chrono::milliseconds frameTime{33};     ///< of the processor: a live picture must not lag
constexpr std::chrono::milliseconds pictureTime{1000}; ///< likewise, of a picture from a file

/// Remembers the frames before, so that a steady tag has been looked at in every way after a few of them.
scanner::CodeReader tagReader() {
    const auto reader =
        std::make_shared<scanner::LiveReader>(isTagText, frameTime, scanner::LiveReader::Clock::Thread);
    return [reader](scanner::GreyView frame) { return reader->read(frame); };
}

/// A picture from a file is looked at once, and nobody waits for the next one meanwhile.
std::vector<scanner::SeenCode> readPicture(scanner::GreyView picture) {
    return scanner::readSymbols(picture, {.budget = pictureTime, .isTag = isTagText});
}

/// What to change so that more is read; empty when nothing needs to be.
QString inWords(scanner::PictureAdvice advice) {
    switch (advice) {
    case scanner::PictureAdvice::TooDark:
        return CameraPanel::tr("Too dark: more light on the tags.");
    case scanner::PictureAdvice::Glare:
        return CameraPanel::tr("Glare: tilt the tag, or move the lamp.");
    case scanner::PictureAdvice::OutOfFocus:
        return CameraPanel::tr("Blurred: hold still, or move further off.");
    case scanner::PictureAdvice::TooFar:
        return CameraPanel::tr("Too far: bring the tags nearer.");
    case scanner::PictureAdvice::None:
        break;
    }
    return {};
}

QString cameraKey() {
    return QStringLiteral("camera/name");
}

} // namespace

CameraPanel::CameraPanel(QWidget* parent, Use use)
    : QWidget(parent)
    , m_live(tagReader(), readPicture)
    , m_use(use)
    , m_view(new CameraView(this))
    , m_menu(new QMenu(this))
    , m_cameraButton(new QPushButton(tr("Camera ▾"), this))
    , m_progress(new QProgressBar(this))
    , m_network(new NetworkRow(this))
    , m_said(new QLabel(this))
    , m_codeEdit(new QLineEdit(this)) {
    setObjectName("cameraPanel");
    buildControls();
    connect(&m_live, &scanner::LiveScanner::codeFound, this, [this](const scanner::SeenCode& code) {
        emit codeSeen(scannedText(code), m_isRecording ? core::SeenBy::Picture : core::SeenBy::Camera);
    });
    connect(&m_live, &scanner::LiveScanner::previewChanged, m_view, &CameraView::setPicture);
    connect(&m_live, &scanner::LiveScanner::outlinesChanged, this, &CameraPanel::takeOutlines);
    connect(&m_live, &scanner::LiveScanner::stateChanged, this, &CameraPanel::showState);
    connect(&m_live, &scanner::LiveScanner::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(share * 100)); });
    connect(&m_live, &scanner::LiveScanner::fileFailed, this, &CameraPanel::showFailure);
    connect(&m_live, &scanner::LiveScanner::adviceChanged, this, &CameraPanel::showAdvice);
    connect(m_network, &NetworkRow::addressGiven, this, &CameraPanel::watchNetwork);
    connect(m_menu, &QMenu::aboutToShow, this, &CameraPanel::fillMenu);
    showState(SourceState::Stopped);
    setMirrored(QSettings().value("camera/mirrored", false).toBool());
}

void CameraPanel::buildControls() {
    m_cameraButton->setObjectName("cameraButton");
    m_cameraButton->setAccessibleName(tr("camera: which one, mirrored or not, a video or pictures instead"));
    m_cameraButton->setMenu(m_menu);
    m_menu->setObjectName("cameraMenu");
    m_progress->setObjectName("recordingProgress");
    m_progress->setTextVisible(false); // words on two grounds are not read
    m_progress->setAccessibleName(tr("how much of the recording is read"));
    m_progress->setVisible(false);
    m_said->setObjectName("saidLabel");
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    m_codeEdit->setObjectName("codeEdit");
    m_codeEdit->setFont(fontOf(TextRole::Code));
    askFor(tr("tag code"), tr("tag code"));
    say({});

    auto* controls = new FlowLayout;
    m_codeEdit->setVisible(m_use == Use::Codes);
    if (m_use == Use::Pictures) controls->addStretch();
    controls->addExpanding(m_codeEdit);
    controls->addWidget(m_cameraButton);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_progress);
    layout->addWidget(m_network);
    layout->addWidget(m_said);
    layout->addLayout(controls);
}

void CameraPanel::setDescribe(std::function<CodeWords(const core::ScannedText&)> describe) {
    m_describe = std::move(describe);
}

void CameraPanel::startCamera() {
    m_isRecording = m_isNetwork = false;
    m_progress->setVisible(false);
    m_live.setPreviewWidth(m_view->width());
    QByteArray wanted;
    const QString lastName = QSettings().value(cameraKey()).toString();
    for (const scanner::CameraChoice& camera : m_live.cameras())
        if (camera.name == lastName) wanted = camera.id;
    m_live.useCamera(wanted);
}

void CameraPanel::stop() {
    m_live.stop();
    m_view->clearPicture();
}

void CameraPanel::readRecording(const std::vector<std::filesystem::path>& paths) {
    m_isRecording = true;
    m_isNetwork = false;
    m_progress->setValue(0);
    m_progress->setVisible(true);
    m_live.setPreviewWidth(m_view->width());
    m_live.useRecording(paths);
}

void CameraPanel::fillMenu() {
    m_menu->clear();
    const QString inUse = QSettings().value(cameraKey()).toString();
    for (const scanner::CameraChoice& camera : m_live.cameras()) {
        QAction* action =
            m_menu->addAction(text(camera.name), this, [this, camera] { chooseCamera(camera); });
        action->setCheckable(true);
        action->setChecked(!m_isRecording && camera.name == inUse);
    }
    if (m_menu->isEmpty()) m_menu->addAction(tr("no camera is plugged in"))->setEnabled(false);
    m_menu->addAction(tr("camera of the network…"), m_network, &NetworkRow::ask);
    m_menu->addSeparator();
    QAction* mirror = m_menu->addAction(tr("mirror the picture"));
    mirror->setCheckable(true);
    mirror->setChecked(m_view->isMirrored());
    connect(mirror, &QAction::toggled, this, &CameraPanel::setMirrored);
    m_menu->addAction(tr("camera off"), this, &CameraPanel::stop);
    if (m_use == Use::Pictures) return;
    m_menu->addSeparator();
    m_menu->addAction(tr("read a video or pictures…"), this, &CameraPanel::picturesPressed);
    m_menu->addAction(tr("read a folder of pictures…"), this, &CameraPanel::pictureFolderPressed);
}

void CameraPanel::watchNetwork(const scanner::NetworkAddress& address) {
    m_isRecording = false;
    m_isNetwork = true;
    m_progress->setVisible(false);
    m_live.setPreviewWidth(m_view->width());
    m_live.useNetwork(address);
}

void CameraPanel::chooseCamera(const scanner::CameraChoice& camera) {
    m_isRecording = m_isNetwork = false;
    m_progress->setVisible(false);
    QSettings().setValue(cameraKey(), camera.name);
    m_live.useCamera(camera.id);
}

void CameraPanel::setMirrored(bool mirrored) {
    if (m_view->isMirrored() == mirrored) return;
    m_view->setMirrored(mirrored);
    QSettings().setValue("camera/mirrored", mirrored);
    emit mirroredChanged(mirrored);
}

void CameraPanel::askFor(const QString& aloud, const QString& shown) {
    m_codeEdit->setAccessibleName(aloud);
    m_codeEdit->setPlaceholderText(shown);
    roomForHint(*m_codeEdit);
}

void CameraPanel::say(const QString& sentence, bool toLookAt) {
    m_said->setText(sentence);
    m_said->setProperty("role", toLookAt ? "look" : "quiet");
    m_said->style()->unpolish(m_said);
    m_said->style()->polish(m_said);
    m_said->setVisible(!sentence.isEmpty());
}

void CameraPanel::forgetError() {
    if (m_said->property("role") == QLatin1String("look")) say({});
}

void CameraPanel::showState(SourceState state) {
    const QString instead =
        m_use == Use::Codes
            ? tr("Type the code on a tag, or use a hand-held scanner: no field has to be chosen.")
            : tr("A picture that is in a file can be added in its place.");
    switch (state) {
    case SourceState::NoCamera:
        m_view->clearPicture();
        if (m_isNetwork)
            m_view->setMessage(
                tr("The camera of the network cannot be reached."),
                tr("It is tried again by itself. Look at its plug, its address and its password.") +
                    QLatin1Char(' ') + instead);
        else
            m_view->setMessage(tr("No camera."), instead + QLatin1Char(' ') +
                                                     tr("A camera that is plugged in starts by itself."));
        break;
    case SourceState::Stalled:
        m_view->clearPicture();
        m_view->setMessage(tr("The camera sends no picture."),
                           tr("It is tried again by itself.") + QLatin1Char(' ') + instead);
        break;
    case SourceState::Starting:
        m_view->setMessage(tr("The camera is starting."), instead);
        break;
    case SourceState::Stopped:
        m_view->clearPicture();
        m_view->setMessage(tr("The camera is off."), instead);
        break;
    case SourceState::Ended:
        m_progress->setVisible(false);
        say(tr("The recording has been read to its end."));
        break;
    case SourceState::Running:
        break;
    }
}

void CameraPanel::takeOutlines(const std::vector<scanner::TrackedCode>& codes, QSize frame) {
    // The last picture of a recording stays, and what was read in it with it.
    if (m_isRecording && frame.isEmpty()) return;
    m_inView = codes;
    m_frame = frame;
    describeAgain();
}

void CameraPanel::describeAgain() {
    std::vector<TagOutline> outlines;
    for (const scanner::TrackedCode& tracked : m_inView) {
        if (!tracked.believed || m_frame.isEmpty()) continue;
        TagOutline outline;
        for (const scanner::Point& corner : tracked.code.corners)
            outline.corners << QPointF(corner.x / m_frame.width(), corner.y / m_frame.height());
        if (m_describe) {
            const CodeWords words = m_describe(scannedText(tracked.code));
            outline.label = words.label;
            outline.mark = words.mark;
        }
        outlines.push_back(std::move(outline));
    }
    m_view->setOutlines(std::move(outlines));
}

void CameraPanel::showAdvice(scanner::PictureAdvice advice) {
    m_view->setAdvice(inWords(advice));
}

void CameraPanel::showFailure(const QString& path, const scanner::FileError& error) {
    say(errorSentence(fileErrorOf(path.toStdString(), error)), true);
}

void CameraPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_live.setPreviewWidth(m_view->width());
}

} // namespace app
