#include "app/gui/board/shed_board.h"

#include "app/gui/board/event_line.h"
#include "app/gui/board/set_up_strip.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/club/hub_watch.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/page_scroll.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_record.h"
#include "core/tag/tag_code.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLayoutItem>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int cameraWidth = 320, narrowCameraWidth = 300; ///< the boats have the rest
constexpr int narrowBoard = 1000; ///< a board of less gives the boats more of its width
constexpr int manyBoats = 12;     ///< from so many on they can be filtered

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

/// "▲ 2 not ready · ○ out: Dabchick · ■ 7 kit ready", so that a boat that is out is found at a glance.
QString countInWords(const BoardState& state) {
    using Kind = core::BoatCondition::Kind;
    int notReady = 0, ready = 0;
    QStringList out;
    for (const core::BoatCondition& boat : state.boats) {
        notReady += boat.kind == Kind::NotReady;
        ready += boat.kind == Kind::KitReady;
        if (boat.kind == Kind::Out) out << text(boat.boat);
    }
    QStringList parts;
    if (notReady > 0) parts << ShedBoard::tr("▲ %1 not ready").arg(notReady);
    if (!out.isEmpty()) parts << ShedBoard::tr("○ out: %1").arg(out.join(", "));
    if (ready > 0) parts << ShedBoard::tr("■ %1 kit ready").arg(ready);
    return parts.join(ShedBoard::tr(" · "));
}

/// Whether the boat is meant by what is typed: part of what its strip says.
bool isMeant(const BoatWords& boat, const QString& typed) {
    const QString all = QStringList{boat.boat, boat.condition, boat.next, boat.reasons.join(' ')}.join(' ');
    return all.contains(typed.trimmed(), Qt::CaseInsensitive);
}

} // namespace

ShedBoard::ShedBoard(QWidget* parent)
    : QWidget(parent)
    , m_state{.club = {}, .today = core::CalendarDay::fromNumber(1), .boats = {}, .unfinished = {}}
    , m_title(wordsIn("boatName", {}, this))
    , m_setUp(new SetUpStrip(this))
    , m_event(new EventLine(this))
    , m_count(wordsLabel(this, "remark", "boatCountLabel"))
    , m_filter(wordsEdit(this, "boatFilterEdit", tr("show only boats with these letters"), tr("find a boat")))
    , m_strips(new QWidget)
    , m_stripLayout(new QVBoxLayout(m_strips))
    , m_missing(new QPushButton(this))
    , m_due(new QPushButton(this))
    , m_hub(wordsButton(this, {}, "hubLine"))
    , m_said(wordsIn("quiet", {}, this))
    , m_resets(wordsLabel(this, "look", "pinResetLabel"))
    , m_reminder(wordsIn("look", {}, this))
    , m_backUp(wordsButton(this, tr("Back up…"), "boardBackUpButton"))
    , m_gear(new FlowLayout)
    , m_camera(new CameraPanel(this)) {
    setObjectName("shedBoard");
    m_missing->setObjectName("missingLine");
    m_due->setObjectName("dueLine");
    m_said->setObjectName("boardSaidLabel");
    m_camera->askFor(tr("a boat's tag code"), tr("a boat's tag"));
    m_stripLayout->setContentsMargins(0, 0, 0, 0);
    m_stripLayout->setSpacing(spaceUnit);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(m_strips);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* besides = new QWidget;
    auto* side = new QVBoxLayout(besides);
    side->setContentsMargins(0, 0, 0, 0);
    auto* caution = wordsIn("quiet", boardCaution(), this);
    caution->setObjectName("boardCautionLabel");
    side->addWidget(m_camera);
    side->addSpacing(2 * spaceUnit);
    side->addWidget(caution);
    side->addStretch(1);
    auto* body = new QHBoxLayout;
    body->setSpacing(2 * spaceUnit);
    body->addWidget(scroll, 1);
    m_side = new PageScroll(besides, this);
    m_side->setFixedWidth(cameraWidth);
    body->addWidget(m_side);
    auto* whole = new QWidget;
    auto* layout = new QVBoxLayout(whole);
    layout->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 3 * spaceUnit, 2 * spaceUnit);
    layout->setSpacing(spaceUnit);
    auto* head = new FlowLayout;
    head->addExpanding(m_title);
    head->addWidget(m_event);
    layout->addLayout(head);
    layout->addWidget(m_setUp);
    auto* find = new QHBoxLayout;
    find->addWidget(m_count, 2);
    find->addWidget(m_filter, 1);
    layout->addLayout(find);
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
    m_gear->addStretch();
    layout->addLayout(m_gear);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(new PageScroll(whole, this));
    connect(m_filter, &QLineEdit::textChanged, this, &ShedBoard::filter);
    connect(m_filter, &QLineEdit::returnPressed, this, &ShedBoard::enterFilter);
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
    say({});
    m_resets->setText(resetsInWords(state));
    m_resets->setVisible(!state.resets.empty());
    m_setUp->setTicks(state.setUp);
    fillStrips();
}

