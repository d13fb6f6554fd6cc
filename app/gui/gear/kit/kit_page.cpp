#include "app/gui/gear/kit/kit_page.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/kit/kit_item_panel.h"
#include "app/gui/gear/kit/kit_several_panel.h"
#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/kit/new_kit_panel.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/beside_or_over.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/part_stack.h"
#include "app/gui/widgets/plain_table.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

/// Rows whose width is measured to make the columns fit; measuring all of a region's would be felt.
constexpr int rowsMeasured = 64;
/// From this width on there is room for the table and an item beside it.
constexpr int widthForItemBeside = 1400;
/// From this width of the table on each column stands by itself; else some beneath others.
constexpr int wideTable = 1300;
constexpr int leastRows = 4; ///< of the table in view; in a lower window the page scrolls

// Before a name in the data of the box of homes.
constexpr QChar homeBoat('b'), homePlace('p'), homeNone('n');

} // namespace

KitPage::KitPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "kitPage", parent)
    , m_typed(new QLineEdit(this))
    , m_state(new ChoiceBox(this))
    , m_home(new ChoiceBox(this))
    , m_kitType(new ChoiceBox(this))
    , m_order(new ChoiceBox(this))
    , m_backwards(new QCheckBox(tr("last first"), this))
    , m_count(wordsLabel(this, "quiet", "kitCountLabel"))
    , m_empty(wordsLabel(this, "quiet", "kitEmptyLabel"))
    , m_several(new KitSeveralPanel(tools(), this))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_side(new PartStack(this))
    , m_item(new KitItemPanel(tools(), this))
    , m_new(new NewKitPanel(tools(), this)) {
    build();
    connectParts();
    connectTable();
}

void KitPage::build() {
    m_side->addWidget(m_item);
    m_side->addWidget(m_new);
    QVBoxLayout& layout = column(2 * spaceUnit);
    m_body = new BesideOrOver("kit", buildList(), m_side, widthForItemBeside, this);
    layout.addLayout(buildHead());
    layout.addWidget(buildFilters());
    layout.addWidget(m_body, 1);
    m_count->setWordWrap(false);
    auto* foot = new QHBoxLayout; // one line: the table has the rest
    foot->setSpacing(3 * spaceUnit);
    foot->addWidget(m_count);
    foot->addWidget(saidLabel("kitPageSaidLabel"), 1);
    layout.addLayout(foot);
}

QLayout* KitPage::buildHead() {
    m_typed->setObjectName("kitSearchEdit");
    m_typed->setAccessibleName(
        tr("find kit: type a part of its tag, type, size, home, person, maker or serial"));
    m_typed->setPlaceholderText(tr("find: tag, type, boat, person, serial …"));
    m_typed->installEventFilter(this);
    askForCode(*m_typed);
    auto* newKit = wordsButton(this, tr("New kit…"), "newKitButton");
    connect(newKit, &QPushButton::clicked, this, &KitPage::openNewKit);
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    head->addWidget(m_body->backButton());
    head->addWidget(m_typed, 1);
    head->addWidget(newKit);
    m_paper = shownListButton([this] { return shownList(); });
    head->addWidget(m_paper);
    return head;
}

QWidget* KitPage::buildFilters() {
    using State = KitChoice::State;
    m_state->setObjectName("kitStateBox");
    m_state->setAccessibleName(tr("kit of which state"));
    for (const auto& [word, state] : {std::pair(tr("in use"), State::InUse),
                                      {tr("to look at"), State::ToLookAt},
                                      {tr("serviceable"), State::Serviceable},
                                      {tr("unserviceable"), State::Unserviceable},
                                      {tr("missing"), State::Missing},
                                      {tr("written off"), State::WrittenOff},
                                      {tr("all"), State::All}})
        m_state->addItem(word, static_cast<int>(state));
    m_home->setObjectName("kitHomeBox");
    m_home->setAccessibleName(tr("kit of which boat or place"));
    m_kitType->setObjectName("kitTypeBox");
    m_kitType->setAccessibleName(tr("kit of which type"));
    m_order->setObjectName("kitOrderBox");
    m_order->setAccessibleName(tr("in which order"));
    for (const TableColumn& column : kitColumns())
        m_order->addItem(tr("by %1").arg(column.heading));
    m_backwards->setObjectName("kitBackwardsCheck");
    fillFilters();
    m_filters = new QWidget(this);
    auto* row = new FlowLayout(m_filters);
    row->setContentsMargins(0, 0, 0, 0);
    // At a desk, over a table of many columns: lower and smaller than what a crew presses, and in one line.
    m_filters->setStyleSheet(
        QStringLiteral("QComboBox { min-height: 44px; font-size: 14pt; padding: 0px 8px; }"
                       "QCheckBox { min-height: 44px; font-size: 14pt; }"));
    for (ChoiceBox* box : {m_state, m_home, m_kitType}) {
        box->takeRoom(5);
        row->addExpanding(box);
    }
    row->addWidget(m_order);
    row->addWidget(m_backwards);
    return m_filters;
}

