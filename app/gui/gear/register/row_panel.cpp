#include "app/gui/gear/register/row_panel.h"

#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/gear/register/register_rows.h"
#include "app/gui/gear/register/rule_days.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/outlook_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"
#include "core/register/boat.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QUrl>
#include <QVBoxLayout>

namespace app {
namespace {

constexpr int mostEffects = 5; ///< sentences shown
constexpr int mostWarned = 2;  ///< likewise

bool isRowHere(core::SheetId sheet, const core::Cells& row, core::CalendarDay today) {
    const int at = core::sheet(sheet).indexOf("until");
    return at < 0 || core::isHere(core::CalendarDay::parse(row[static_cast<std::size_t>(at)]), today);
}

bool isRule(core::SheetId sheet) {
    return sheet == core::SheetId::LifeRules;
}

} // namespace

RowPanel::RowPanel(GearTools given, const QByteArray& prefix, QWidget* parent)
    : GearPart(std::move(given), prefix + "RowPanel", parent)
    , m_heading(wordsLabel(this, "heading", prefix + "RowLabel"))
    , m_form(new RowForm(this))
    , m_others(wordsLabel(this, "look", prefix + "RefusedLabel"))
    , m_effects(wordsLabel(this, "remark", prefix + "EffectsLabel"))
    , m_warnings(wordsLabel(this, "look", prefix + "WarningsLabel"))
    , m_days(wordsLabel(this, "quiet", prefix + "RuleDaysLabel"))
    , m_hint(wordsLabel(this, "footnote", prefix + "HintOfCellLabel"))
    , m_buttons(new FlowLayout)
    , m_save(wordsButton(this, tr("Save"), prefix + "SaveButton", true))
    , m_discard(wordsButton(this, tr("Discard changes"), prefix + "DiscardButton"))
    , m_wait(typingWait(this)) {
    build(prefix);
    connect(m_wait, &QTimer::timeout, this, &RowPanel::plan);
    connect(m_form, &RowForm::cellEdited, this, &RowPanel::edited);
    connect(qApp, &QApplication::focusChanged, this, [this] { m_hint->setText(m_form->hint()); });
    connect(m_save, &QPushButton::clicked, this, &RowPanel::save);
    connect(m_discard, &QPushButton::clicked, this, &RowPanel::discard);
    adapt();
}

/// Its fields go after it, and the keyboard leaves them then.
RowPanel::~RowPanel() {
    qApp->disconnect(this);
}

void RowPanel::build(const QByteArray& prefix) {
    auto* held = new QWidget;
    auto* column = new QVBoxLayout(held);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spaceUnit);
    column->addWidget(m_form);
    column->addWidget(m_others);
    column->addWidget(m_effects);
    column->addWidget(m_days);
    column->addStretch(1);
    m_hint->setMinimumHeight(m_hint->fontMetrics().height()); // nothing moves when it says something
    m_buttons->addStretch();
    m_buttons->addWidget(m_discard);
    m_buttons->addWidget(m_save);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addWidget(m_heading);
    auto* scroll = new SideScroll(held, this);
    scroll->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_warnings); // in view, wherever the form is scrolled to
    layout->addWidget(m_hint);
    layout->addWidget(saidLabel(prefix + "RowSaidLabel"));
    layout->addLayout(m_buttons);
}

NamesOfColumns namesFor(const core::Club& club, core::SheetId id, core::CalendarDay today) {
    const core::ClubRegister& register_ = club.register_();
    const core::Sheet& sheet = core::sheet(id);
    NamesOfColumns names;
    for (const core::Column& column : sheet.columns)
        if (column.type == core::CellType::Name && column.refersTo)
            for (const core::Cells& row : register_.rows(*column.refersTo))
                if (isRowHere(*column.refersTo, row, today)) names[std::string(column.name)] << text(row[0]);
    const auto addOf = [&](core::SheetId from, const std::string& column) {
        const auto at = static_cast<std::size_t>(core::sheet(from).indexOf(column));
        for (const core::Cells& row : register_.rows(from))
            if (const QString word = text(row[at]); !word.isEmpty()) names[column] << word;
        names[column].removeDuplicates();
    };
    if (id == core::SheetId::Boats)
        for (const core::SheetId from : {core::SheetId::Boats, core::SheetId::ManifestLines})
            addOf(from, "boat_class"); // the list of a class may be there before its first boat
    if (id == core::SheetId::LifeRules || id == core::SheetId::Parts) addOf(core::SheetId::LifeRules, "part");
    if (id == core::SheetId::LifeRules) addOf(core::SheetId::LifeRules, "event");
    if (id == core::SheetId::Items)
        for (const core::Cells& row : register_.rows(core::SheetId::Sizes))
            names["size of " + core::foldName(row[0])] << text(row[1]);
    return names;
}