void ShedBoard::fillStrips() {
    const QString current = currentBoat();
    const QWidget* focus = QApplication::focusWidget();
    const bool isBusyElsewhere =
        focus && focus != this && isAncestorOf(focus) && !m_strips->isAncestorOf(focus);
    const QSet<QString> open = openStrips();
    while (QLayoutItem* item = m_stripLayout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const bool isMany = static_cast<int>(m_state.boats.size()) >= manyBoats;
    m_count->setText(countInWords(m_state));
    m_count->setVisible(isMany);
    m_filter->setVisible(isMany);
    if (!isMany) m_filter->clear();
    for (const core::BoatCondition& boat : m_state.boats)
        fillStrip(boat, open.contains(text(boat.boat)));
    if (m_state.boats.empty()) fillEmpty(!isBusyElsewhere);
    m_stripLayout->addStretch(1);
    filter();
    tabAsLaidOut(*this); // what is new would come last
    const std::vector<BoatStrip*> shown = strips(true);
    const auto same = std::find_if(shown.begin(), shown.end(),
                                   [&](const BoatStrip* strip) { return strip->text() == current; });
    // A list that was read anew begins with whoever needs somebody most.
    if (same != shown.end())
        (*same)->setFocus(Qt::OtherFocusReason);
    else if (!shown.empty() && !isBusyElsewhere)
        shown.front()->setFocus(Qt::OtherFocusReason);
}

void ShedBoard::fillStrip(const core::BoatCondition& boat, bool isOpen) {
    auto* strip = new BoatStrip(wordsOf(boat, m_state), m_strips);
    strip->setOpen(isOpen);
    connect(strip, &BoatStrip::clicked, this,
            [this, name = strip->text(), phase = nextPhase(boat, m_state.unfinished)] {
                emit boatPressed(name, phase);
            });
    m_stripLayout->addWidget(strip);
    strip->show(); // the layout would later: what is typed meanwhile would go to another field
}

void ShedBoard::fillEmpty(bool takesKeyboard) {
    auto* empty = wordsIn("remark", {}, m_strips);
    empty->setText(tr("No boats yet. Import a folder of CSV: boats, what each must carry, and the kit."));
    auto* import = new QPushButton(tr("Import a folder of CSV…"), m_strips);
    import->setObjectName("importButton");
    import->setProperty("role", "usual");
    connect(import, &QPushButton::clicked, this, &ShedBoard::importPressed);
    m_stripLayout->addWidget(empty);
    m_stripLayout->addWidget(import, 0, Qt::AlignLeft);
    import->show();
    if (takesKeyboard) import->setFocus(Qt::OtherFocusReason);
}

std::vector<BoatStrip*> ShedBoard::strips(bool shownOnly) const {
    std::vector<BoatStrip*> strips;
    for (int i = 0; i < m_stripLayout->count(); ++i) {
        auto* strip = qobject_cast<BoatStrip*>(m_stripLayout->itemAt(i)->widget());
        if (strip && !(shownOnly && strip->isHidden())) strips.push_back(strip);
    }
    return strips;
}

QSet<QString> ShedBoard::openStrips() const {
    QSet<QString> open;
    for (const BoatStrip* strip : strips(false))
        if (strip->isOpen()) open << strip->text();
    return open;
}

void ShedBoard::filter() {
    int shown = 0;
    for (BoatStrip* strip : strips(false)) {
        const bool isShown = isMeant(strip->words(), m_filter->text());
        strip->setVisible(isShown);
        shown += isShown;
    }
    if (m_filter->text().trimmed().isEmpty())
        m_count->setText(countInWords(m_state));
    else
        m_count->setText(shown == 0 ? tr("No boat has “%1” in what is said of it.").arg(m_filter->text())
                                    : tr("%1 of %2 boats").arg(shown).arg(m_state.boats.size()));
}

/// A tag's code may have been typed here; else the keyboard goes to the boats that are left.
void ShedBoard::enterFilter() {
    const QString typed = m_filter->text().trimmed();
    if (core::TagCode::parse(typed.toStdString())) {
        m_filter->clear();
        emit codeScanned(typed);
        return;
    }
    if (const auto shown = strips(true); !shown.empty()) shown.front()->setFocus(Qt::TabFocusReason);
}

QString ShedBoard::currentBoat() const {
    const auto* strip = qobject_cast<BoatStrip*>(QApplication::focusWidget());
    return strip && isAncestorOf(strip) ? strip->text() : QString();
}

void ShedBoard::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
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

void ShedBoard::resizeEvent(QResizeEvent* event) {
    m_side->setFixedWidth(width() < narrowBoard ? narrowCameraWidth : cameraWidth);
    QWidget::resizeEvent(event);
}

/// From boat to boat; before the first and behind the last as Tab goes.
void ShedBoard::goToStrip(bool down) {
    const std::vector<BoatStrip*> shown = strips(true);
    const auto at = std::find_if(shown.begin(), shown.end(), [](const BoatStrip* strip) {
        return strip->hasFocus() || strip->isAncestorOf(QApplication::focusWidget());
    });
    if (at != shown.end() && down && at + 1 != shown.end())
        at[1]->setFocus(Qt::TabFocusReason);
    else if (at != shown.end() && !down && at != shown.begin())
        at[-1]->setFocus(Qt::BacktabFocusReason);
    else if (at == shown.end() && down && m_filter->hasFocus() && !shown.empty())
        shown.front()->setFocus(Qt::TabFocusReason);
    else
        focusNextPrevChild(down);
}

void ShedBoard::keyPressEvent(QKeyEvent* event) {
    const bool down = event->key() == Qt::Key_Down;
    if (down || event->key() == Qt::Key_Up) return goToStrip(down);
    QWidget::keyPressEvent(event);
}

} // namespace app
