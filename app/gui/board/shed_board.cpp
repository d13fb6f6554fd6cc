#include "app/gui/board/shed_board.h"

#include "app/gui/board/event_line.h"
#include "app/gui/board/set_up_strip.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/club/hub_watch.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_record.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLayoutItem>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int cameraWidth = 380;

/// What the boat's next check goes on with. One that is out comes back first, whatever else was begun.
const core::OpenCheck* unfinishedOf(const std::vector<core::OpenCheck>& unfinished,
                                    const core::BoatCondition& boat) {
    const bool isOut = boat.kind == core::BoatCondition::Kind::Out;
    const auto found = std::find_if(unfinished.begin(), unfinished.end(), [&](const auto& check) {
        return check.location == core::Location::boat(boat.boat) &&
               (!isOut || check.phase == core::Phase::Return);
    });
    return found == unfinished.end() ? nullptr : &*found;
}

/// For a month, so that no PIN goes without anybody's knowing.
QString resetsInWords(const BoardState& state) {
    QStringList lines;
    for (const core::PinReset& reset : state.resets) {
        const QString when = inWords(reset.at, state.today);
        lines << (reset.by.empty()
                      ? ShedBoard::tr("▲ The PIN of %1 was taken away by whoever owns the file, %2.")
                            .arg(text(reset.person), when)
                      : ShedBoard::tr(
                            "▲ The PIN of %1 was taken away by whoever owns the file, %2; given as by %3.")
                            .arg(text(reset.person), when, text(reset.by)));
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace

BoardState readBoard(const core::Club& club, core::CalendarDay today, BoardReads reads, bool arePrinted) {
    BoardState state{.club = text(club.name()),
                     .today = today,
                     .boats = club.answers().boatConditions(today),
                     .unfinished = club.checks().unfinished()};
    // A place may have a boat's name.
    std::erase_if(state.unfinished,
                  [](const core::OpenCheck& check) { return check.phase == core::Phase::Stocktake; });
    state.missing = static_cast<int>(club.answers().missingItems().size());
    state.dueSoon = static_cast<int>(club.answers().dueList(today, dueWithin).size());
    if (const auto origin = club.record().origin()) state.began = origin->at;
    state.resets = club.pins().resets(today);
    if (reads == BoardReads::SetUpToo) state.setUp = club.answers().setUp(arePrinted, today);
    return state;
}

core::Phase nextPhase(const core::BoatCondition& boat, const std::vector<core::OpenCheck>& unfinished) {
    if (const core::OpenCheck* open = unfinishedOf(unfinished, boat)) return open->phase;
    return boat.kind == core::BoatCondition::Kind::Out ? core::Phase::Return : core::Phase::Launch;
}

BoatWords wordsOf(const core::BoatCondition& boat, const BoardState& board) {
    BoatWords words;
    words.boat = text(boat.boat);
    words.condition = conditionOf(boat, board.today);
    for (const core::NotReadyReason& reason : boat.reasons)
        words.reasons << withCapital(reasonOf(reason));
    if (!boat.urgent.empty())
        words.reasons.prepend(ShedBoard::tr("Launched urgently, kit incomplete: %1").arg(text(boat.urgent)));
    const core::OpenCheck* open = unfinishedOf(board.unfinished, boat);
    const QString phase = nameInWords(nextPhase(boat, board.unfinished));
    words.next = open ? ShedBoard::tr("go on with the %1").arg(phase) : phase;
    switch (boat.kind) {
    case core::BoatCondition::Kind::KitReady:
        words.mark = Mark::Found;
        break;
    case core::BoatCondition::Kind::Out:
        words.mark = Mark::StillToFind;
        break;
    case core::BoatCondition::Kind::NotReady:
        words.mark = Mark::Look;
        break;
    }
    return words;
}

ShedBoard::ShedBoard(QWidget* parent)
    : QWidget(parent)
    , m_state{.club = {}, .today = core::CalendarDay::fromNumber(1), .boats = {}, .unfinished = {}}
    , m_title(wordsIn("boatName", {}, this))
    , m_setUp(new SetUpStrip(this))
    , m_event(new EventLine(this))
    , m_strips(new QWidget)
    , m_stripLayout(new QVBoxLayout(m_strips))
    , m_missing(new QPushButton(this))
    , m_due(new QPushButton(this))
    , m_hub(wordsButton(this, {}, "hubLine"))
    , m_said(wordsIn("quiet", {}, this))
    , m_resets(wordsLabel(this, "look", "pinResetLabel"))
    , m_reminder(wordsIn("look", {}, this))
    , m_backUp(wordsButton(this, tr("Back up…"), "boardBackUpButton"))
    , m_gear(new QHBoxLayout)
    , m_camera(new CameraPanel(this)) {
    setObjectName("shedBoard");
    m_missing->setObjectName("missingLine");
    m_due->setObjectName("dueLine");
    m_said->setObjectName("boardSaidLabel");
    m_camera->setFixedWidth(cameraWidth);
    m_camera->askFor(tr("a boat's tag code"), tr("a boat's tag"));
    m_stripLayout->setContentsMargins(0, 0, 0, 0);
    m_stripLayout->setSpacing(spaceUnit);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(m_strips);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* side = new QVBoxLayout;
    auto* caution = wordsIn("quiet", boardCaution(), this);
    caution->setObjectName("boardCautionLabel");
    caution->setFixedWidth(cameraWidth);
    side->addWidget(m_camera);
    side->addSpacing(2 * spaceUnit);
    side->addWidget(caution);
    side->addStretch(1);
    auto* body = new QHBoxLayout;
    body->setSpacing(2 * spaceUnit);
    body->addWidget(scroll, 1);
    body->addLayout(side);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 3 * spaceUnit, 2 * spaceUnit);
    layout->setSpacing(spaceUnit);
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(m_event);
    layout->addLayout(head);
    layout->addWidget(m_setUp);
    layout->addLayout(body, 1);
    layout->addWidget(m_said);
    m_hub->setProperty("role", "plain");
    m_hub->hide();
    layout->addWidget(m_hub, 0, Qt::AlignLeft);
    layout->addWidget(m_resets);
    m_reminder->setObjectName("backupReminder");
    auto* reminder = new QHBoxLayout;
    reminder->addWidget(m_reminder, 1);
    reminder->addWidget(m_backUp);
    layout->addLayout(reminder);
    remindOfBackup({});
    for (QPushButton* line : {m_missing, m_due}) {
        line->setProperty("role", "plain");
        m_gear->addWidget(line);
    }
    m_gear->addStretch(1);
    layout->addLayout(m_gear);
    connect(m_hub, &QPushButton::clicked, this, &ShedBoard::hubPressed);
    connect(m_backUp, &QPushButton::clicked, this, &ShedBoard::backUpPressed);
    connect(m_setUp, &SetUpStrip::goOnPressed, this, [this] { emit gearPagePressed("setup"); });
    connect(m_setUp, &SetUpStrip::putAwayPressed, this, &ShedBoard::setUpPutAway);
    connect(m_missing, &QPushButton::clicked, this, [this] { emit gearPagePressed("missing"); });
    connect(m_due, &QPushButton::clicked, this, [this] { emit gearPagePressed("due"); });
}

void ShedBoard::setState(const BoardState& state) {
    m_state = state;
    m_title->setText(state.club);
    m_missing->setText(state.missing == 0
                           ? tr("Nothing is missing.")
                           : counted(state.missing, QT_TRANSLATE_N_NOOP("Words", "%n item missing"),
                                     QT_TRANSLATE_N_NOOP("Words", "%n items missing")));
    m_due->setText(state.dueSoon == 0
                       ? tr("Nothing falls due within %1 days.").arg(dueWithin)
                       : counted(state.dueSoon,
                                 QT_TRANSLATE_N_NOOP("Words", "%n date overdue or due within 30 days"),
                                 QT_TRANSLATE_N_NOOP("Words", "%n dates overdue or due within 30 days")));
    m_said->clear();
    m_resets->setText(resetsInWords(state));
    m_resets->setVisible(!state.resets.empty());
    m_setUp->setTicks(state.setUp);
    fillStrips();
}

void ShedBoard::fillStrips() {
    const QString current = currentBoat();
    while (QLayoutItem* item = m_stripLayout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const core::BoatCondition& boat : m_state.boats) {
        auto* strip = new BoatStrip(wordsOf(boat, m_state), m_strips);
        const core::Phase phase = nextPhase(boat, m_state.unfinished);
        connect(strip, &BoatStrip::clicked, this,
                [this, name = strip->text(), phase] { emit boatPressed(name, phase); });
        m_stripLayout->addWidget(strip);
        if (strip->text() == current) strip->setFocus(Qt::OtherFocusReason);
    }
    if (current.isEmpty() && !m_state.boats.empty())
        m_stripLayout->itemAt(0)->widget()->setFocus(Qt::OtherFocusReason);
    if (m_state.boats.empty()) {
        auto* empty = wordsIn("remark", {}, m_strips);
        empty->setText(tr("No boats yet. Import a folder of CSV: boats, what each must carry, and the kit."));
        auto* import = new QPushButton(tr("Import a folder of CSV…"), m_strips);
        import->setObjectName("importButton");
        import->setProperty("role", "usual");
        connect(import, &QPushButton::clicked, this, &ShedBoard::importPressed);
        m_stripLayout->addWidget(empty);
        m_stripLayout->addWidget(import, 0, Qt::AlignLeft);
        import->setFocus(Qt::OtherFocusReason);
    }
    m_stripLayout->addStretch(1);
    tabAsLaidOut(*this); // what is new would come last
}

QString ShedBoard::currentBoat() const {
    const auto* strip = qobject_cast<BoatStrip*>(QApplication::focusWidget());
    return strip && isAncestorOf(strip) ? strip->text() : QString();
}

void ShedBoard::say(const QString& sentence) {
    m_said->setText(sentence);
}

QString ShedBoard::said() const {
    return m_said->text();
}

/// With how much of what came in somebody must look at.
void ShedBoard::sayOfHub(const HubNews& news) {
    QString words = inWords(news, m_state.today);
    if (const auto looks = static_cast<int>(news.cameIn.lookAt.size()); looks > 0 && !words.isEmpty())
        words += QLatin1Char(' ') + counted(looks, QT_TRANSLATE_N_NOOP("Words", "▲ %n thing to look at"),
                                            QT_TRANSLATE_N_NOOP("Words", "▲ %n things to look at"));
    m_hub->setText(words);
    m_hub->setVisible(!words.isEmpty());
}

void ShedBoard::remindOfBackup(const QString& sentence) {
    m_reminder->setText(sentence);
    m_reminder->setVisible(!sentence.isEmpty());
    m_backUp->setVisible(!sentence.isEmpty());
}

void ShedBoard::offerPaper(ClubThread& club, const Choosers& choosers, const TimeSource& time) {
    auto* paper = new PaperButton(club, choosers, time, this);
    paper->setProperty("role", "plain");
    paper->offerList([](const core::Club& open, core::CalendarDay today) {
        return readList(open, ClubList::Boats, today);
    });
    paper->offerCheckLists([this] {
        QStringList boats;
        for (const core::BoatCondition& boat : m_state.boats)
            boats << text(boat.boat);
        return boats;
    });
    m_gear->addWidget(paper);
    connect(paper, &PaperButton::done, this, [this](const core::Result<QString>& sentence) {
        say(sentence ? *sentence : errorSentence(sentence.error()));
    });
}

bool ShedBoard::takeScan(const QString& text, core::SeenBy /*how*/) {
    emit codeScanned(text);
    return true;
}

void ShedBoard::keyPressEvent(QKeyEvent* event) {
    const bool down = event->key() == Qt::Key_Down;
    if (down || event->key() == Qt::Key_Up) {
        focusNextPrevChild(down);
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace app