void RowPanel::open(core::SheetId sheet, const core::Cells& row, const QString& heading) {
    m_isNew = false;
    m_given.clear();
    m_row = row;
    begin(sheet, heading);
}

void RowPanel::beginNew(core::SheetId sheet, const core::CellTexts& given, const QString& heading) {
    m_isNew = true;
    m_given = given;
    m_row.assign(core::sheet(sheet).columns.size(), {});
    begin(sheet, heading);
}

void RowPanel::begin(core::SheetId sheet, const QString& heading) {
    ++m_opened;
    m_isOpen = true;
    m_sheet = sheet;
    m_heading->setText(heading);
    std::vector<std::string> given;
    for (const auto& [column, cell] : m_given)
        given.push_back(column);
    m_form->begin(sheet, m_isNew, given);
    m_form->setStored(m_row);
    m_form->setTyped(keptDraft(draftPlace()));
    say({});
    m_others->hide();
    hideEffects();
    m_days->hide();
    tabThroughPage();
    readNames();
    adapt();
    m_wait->stop();
    if (isChanged() || isRule(sheet)) plan();
}

/// The fields are new: Tab goes through them where they stand on the page.
void RowPanel::tabThroughPage() {
    QWidget* page = this;
    while (page->parentWidget() && !qobject_cast<GearPage*>(page))
        page = page->parentWidget();
    tabAsLaidOut(*page);
}

void RowPanel::close() {
    ++m_opened;
    m_isOpen = false;
    m_wait->stop();
}

bool RowPanel::isOpenOn(core::SheetId sheet, const core::Cells& row) const {
    return m_isOpen && !m_isNew && m_sheet == sheet && m_row == row;
}

void RowPanel::readNames() {
    read([sheet = m_sheet, today = today()](core::Club& club) { return namesFor(club, sheet, today); },
         [this, opened = m_opened](const NamesOfColumns& names) {
             if (opened == m_opened) m_form->setNames(names);
         });
}

void RowPanel::edited() {
    if (!m_isOpen) return;
    say({});
    keepDraft();
    adapt();
    m_wait->start();
}

core::RegisterEdit RowPanel::edit() const {
    core::RowEdit row;
    row.cells = m_given;
    for (const auto& cell : m_form->changes())
        row.cells.push_back(cell);
    if (!m_isNew) {
        const core::Sheet& sheet = core::sheet(m_sheet);
        for (int at = 0; at < sheet.keyColumns; ++at)
            row.key.emplace_back(std::string(sheet.columns[static_cast<std::size_t>(at)].name),
                                 m_row[static_cast<std::size_t>(at)]);
        row.seen = m_row;
    }
    return {m_sheet, {std::move(row)}};
}

/// As it is typed, or given, or stored.
std::string RowPanel::cellNow(std::string_view column) const {
    const core::CellTexts cells = edit().rows.front().cells;
    for (const auto& [name, cell] : cells)
        if (name == column) return cell;
    return m_row[static_cast<std::size_t>(core::sheet(m_sheet).indexOf(column))];
}

QString RowPanel::draftPlace() const {
    const core::Sheet& sheet = core::sheet(m_sheet);
    QString key = m_isNew ? QStringLiteral("new") : QString::fromStdString(core::keyOf(sheet, m_row));
    for (const auto& [column, cell] : m_given)
        key += ' ' + QString::fromStdString(core::foldName(cell));
    const QString name = QString::fromLatin1(QUrl::toPercentEncoding(key));
    return draftsOf(
        QString::fromStdString(tools().club.file().string()),
        QStringLiteral("register/%1/%2").arg(QString::fromStdString(std::string(sheet.table)), name));
}

void RowPanel::keepDraft() {
    app::keepDraft(draftPlace(), m_form->typed());
}

/// One at a time, so that a slow club is not asked for each letter.
void RowPanel::plan() {
    m_mustPlan = m_isPlanning;
    if (m_isPlanning || !m_isOpen) return;
    m_isPlanning = true;
    ask(
        [edit = edit(), moment = tools().time(), isRule = isRule(m_sheet)](core::Club& club) {
            return Planned{club.register_().plan(edit, moment),
                           isRule ? club.answers().dueList(moment.today, core::howeverLate)
                                  : std::vector<core::DueRow>()};
        },
        [this, opened = m_opened](const Planned& planned) {
            m_isPlanning = false;
            if (opened == m_opened) takePlan(planned);
            if (m_mustPlan || opened != m_opened) plan();
        });
}

