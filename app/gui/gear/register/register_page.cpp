#include "app/gui/gear/register/register_page.h"

#include "app/gui/gear/manifests/keep_question.h"
#include "app/gui/gear/register/end_panel.h"
#include "app/gui/gear/register/pin_panel.h"
#include "app/gui/gear/register/rename_panel.h"
#include "app/gui/gear/register/row_panel.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/beside_or_over.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/plain_table.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "core/tag/tag_code.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <utility>

namespace app {
namespace {

using core::SheetId;

constexpr int widthForBoth = 1200; ///< of the table and a form beside it: a rule's sentence needs half

/// The row of a tag among boats, people and places, by its key in the table.
std::pair<SheetId, QString> rowOfTag(const core::ClubRegister& register_, const std::string& code) {
    for (const SheetId sheet : {SheetId::Boats, SheetId::People, SheetId::Places}) {
        const auto at = static_cast<std::size_t>(core::sheet(sheet).indexOf("tag"));
        for (const core::Cells& row : register_.rows(sheet))
            if (row[at] == code) return {sheet, keyOfRow(sheet, row)};
    }
    return {SheetId::Boats, {}};
}

} // namespace

RegisterPage::RegisterPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "registerPage", parent)
    , m_sheet(new ChoiceBox(this))
    , m_typed(wordsEdit(this, "registerSearchEdit", tr("find a row by any of its words"), tr("find …")))
    , m_new(wordsButton(this, {}, "registerNewButton"))
    , m_newSize(wordsButton(this, tr("New size…"), "registerNewSizeButton"))
    , m_newRule(wordsButton(this, tr("New rule…"), "registerNewRuleButton"))
    , m_club(wordsButton(this, tr("The club’s name…"), "registerClubButton"))
    , m_hint(wordsLabel(this, "quiet", "registerHintLabel"))
    , m_model(new PlainTableModel(this))
    , m_table(new PlainTable(*m_model, this))
    , m_row(new RowPanel(tools(), "register", this))
    , m_rename(wordsButton(m_row, tr("Rename…"), "registerRenameButton"))
    , m_renaming(new RenamePanel(tools(), this))
    , m_end(wordsButton(m_row, tr("No longer here…"), "registerEndButton"))
    , m_ending(new EndPanel(tools(), this))
    , m_pin(wordsButton(this, tr("PIN…"), "registerPinButton"))
    , m_pinning(new PinPanel(tools(), this))
    , m_remove(wordsButton(m_row, {}, "registerRemoveButton"))
    , m_removing(new KeepQuestion("registerRemove", this)) {
    build();
    connectParts();
    showWords();
}

void RegisterPage::build() {
    m_sheet->setObjectName("registerSheetBox");
    m_sheet->setAccessibleName(tr("which rows of the register"));
    for (const SheetId id : {SheetId::Boats, SheetId::People, SheetId::Places, SheetId::KitTypes})
        m_sheet->addItem(rowsInWords(id), static_cast<int>(id));
    m_typed->installEventFilter(this);
    m_table->setObjectName("registerTable");
    m_table->setAccessibleName(tr("rows of the register"));
    m_body = new BesideOrOver("register", buildList(), buildSide(), widthForBoth, this);
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    head->addWidget(m_body->backButton());
    head->addWidget(m_sheet);
    head->addWidget(m_typed, 1);
    QVBoxLayout& layout = column(2 * spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_body, 1);
    layout.addWidget(saidLabel("registerSaidLabel"));
    // Beneath the form too where that covers the list: a kit type's rules are begun while it is looked at.
    auto* buttons = new FlowLayout;
    for (QPushButton* button : {m_new, m_newSize, m_newRule, m_club})
        buttons->addWidget(button);
    m_club->setProperty("role", "plain");
    buttons->addWidget(m_pin); // the row's own buttons leave it no room
    layout.addLayout(buttons);
    m_pin->hide();
}

QWidget* RegisterPage::buildList() {
    auto* list = new QWidget(this);
    auto* rows = new QVBoxLayout(list);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(spaceUnit);
    rows->addWidget(m_hint);
    rows->addWidget(m_table, 1);
    return list;
}

QWidget* RegisterPage::buildSide() {
    auto* side = new QWidget(this);
    auto* parts = new QVBoxLayout(side);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->addWidget(m_row, 1);
    parts->addWidget(m_renaming, 1);
    parts->addWidget(m_ending, 1);
    parts->addWidget(m_pinning, 1);
    parts->addWidget(m_removing, 1, Qt::AlignTop);
    m_row->buttons()->insertWidget(0, m_rename);
    m_row->buttons()->insertWidget(1, m_end);
    m_row->buttons()->insertWidget(2, m_remove);
    return side;
}