QWidget* KitPage::buildList() {
    m_table->setObjectName("kitTable");
    m_table->setAccessibleName(tr("kit that was found"));
    m_table->horizontalHeader()->setResizeContentsPrecision(rowsMeasured);
    m_rows->setTickable(true);
    m_table->setSmall(true);
    m_table->setLeastRows(leastRows);
    m_empty->setText(tr("No kit yet. Register the first with “New kit…”, or import a folder of CSV or a "
                        "spreadsheet."));
    m_empty->hide();
    auto* list = new QWidget(this);
    auto* rows = new QVBoxLayout(list);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(spaceUnit);
    rows->addWidget(m_empty);
    rows->addWidget(m_several);
    rows->addWidget(m_table, 1);
    return list;
}

void KitPage::connectParts() {
    connect(m_typed, &QLineEdit::textChanged, this, &KitPage::showFound);
    connect(m_typed, &QLineEdit::textChanged, this, [this] { forgetError(); });
    connect(m_typed, &QLineEdit::textEdited, this, [this] {
        if (m_body->isOver()) leave(); // the list is what is searched
    });
    connect(m_typed, &QLineEdit::returnPressed, this, &KitPage::enter);
    for (ChoiceBox* box : {m_state, m_home, m_kitType, m_order})
        connect(box, &QComboBox::currentIndexChanged, this, &KitPage::showFound);
    connect(m_backwards, &QCheckBox::toggled, this, &KitPage::showFound);
    connect(m_item, &KitItemPanel::changed, this, &KitPage::refresh);
    connect(m_item, &KitItemPanel::gone, this, &KitPage::leave);
    connect(m_new, &NewKitPanel::changed, this, &KitPage::refresh);
    connect(m_several, &KitSeveralPanel::changed, this, [this](const QString& sentence) {
        m_rows->setTicked({});
        showTicked();
        m_table->setFocus(Qt::OtherFocusReason);
        say(sentence);
        refresh();
    });
    connect(m_several, &KitSeveralPanel::untickWanted, this, [this] {
        m_rows->setTicked({});
        showTicked();
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(m_body, &BesideOrOver::left, this, [this] {
        leave();
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(m_body, &BesideOrOver::arranged, this, &KitPage::adaptToBody);
}

void KitPage::connectTable() {
    connect(m_table, &PlainTable::rowChosen, this, [this](const QString& code) {
        if (m_body->isOpen() && !m_body->isOver()) open(code);
    });
    connect(m_table, &PlainTable::rowPressed, this, &KitPage::open);
    connect(m_table, &PlainTable::ticksChanged, this, &KitPage::showTicked);
    connect(m_table, &PlainTable::sortWanted, this, &KitPage::sortBy);
}

void KitPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    adaptToBody();
}

/// Columns for which there is room; what filters a list that is covered is not in view.
void KitPage::adaptToBody() {
    for (QWidget* part : std::initializer_list<QWidget*>{m_filters, m_paper, m_count})
        part->setVisible(!m_body->isOver());
    const bool isBeside = m_body->isOpen() && m_body->hasRoomForBoth();
    const int width = isBeside ? m_body->width() / 2 : m_body->width();
    const std::map<int, int> folded{
        {kitColumn, sizeColumn}, {homeColumn, ownerColumn}, {tagColumn, serialColumn}};
    m_table->fold(width >= wideTable ? std::map<int, int>() : folded);
}

void KitPage::showEvent(QShowEvent* event) {
    m_typed->setFocus(Qt::OtherFocusReason);
    GearPage::showEvent(event);
    if (!m_code.isEmpty()) m_item->open(m_code);
}

/// Down goes from the field into what it found.
bool KitPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_typed && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down && m_rows->rowCount() > 0 &&
        !m_body->isOver()) {
        m_table->setFocus(Qt::OtherFocusReason);
        if (m_table->chosen().isEmpty()) m_table->choose(m_rows->shown(0).key);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void KitPage::refresh() {
    // Its words are made on the club's thread, too: of a region's kit they take a while.
    read([today = today()](core::Club& club) { return KitList(club.answers().kitWithNextDue(today)); },
         [this](KitList list) { take(std::move(list)); });
}

void KitPage::take(KitList list) {
    m_list = std::move(list);
    fillFilters();
    {
        const QSignalBlocker quiet(m_table);
        m_rows->setTable(kitColumns(), m_list.rows());
    }
    std::set<QString> ticked; // what is still there
    for (const TableRow& row : m_list.rows())
        if (m_rows->ticked().contains(row.key)) ticked.insert(row.key);
    m_rows->setTicked(std::move(ticked));
    showTicked();
    showFound();
}

void KitPage::fillFilters() {
    const QSignalBlocker quietHome(m_home), quietType(m_kitType);
    const QVariant home = m_home->currentData();
    m_home->clear();
    m_home->addItem(tr("any home"), QString());
    for (const QString& boat : m_list.boats())
        m_home->addItem(boat, homeBoat + boat);
    for (const QString& place : m_list.places())
        m_home->addItem(place, homePlace + place);
    m_home->addItem(tr("no home"), QString(homeNone));
    m_home->setCurrentIndex(std::max(0, m_home->findData(home)));
    QStringList kitTypes;
    for (const QString& kitType : m_list.kitTypes())
        kitTypes << kitType;
    fillBox(*m_kitType, tr("any type"), kitTypes);
}

KitChoice KitPage::choice() const {
    KitChoice choice;
    choice.typed = m_typed->text();
    choice.state = static_cast<KitChoice::State>(m_state->currentData().toInt());
    const QString home = m_home->currentData().toString();
    if (home.startsWith(homeBoat)) choice.boat = home.mid(1);
    if (home.startsWith(homePlace)) choice.place = home.mid(1);
    choice.withoutHome = home == QString(homeNone);
    choice.kitType = m_kitType->currentData().toString();
    choice.sortedBy = std::max(0, m_order->currentIndex());
    choice.isBackwards = m_backwards->isChecked();
    return choice;
}

void KitPage::showFound() {
    const KitChoice wanted = choice();
    const QSignalBlocker quiet(m_table); // the item shown stays until another is chosen
    m_rows->setShown(m_list.shown(wanted));
    m_table->showSorted(wanted.sortedBy, wanted.isBackwards);
    m_table->choose(m_code);
    const int found = m_rows->rowCount();
    const QString count =
        counted(found, QT_TRANSLATE_N_NOOP("Words", "%n item"), QT_TRANSLATE_N_NOOP("Words", "%n items"));
    const std::size_t all = m_list.rows().size();
    m_empty->setVisible(all == 0);
    m_count->setText(static_cast<std::size_t>(found) == all ? tr("%1 in the register").arg(count)
                                                            : tr("%1 of %2 found").arg(count).arg(all));
}

/// What is printed is what is looked at, in its order; and what was chosen stands above it.
ListTable KitPage::shownList() {
    QStringList chosen{m_state->currentText()};
    for (const ChoiceBox* box : {m_home, m_kitType})
        if (box->currentIndex() > 0) chosen << box->currentText();
    if (const QString typed = m_typed->text().trimmed(); !typed.isEmpty()) chosen << tr("“%1”").arg(typed);
    const QString summary = tr("%1: %2.").arg(m_count->text(), chosen.join(tr(", ")));
    return foundKitTable(m_list.kitOf(m_list.shown(choice())), summary, today());
}

void KitPage::showTicked() {
    std::vector<core::Item> items;
    for (const QString& key : m_rows->ticked())
        if (const core::Item* item = m_list.item(key)) items.push_back(*item);
    m_several->setItems(std::move(items));
}

/// The same column again turns its order round.
void KitPage::sortBy(int column) {
    if (m_order->currentIndex() == column)
        m_backwards->toggle();
    else
        m_order->setCurrentIndex(column);
}

/// What was found first, for a scanner that ends its code with Enter; a maker's label is looked up.
void KitPage::enter() {
    if (m_rows->rowCount() > 0) {
        open(m_rows->shown(0).key);
        m_typed->selectAll();
        return;
    }
    ask([text = m_typed->text().toStdString(),
         today = today()](core::Club& club) { return club.kit().itemOfScan(text, today); },
        [this](const std::optional<core::Item>& item) {
            if (item) showItem(text(item->id));
        });
}

bool KitPage::takeScan(const QString& text, core::SeenBy /*how*/) {
    ask([text = text.toStdString(),
         today = today()](core::Club& club) { return club.kit().itemOfScan(text, today); },
        [this, text](const std::optional<core::Item>& item) {
            if (item) {
                forgetError();
                m_typed->setText(codeInWords(item->tag));
                open(app::text(item->id));
            } else if (m_body->isOpen() && m_side->currentWidget() == m_new) {
                m_new->addLabel(text);
            } else {
                sayOfScan(tr("%1 is not this club's kit.").arg(codeInWords(text.toStdString())));
            }
        });
    return true;
}

void KitPage::open(const QString& code) {
    m_code = code;
    {
        const QSignalBlocker quiet(m_table);
        m_table->choose(code);
    }
    m_side->setCurrentWidget(m_item);
    m_body->open();
    m_item->open(code);
}

void KitPage::openNewKit() {
    m_side->setCurrentWidget(m_new);
    m_body->open();
    m_new->refresh();
}

void KitPage::leave() {
    m_code.clear();
    m_item->closeForm();
    m_body->close();
}

void KitPage::showItem(const QString& code) {
    m_typed->clear();
    open(code);
}

} // namespace app
