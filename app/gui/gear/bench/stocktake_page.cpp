#include "app/gui/gear/bench/stocktake_page.h"

#include "app/gui/camera/scan_words.h"
#include "app/gui/gear/bench/stocktake_words.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/shown_list.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

StocktakePage::StocktakePage(GearTools tools, QWidget* parent)
    : CameraPage(std::move(tools), "stocktakePage", parent)
    , m_place(new ChoiceBox(this))
    , m_begin(wordsButton(this, tr("Begin"), "stocktakeBeginButton"))
    , m_summary(wordsLabel(this, "heading", "stocktakeSummaryLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_undo(wordsButton(this, tr("Take back the last"), "stocktakeUndoButton"))
    , m_by(new ChoiceBox(this))
    , m_emptyLabel(wordsLabel(this, "look", "stocktakeEmptyLabel"))
    , m_number(wordsEdit(this, "stocktakeNumberEdit", tr("how many will be missing")))
    , m_sign(wordsButton(this, {}, "stocktakeSignButton", true)) {
    build();
    connectParts();
    askForPlace();
    adapt();
}

StocktakePage::~StocktakePage() = default;

void StocktakePage::build() {
    m_place->takeRoom(12);
    m_by->takeRoom(6);
    m_place->setObjectName("stocktakePlaceBox");
    m_by->setObjectName("stocktakeByBox");
    m_list->setObjectName("stocktakeList");
    m_list->setAccessibleName(tr("kit of this place"));
    auto* head = new FlowLayout;
    addWithWord(*head, tr("Place"), m_place, true);
    head->addWidget(m_begin);
    auto* foot = new FlowLayout;
    foot->addWidget(m_undo);
    foot->addStretch();
    foot->addWidget(m_sign);
    auto* signer = new QHBoxLayout;
    addWithWord(*signer, tr("Signed by"), m_by);
    signer->setStretch(1, 1);
    auto* right = new QVBoxLayout;
    right->setSpacing(spaceUnit);
    right->addWidget(m_summary);
    right->addWidget(m_list, 1);
    m_number->setFixedWidth(120);
    auto* number = new QHBoxLayout;
    number->setSpacing(spaceUnit);
    number->addWidget(m_emptyLabel, 1);
    number->addWidget(m_number);
    right->addLayout(number);
    right->addLayout(signer);
    right->addLayout(foot);
    layOut(head, right, "stocktakeCautionLabel",
           tr("Signing marks as missing what the register has here and nobody has shown. A scan "
              "shows that the tag was here, not that the thing works."));
    // Beside the caution: the rows above have no room for it.
    auto* caution = findChild<QLabel*>("stocktakeCautionLabel");
    layout()->removeWidget(caution);
    auto* last = new QHBoxLayout;
    last->addWidget(caution, 1);
    PaperButton* paper = paperButton();
    paper->offerShown([this] { return tableOf(tr("Stocktake"), m_summary->text(), m_lines->rows()); },
                      [this] { return listToCount(); });
    last->addWidget(paper);
    static_cast<QVBoxLayout*>(layout())->addLayout(last);
}

/// Before it is begun: what is to be counted at the place, or at all places while none is chosen.
std::function<core::Result<ListTable>(core::Club&, core::CalendarDay)> StocktakePage::listToCount() const {
    if (!m_lines->rows().empty()) return {};
    ListReach reach;
    if (const QString place = m_place->currentData().toString(); !place.isEmpty())
        reach.places = {place.toStdString()};
    return [reach](const core::Club& club, core::CalendarDay today) {
        return readList(club, ClubList::Stocktake, today, reach);
    };
}

void StocktakePage::connectParts() {
    connect(m_place, &QComboBox::currentIndexChanged, this, &StocktakePage::adapt);
    connect(m_begin, &QPushButton::clicked, this, [this] { open(m_place->currentData().toString()); });
    connect(m_by, &QComboBox::currentIndexChanged, this, &StocktakePage::adapt);
    connect(m_undo, &QPushButton::clicked, this, [this] {
        if (!m_session) return;
        if (isBegunOnly())
            m_session->discard({});
        else
            m_session->undo();
    });
    connect(m_number, &QLineEdit::textChanged, this, &StocktakePage::adaptSign);
    connect(m_number, &QLineEdit::returnPressed, this, [this] { m_sign->setFocus(Qt::TabFocusReason); });
    connect(m_sign, &QPushButton::clicked, this, [this] {
        bool isTyped = false;
        const int missing = m_number->text().trimmed().toInt(&isTyped);
        if (m_session)
            m_session->sign(m_by->currentData().toString(), {},
                            isTyped ? std::optional(missing) : std::nullopt);
    });
}

void StocktakePage::showEvent(QShowEvent* event) {
    CameraPage::showEvent(event);
    // Another page may have found something of it meanwhile.
    if (m_session && m_session->state()) open(text(m_session->state()->open.location.name));
}

void StocktakePage::refresh() {
    read(
        [today = today()](core::Club& club) {
            return Read{club.register_().placesHere(today), club.checks().unfinished(),
                        club.register_().peopleHere(today)};
        },
        [this](const Read& read) { take(read); });
}

void StocktakePage::take(const Read& read) {
    QStringList places, people;
    for (const std::string& place : read.places)
        places << text(place);
    for (const core::Person& person : read.people)
        people << text(person.name);
    fillBox(*m_place, tr("which place?"), places);
    m_unfinished.clear();
    for (const core::OpenCheck& check : read.unfinished)
        if (check.phase == core::Phase::Stocktake) m_unfinished << text(check.location.name);
    fillBox(*m_by, tr("choose a name"), people);
    if (m_by->currentIndex() <= 0) m_by->setCurrentIndex(std::max(0, m_by->findData(tools().officer())));
    adapt();
}

void StocktakePage::open(const QString& place) {
    m_place->setCurrentIndex(std::max(0, m_place->findData(place)));
    m_session = std::make_unique<CheckSession>(tools().club, tools().time);
    connect(m_session.get(), &CheckSession::changed, this, &StocktakePage::showState);
    connect(m_session.get(), &CheckSession::stepped, this, &StocktakePage::showStep);
    connect(m_session.get(), &CheckSession::failed, this,
            [this](const QString& sentence) { say(sentence, true); });
    m_session->open(place, core::Phase::Stocktake);
    m_list->setFocus(Qt::OtherFocusReason);
}

void StocktakePage::scan(const core::ScannedText& seen, core::SeenBy seenBy) {
    if (m_session)
        m_session->scan(seen, seenBy);
    else
        say(tr("Choose the place first, then show its kit."), true);
}

void StocktakePage::showState() {
    const core::CheckAnswer& answer = m_session->state()->answer;
    m_summary->setText(stocktakeInWords(answer));
    m_lines->setRows(stocktakeRowsOf(answer));
    if (!m_list->currentIndex().isValid() && m_lines->rowCount() > 1)
        m_list->setCurrentIndex(m_lines->index(1));
    adapt();
    emit shown();
}

void StocktakePage::showStep(const FlowStep& step, const QString& text) {
    using What = FlowStep::What;
    switch (step.what) {
    case What::Scanned:
        m_session->setSignatureAsked(false); // the stocktake goes on
        return showScan(step.scan, text);
    case What::SignerNamed:
        m_by->setCurrentIndex(std::max(0, m_by->findData(app::text(step.name))));
        break;
    case What::SignatureGiven:
        return finish();
    case What::Signed:
        return showSigned(*step.signedCheck);
    case What::LetGo:
    case What::PutAside:
    case What::NextBoat:
        return leave();
    default:
        break;
    }
    if (const ScanWords words = wordsOf(step); !words.said.isEmpty()) say(words.said, words.toLookAt);
}

void StocktakePage::askForPlace() {
    m_summary->setText(tr("Choose a place. Its kit is listed, and ticked off as its tags are shown."));
}

/// What was shown is on disk; the place is chosen anew, this one or another.
void StocktakePage::leave() {
    m_session.reset();
    m_lines->setRows({});
    say({});
    m_place->setCurrentIndex(0);
    askForPlace();
    refresh();
}

void StocktakePage::showScan(const core::Scanned& scan, const QString& text) {
    const QString key = "item " + app::text(scan.item.id);
    const int row = m_lines->indexOfKey(key);
    const ScanWords words =
        wordsOf(scan, text, row < 0 ? nullptr : &m_lines->rows()[static_cast<std::size_t>(row)]);
    say(words.said, words.toLookAt);
    if (words.sound) tools().sounds.play(*words.sound);
    m_lines->markChanged(key);
    if (row >= 0) m_list->scrollTo(m_lines->index(row));
}

void StocktakePage::adapt() {
    const QString place = m_place->currentData().toString();
    m_begin->setText(m_unfinished.contains(place) ? tr("Go on") : tr("Begin"));
    m_begin->setEnabled(!place.isEmpty());
    const bool isOpenHere =
        m_session && m_session->state() && text(m_session->state()->open.location.name) == place;
    if (isOpenHere && m_begin->hasFocus()) m_list->setFocus(Qt::OtherFocusReason);
    m_begin->setVisible(!isOpenHere);
    m_undo->setEnabled(m_session && m_session->state());
    m_undo->setText(isBegunOnly() ? tr("Discard") : tr("Take back the last"));
    askForNumber();
    adaptSign();
}

/// When all is taken back, what is left to take back is that it was begun.
bool StocktakePage::isBegunOnly() const {
    return m_session && m_session->state() && !m_session->state()->newest;
}

void StocktakePage::adaptSign() {
    const bool isOpen = m_session && m_session->state();
    const int open = isOpen ? stillToFindIn(m_session->state()->answer) : 0;
    m_sign->setText(open ? tr("Sign: %1 missing").arg(open) : tr("Sign: all found"));
    m_sign->setEnabled(isOpen && m_by->currentIndex() > 0 && !isNumberWanted());
}

/// A place is seldom empty: most often nobody has begun to show its kit.
void StocktakePage::askForNumber() {
    const bool isEmpty = m_session && m_session->state() && isNothingSeenIn(m_session->state()->answer);
    m_emptyLabel->setVisible(isEmpty);
    m_number->setVisible(isEmpty);
    if (!isEmpty) return m_number->clear();
    const int missing = stillToFindIn(m_session->state()->answer);
    m_emptyLabel->setText(
        tr("Nothing was shown. Signed like this, %1 would be missing: type that number first.")
            .arg(counted(missing, QT_TRANSLATE_N_NOOP("Words", "%n item"),
                         QT_TRANSLATE_N_NOOP("Words", "%n items"))));
}

/// Nothing was shown, and the number of what will be missing is not typed yet.
bool StocktakePage::isNumberWanted() const {
    if (!m_session || !m_session->state()) return false;
    const core::CheckAnswer& answer = m_session->state()->answer;
    return isNothingSeenIn(answer) && m_number->text().trimmed() != QString::number(stillToFindIn(answer));
}

void StocktakePage::finish() {
    if (m_sign->isEnabled()) return m_sign->click();
    say(isNumberWanted() ? m_emptyLabel->text() : tr("Choose first who signs."), true);
}

void StocktakePage::showSigned(const core::SignedCheck& check) {
    const int missing = stillToFindIn(check.answer);
    const QString place = text(check.answer.location.name);
    m_session.reset();
    m_summary->setText(
        missing ? tr("%1: signed by %2. %3 marked missing.").arg(place, text(check.by)).arg(missing)
                : tr("%1: signed by %2. Everything was found.").arg(place, text(check.by)));
    say(missing ? tr("See the page Missing for whom to ask.") : QString());
    m_lines->setRows(stocktakeRowsOf(check.answer));
    m_sign->setEnabled(false);
    m_undo->setEnabled(false);
    refresh();
    emit signedOff();
}

} // namespace app