void RegisterPage::connectParts() {
    connect(m_sheet, &QComboBox::currentIndexChanged, this, [this] {
        m_row->close();
        m_body->close();
        m_pin->hide();
        say({});
        showTable();
    });
    connect(m_typed, &QLineEdit::textChanged, this, &RegisterPage::showTable);
    connect(m_typed, &QLineEdit::textEdited, this, [this] {
        if (!m_body->isOver()) return;
        m_body->close(); // the list is what is searched
        m_pin->hide();
    });
    connect(m_typed, &QLineEdit::returnPressed, this, [this] {
        if (m_model->rowCount() > 0) openRow(m_model->shown(0).key);
    });
    connect(m_table, &PlainTable::rowChosen, this, [this](const QString& key) {
        showWords();
        if (m_body->isOpen() && !m_body->isOver()) openRow(key);
    });
    connect(m_table, &PlainTable::rowPressed, this, [this](const QString& key) {
        openRow(key);
        m_row->takeKeyboard();
    });
    connect(m_new, &QPushButton::clicked, this, [this] { beginNew(sheet()); });
    connect(m_newSize, &QPushButton::clicked, this, [this] { beginNew(SheetId::Sizes); });
    connect(m_newRule, &QPushButton::clicked, this, [this] { beginNew(SheetId::LifeRules); });
    connect(m_rename, &QPushButton::clicked, this, [this] {
        askBeside(m_renaming);
        m_renaming->ask(m_row->sheet(), m_row->row());
    });
    connect(m_end, &QPushButton::clicked, this, [this] {
        askBeside(m_ending);
        m_ending->ask(m_row->sheet(), m_row->row());
    });
    connect(m_pin, &QPushButton::clicked, this, [this] {
        askBeside(m_pinning);
        m_pinning->ask(m_row->row().front());
    });
    connect(m_club, &QPushButton::clicked, this, &RegisterPage::askClubsName);
    connect(m_remove, &QPushButton::clicked, this, &RegisterPage::askRemove);
    connect(m_removing, &KeepQuestion::kept, this, &RegisterPage::backToForm);
    connect(m_removing, &KeepQuestion::takenAway, this, &RegisterPage::removeRow);
    connect(m_pinning, &PinPanel::kept, this, &RegisterPage::backToForm);
    connect(m_pinning, &PinPanel::changed, this, [this](const QString& sentence) {
        backToForm();
        say(sentence);
        if (tools().pinChanged) tools().pinChanged();
    });
    connect(m_renaming, &RenamePanel::kept, this, [this] {
        if (m_renaming->isOfClub()) return leave();
        backToForm();
    });
    connect(m_ending, &EndPanel::kept, this, &RegisterPage::backToForm);
    const auto done = [this](const QString& sentence) {
        leave();
        afterChange(sentence);
    };
    connect(m_renaming, &RenamePanel::renamed, this, [this, done](const QString& sentence) {
        if (m_renaming->isOfClub() && tools().clubNamed) tools().clubNamed();
        done(sentence);
    });
    connect(m_ending, &EndPanel::ended, this, done);
    connect(m_row, &RowPanel::changed, this, [this, done](const QString& sentence, const QString& key) {
        m_written = key;
        done(sentence);
    });
    connect(m_row, &RowPanel::discarded, this, [this] {
        if (m_row->isNew()) leave();
    });
    connect(m_body, &BesideOrOver::left, this, &RegisterPage::leave);
}

void RegisterPage::afterChange(const QString& sentence) {
    say(sentence);
    if (sheet() == SheetId::People && tools().readPeople) tools().readPeople();
    refresh();
}

SheetId RegisterPage::sheet() const {
    return static_cast<SheetId>(m_sheet->currentData().toInt());
}

void RegisterPage::showEvent(QShowEvent* event) {
    if (!m_body->isOpen()) m_typed->setFocus(Qt::OtherFocusReason);
    GearPage::showEvent(event);
}

/// Down goes from the field into what it found.
bool RegisterPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_typed && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down && m_model->rowCount() > 0) {
        m_table->setFocus(Qt::OtherFocusReason);
        if (m_table->chosen().isEmpty()) m_table->choose(m_model->shown(0).key);
        return true;
    }
    return GearPage::eventFilter(watched, event);
}

void RegisterPage::refresh() {
    read([](core::Club& club) { return readSheets(club.register_()); },
         [this](RegisterSheets sheets) {
             m_sheets = std::move(sheets);
             const QString written = std::exchange(m_written, {});
             showTable();
             chooseWritten(written);
             if (!m_wanted.isEmpty()) openRow(std::exchange(m_wanted, {}));
         });
}

/// What was just written is what somebody goes on with: a new kit type's sizes, say; but where another row
/// was chosen meanwhile. A search that leaves it out is over.
void RegisterPage::chooseWritten(const QString& key) {
    if (key.isEmpty() || !rowOf(key)) return;
    if (m_model->indexOfKey(key) < 0) m_typed->clear();
    m_table->choose(key);
    showWords();
}

