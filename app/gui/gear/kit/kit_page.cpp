#include "app/gui/gear/kit/kit_page.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/kit/kit_item_panel.h"
#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/kit/new_kit_panel.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/plain_table.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace app {
namespace {

/// Rows whose width is measured to make the columns fit; measuring all of a region's would be felt.
constexpr int rowsMeasured = 64;
/// From this width on there is room for the tags too; an item's own page has its tag anyhow.
constexpr int wide = 1400;
constexpr int tagColumn = 2;

} // namespace

KitPage::KitPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "kitPage", parent)
    , m_typed(new QLineEdit(this))
    , m_count(wordsLabel(this, "quiet", "kitCountLabel"))
    , m_rows(new PlainTableModel(this))
    , m_table(new PlainTable(*m_rows, this))
    , m_side(new QStackedWidget(this))
    , m_hint(wordsLabel(this, "quiet", "kitHintLabel"))
    , m_item(new KitItemPanel(tools(), this))
    , m_new(new NewKitPanel(tools(), this)) {
    build();
    connectParts();
}

void KitPage::build() {
    m_typed->setObjectName("kitSearchEdit");
    m_typed->setAccessibleName(
        tr("find kit: type a part of its tag, type, size, home, person, maker or serial"));
    m_typed->setPlaceholderText(tr("find: tag, type, boat, person, serial …"));
    m_typed->installEventFilter(this);
    askForCode(*m_typed);
    m_table->setObjectName("kitTable");
    m_table->setAccessibleName(tr("kit that was found"));
    m_table->horizontalHeader()->setResizeContentsPrecision(rowsMeasured);
    m_hint->setText(tr("Choose an item on the left, scan its tag, or register new kit."));
    m_hint->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    for (QWidget* page : std::initializer_list<QWidget*>{m_hint, m_item, m_new})
        m_side->addWidget(page);
    auto* newKit = wordsButton(this, tr("New kit…"), "newKitButton");
    connect(newKit, &QPushButton::clicked, this, [this] {
        m_side->setCurrentWidget(m_new);
        m_new->refresh();
    });
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    head->addWidget(m_typed, 1);
    head->addWidget(newKit);
    auto* left = new QVBoxLayout;
    left->setSpacing(spaceUnit);
    left->addLayout(head);
    auto* counting = new QHBoxLayout;
    counting->addWidget(m_count, 1);
    counting->addWidget(listButton(readKitList));
    left->addLayout(counting);
    left->addWidget(m_table, 1);
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addLayout(left, 11);
    body->addWidget(m_side, 12);
    column(2 * spaceUnit).addLayout(body);
}

void KitPage::connectParts() {
    connect(m_typed, &QLineEdit::textChanged, this, &KitPage::showFound);
    connect(m_typed, &QLineEdit::returnPressed, this, &KitPage::enter);
    connect(m_table, &PlainTable::rowChosen, this, &KitPage::open);
    connect(m_table, &PlainTable::rowPressed, this, &KitPage::open);
    connect(m_item, &KitItemPanel::changed, this, &KitPage::refresh);
    connect(m_item, &KitItemPanel::gone, this, [this] {
        m_code.clear();
        m_side->setCurrentWidget(m_hint);
    });
    connect(m_new, &NewKitPanel::changed, this, &KitPage::refresh);
}

void KitPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    m_table->leaveOut(tagColumn, width() < wide);
}

void KitPage::showEvent(QShowEvent* event) {
    m_typed->setFocus(Qt::OtherFocusReason);
    GearPage::showEvent(event);
    if (!m_code.isEmpty()) m_item->open(m_code);
}

/// Down goes from the field into what it found.
bool KitPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_typed && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down && m_rows->rowCount() > 0) {
        m_table->setFocus(Qt::OtherFocusReason);
        if (m_table->chosen().isEmpty()) m_table->choose(m_rows->rows().front().key);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void KitPage::refresh() {
    read(
        [today = today()](core::Club& club) {
            Read read{club.kit().all(), {}};
            for (const core::DueRow& row : club.answers().dueList(today, 0))
                if (isToLookAt(row)) read.due.insert(row.item.id);
            return read;
        },
        [this](Read read) { take(std::move(read)); });
}

void KitPage::take(Read read) {
    m_search = KitSearch(std::move(read.kit));
    m_due = std::move(read.due);
    showFound();
}

void KitPage::showFound() {
    const auto found = m_search.find(m_typed->text());
    std::vector<TableRow> rows;
    rows.reserve(found.size());
    for (const std::size_t at : found) {
        const core::Item& item = m_search.kit()[at];
        rows.push_back(rowOf(item, m_due.contains(item.id)));
    }
    const QSignalBlocker quiet(m_table); // the item shown stays until another is chosen
    m_rows->setTable(kitColumns(), rows);
    m_table->choose(m_code);
    const QString count = counted(static_cast<int>(found.size()), QT_TRANSLATE_N_NOOP("Words", "%n item"),
                                  QT_TRANSLATE_N_NOOP("Words", "%n items"));
    m_count->setText(found.size() == m_search.kit().size()
                         ? tr("%1 in the register").arg(count)
                         : tr("%1 of %2 found").arg(count).arg(m_search.kit().size()));
}

/// What was found first, for a scanner that ends its code with Enter; a maker's label is looked up.
void KitPage::enter() {
    if (m_rows->rowCount() > 0) {
        m_table->choose(m_rows->rows().front().key);
        open(m_rows->rows().front().key);
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
            if (item)
                showItem(app::text(item->id));
            else if (m_side->currentWidget() == m_new)
                m_new->addLabel(text);
            else
                sayOfScan(tr("%1 is not this club's kit.").arg(codeInWords(text.toStdString())));
        });
    return true;
}

void KitPage::open(const QString& code) {
    m_code = code;
    m_side->setCurrentWidget(m_item);
    m_item->open(code);
}

void KitPage::showItem(const QString& code) {
    m_typed->clear();
    open(code);
    m_table->choose(code);
}

} // namespace app