void RowPanel::takePlan(const Planned& planned) {
    if (m_mustPlan) return;                  // something else stands there by now
    if (!planned.plan) return hideEffects(); // saving says why
    refuse(planned.plan->rejected, false);
    showEffects(planned);
}

void RowPanel::showEffects(const Planned& planned) {
    m_effects->setText(effectsInLines(planned.plan->effects, today(), mostEffects));
    m_effects->setVisible(!m_effects->text().isEmpty());
    m_warnings->setText(planned.plan->changes.empty() ? QString()
                                                      : warningsInLines(planned.plan->warnings, mostWarned));
    m_warnings->setVisible(!m_warnings->text().isEmpty());
    if (!isRule(m_sheet)) return;
    m_days->setText(ruleDaysInWords({cellNow("kit_type"), cellNow("part"), cellNow("rule")},
                                    planned.plan->effects, planned.due, today()));
    m_days->setVisible(!m_days->text().isEmpty());
}

void RowPanel::hideEffects() {
    for (QLabel* label : {m_effects, m_warnings}) {
        label->clear();
        label->hide();
    }
}

void RowPanel::refuse(const std::vector<core::RejectedRow>& rejected, bool all) {
    const QStringList others = m_form->refuse(rejected, all);
    m_others->setText(others.join('\n'));
    m_others->setVisible(all && !others.isEmpty());
}

/// The first person of a club is written by themselves: there is nobody else.
std::string RowPanel::writer() {
    if (m_sheet == core::SheetId::People && tools().hasPeople && !tools().hasPeople()) {
        const std::string name = cellNow("person");
        if (!name.empty()) return name;
    }
    return officer();
}

void RowPanel::save() {
    m_wait->stop();
    const std::string by = writer();
    if (by.empty()) return;
    doAct([edit = edit(), by,
           moment = tools().time()](core::Club& club) { return club.register_().write(edit, by, moment); },
          [this, opened = m_opened](const core::Result<core::EditPlan>& done) {
              if (opened != m_opened) return;
              if (done)
                  afterWrite(*done);
              else
                  lookAgain(done.error());
          });
}

void RowPanel::afterWrite(const core::EditPlan& done) {
    if (!done.rejected.empty()) {
        refuse(done.rejected, true);
        m_form->takeKeyboard();
        say(tr("Not saved: something here is not possible yet."), true);
        return;
    }
    forgetDrafts(draftPlace());
    const QString name = m_isNew ? nameOfNew() : m_heading->text();
    m_isOpen = false;
    if (done.changes.empty()) return emit changed(tr("%1 stands so already.").arg(name), {});
    QString sentence = tr("%1: saved.").arg(name);
    // Whoever saves at once has not seen it yet.
    if (const QString warnings = warningsInLines(done.warnings, 1);
        !warnings.isEmpty() && m_warnings->isHidden())
        sentence += ' ' + warnings.section('\n', 0, 0);
    emit changed(sentence, keyOfRow(m_sheet, done.changes.front().keyCells));
}

/// By the names that were written; of a row that has none, what the form is about.
QString RowPanel::nameOfNew() const {
    const core::Sheet& sheet = core::sheet(m_sheet);
    QStringList names;
    for (int at = 0; at < sheet.keyColumns; ++at)
        if (const auto& column = sheet.columns[static_cast<std::size_t>(at)];
            column.type != core::CellType::Tag)
            names << text(cellNow(column.name)).trimmed();
    names.removeAll(QString());
    return names.isEmpty() ? m_heading->text() : names.join(QStringLiteral(", "));
}

/// Another may have changed the row: it is shown as it is by now, with what was typed over it.
void RowPanel::lookAgain(const core::Error& error) {
    sayError(error);
    if (m_isNew) return;
    const core::Sheet& sheet = core::sheet(m_sheet);
    core::Cells key(m_row.begin(), m_row.begin() + sheet.keyColumns);
    ask([id = m_sheet, key](core::Club& club) { return club.register_().row(id, key); },
        [this, opened = m_opened, error](const std::optional<core::Cells>& row) {
            if (opened != m_opened || !row || *row == m_row) return;
            const auto typed = m_form->typed();
            m_row = *row;
            m_form->setStored(m_row);
            m_form->setTyped(typed);
            adapt();
            sayError(error); // what is typed over it takes the sentence away
        });
}

void RowPanel::discard() {
    forgetDrafts(draftPlace());
    m_form->setStored(m_row);
    m_wait->stop();
    m_others->hide();
    hideEffects();
    say({});
    adapt();
    emit discarded();
}

void RowPanel::adapt() {
    const bool isChanged = m_isOpen && this->isChanged();
    m_save->setEnabled(isChanged);
    m_discard->setEnabled(isChanged || m_isNew);
}

} // namespace app