void RegisterPage::showTable() {
    m_rows = rowsOf(m_sheets, sheet());
    const QStringList words = m_typed->text().toLower().split(' ', Qt::SkipEmptyParts);
    std::vector<TableRow> shown;
    QString kitType; // a size or rule is found by its kit type, too
    for (const RegisterRow& row : m_rows) {
        if (row.sheet == SheetId::KitTypes) kitType = row.shown.cells.join('\n');
        const QString all = (kitType + '\n' + row.shown.cells.join('\n')).toLower();
        if (std::all_of(words.begin(), words.end(), [&](const QString& word) { return all.contains(word); }))
            shown.push_back(row.shown);
    }
    const QString chosen = m_table->chosen();
    {
        const QSignalBlocker quiet(m_table);
        m_model->setTable(columnsOf(sheet()), shown);
        m_table->choose(chosen);
    }
    showWords();
}

void RegisterPage::showWords() {
    const SheetId id = sheet();
    const bool isKitTypes = id == SheetId::KitTypes;
    m_new->setText(id == SheetId::Boats    ? tr("New boat…")
                   : id == SheetId::People ? tr("New person…")
                   : id == SheetId::Places ? tr("New place…")
                                           : tr("New kit type…"));
    m_newSize->setVisible(isKitTypes);
    m_newRule->setVisible(isKitTypes);
    const bool hasKitType = !kitTypeChosen().empty();
    m_newSize->setEnabled(hasKitType);
    m_newRule->setEnabled(hasKitType);
    m_hint->setVisible(m_model->rowCount() == 0);
    m_hint->setText(m_rows.empty() ? tr("None yet. Write the first with “%1”, or import a folder of CSV or a "
                                        "spreadsheet.")
                                         .arg(m_new->text())
                                   : tr("Nothing has these words."));
}

const RegisterRow* RegisterPage::rowOf(const QString& key) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](const RegisterRow& row) { return row.shown.key == key; });
    return found == m_rows.end() ? nullptr : &*found;
}

std::string RegisterPage::kitTypeChosen() const {
    const RegisterRow* row = rowOf(m_table->chosen());
    return row && sheet() == SheetId::KitTypes ? row->cells[0] : std::string();
}

void RegisterPage::openRow(const QString& key) {
    const RegisterRow* row = rowOf(key);
    if (!row) return;
    m_written.clear();
    backToForm();
    {
        const QSignalBlocker quiet(m_table);
        m_table->choose(key);
    }
    if (!m_row->isOpenOn(row->sheet, row->cells)) {
        say({}); // it was of another row
        m_row->open(row->sheet, row->cells, headingOf(row->sheet, row->cells));
    }
    m_rename->setVisible(RenamePanel::isFor(row->sheet));
    m_end->setVisible(EndPanel::isFor(row->sheet));
    m_pin->setVisible(row->sheet == SheetId::People);
    m_remove->setText(row->sheet == SheetId::LifeRules ? tr("Remove rule…")
                      : row->sheet == SheetId::Sizes   ? tr("Remove size…")
                                                       : tr("Remove kit type…"));
    m_remove->setVisible(core::ClubRegister::mayRemove(row->sheet));
    m_body->open();
    showWords();
}

void RegisterPage::beginNew(SheetId id) {
    m_written.clear();
    say({});
    backToForm();
    const std::string kitType = kitTypeChosen();
    core::CellTexts given;
    QString heading = m_new->text().remove(QStringLiteral("…"));
    if (id == SheetId::Sizes || id == SheetId::LifeRules) {
        given = {{"kit_type", kitType}};
        heading = id == SheetId::Sizes ? tr("A new size of: %1").arg(text(kitType))
                                       : tr("A new life rule of: %1").arg(text(kitType));
    }
    m_row->beginNew(id, given, heading);
    m_rename->hide();
    m_end->hide();
    m_pin->hide();
    m_remove->hide();
    m_body->open();
    m_row->takeKeyboard();
}

void RegisterPage::showSheet(SheetId id, const QString& row) {
    m_typed->clear();
    m_sheet->setCurrentIndex(m_sheet->findData(static_cast<int>(id)));
    m_wanted = row;
    refresh();
}

bool RegisterPage::takeScan(const QString& scanned, core::SeenBy /*how*/) {
    ask(
        [code = scanned.toStdString()](core::Club& club) {
            const auto tag = core::TagCode::parse(code);
            return tag ? rowOfTag(club.register_(), tag->text()) : std::pair(SheetId::Boats, QString());
        },
        [this, scanned](const std::pair<SheetId, QString>& row) {
            if (!row.second.isEmpty()) return showSheet(row.first, row.second);
            // What is half written here is not left for it.
            sayOfScan(tr("%1 is no tag of a boat, person or place. Kit is on the page Kit.")
                          .arg(codeInWords(scanned.toStdString())));
        });
    return true;
}

} // namespace app
