#include "app/gui/gear/spreadsheet/spreadsheet_page.h"

#include "app/gui/gear/spreadsheet/column_meanings.h"
#include "app/gui/gear/spreadsheet/sheet_questions.h"
#include "app/gui/gear/spreadsheet/sheet_reading.h"
#include "app/gui/gear/spreadsheet/sheet_table_model.h"
#include "app/gui/gear/spreadsheet/sheet_table_view.h"
#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"

#include <QCheckBox>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace app {

using core::SheetId;

namespace {

constexpr int mostWarnedRows = 2; ///< told beneath the table, which has them all

} // namespace

SpreadsheetPage::SpreadsheetPage(GearTools given, QWidget* parent)
    : GearPage(std::move(given), "spreadsheetPage", parent)
    , m_choose(wordsButton(this, tr("Choose a spreadsheet…"), "spreadsheetChooseButton", true))
    , m_file(wordsLabel(this, "remark", "spreadsheetFileLabel"))
    , m_below(new QWidget(this))
    , m_tables(new ChoiceBox(m_below))
    , m_kind(new ChoiceBox(m_below))
    , m_questions(new SheetQuestions)
    , m_model(new SheetTableModel(this))
    , m_table(new SheetTableView(*m_model, m_below))
    , m_meanings(new ColumnMeanings(*m_table, m_below))
    , m_row(wordsLabel(m_below, "look", "spreadsheetRowLabel"))
    , m_summary(wordsLabel(m_below, "heading", "spreadsheetSummaryLabel"))
    , m_warnings(wordsLabel(m_below, "look", "spreadsheetWarningsLabel"))
    , m_next(wordsButton(m_below, {}, "spreadsheetNextButton"))
    , m_import(wordsButton(m_below, tr("Import all rows"), "spreadsheetImportButton", true)) {
    m_clubFile = tools().club.file();
    build();
    connectParts();
    adapt();
}

SpreadsheetPage::~SpreadsheetPage() = default;

void SpreadsheetPage::connectParts() {
    connect(m_choose, &QPushButton::clicked, this, &SpreadsheetPage::chooseFile);
    connect(m_kind, &QComboBox::currentIndexChanged, this,
            [this] { setKind(static_cast<SheetId>(m_kind->currentData().toInt())); });
    connect(m_tables, &QComboBox::currentIndexChanged, this, [this] {
        m_choices.table = m_tables->currentData().toString().toStdString();
        forgetMeanings();
        plan();
    });
    for (const MakeBox& each : m_make)
        connect(each.box, &QCheckBox::toggled, this, [this, sheet = each.sheet](bool isMade) {
            if (isMade)
                m_choices.make.insert(sheet);
            else
                m_choices.make.erase(sheet);
            plan();
        });
    connect(m_meanings, &ColumnMeanings::meaningChosen, this, &SpreadsheetPage::chooseMeaning);
    connect(m_questions, &SheetQuestions::daysTold, this, [this](core::DayOrder days) {
        m_choices.days = days;
        plan();
    });
    connect(m_questions, &SheetQuestions::wordTold, this,
            [this](const QString& column, const QString& word, const QString& ours) {
                m_choices.words[{column.toStdString(), word.toStdString()}] = ours.toStdString();
                m_said[m_choices.sheet] = m_choices.words;
                plan();
            });
    connect(m_questions, &SheetQuestions::wordForgotten, this, &SpreadsheetPage::forgetWord);
    connect(m_table, &SheetTableView::rowChanged, this, &SpreadsheetPage::showCurrentRow);
    connect(m_next, &QPushButton::clicked, this, &SpreadsheetPage::goToNextReason);
    connect(m_import, &QPushButton::clicked, this, &SpreadsheetPage::importIt);
}

/// The register may have changed meanwhile; what was read for another club is not this one's.
void SpreadsheetPage::refresh() {
    if (m_clubFile != tools().club.file()) {
        m_clubFile = tools().club.file();
        m_book.reset();
        m_planned = {};
        m_said.clear();
        m_isReading = m_isPlanning = false;
        ++m_turn; // what was asked of the other club is not answered any more
        say({});
        adapt();
    }
    if (m_book) plan();
}

void SpreadsheetPage::chooseFile() {
    const QString path = tools().choosers.spreadsheet ? tools().choosers.spreadsheet(this) : QString();
    if (!path.isEmpty()) readFile(path);
}

void SpreadsheetPage::readFile(const QString& path) {
    struct Read {
        std::optional<core::Workbook> book;
        std::optional<core::Error> error;
        SheetId kind = SheetId::Items;
    };
    if (m_isReading) return;
    m_isReading = true;
    say(tr("%1 is being read…").arg(text(QFileInfo(path).fileName())));
    adapt();
    ask(
        [file = path.toStdString()](core::Club& club) {
            auto book = core::readWorkbook(std::filesystem::path(file));
            if (!book) return Read{std::nullopt, book.error()};
            const SheetId kind = likelyKind(club, *book);
            return Read{std::move(book).value(), std::nullopt, kind};
        },
        [this, path, turn = m_turn](Read read) {
            if (turn != m_turn) return;
            m_isReading = false;
            if (!read.error) return takeBook(path, std::move(*read.book), read.kind);
            adapt();
            sayError(*read.error); // what was read before stays
        });
}

void SpreadsheetPage::takeBook(const QString& path, core::Workbook book, SheetId kind) {
    m_book = std::make_shared<const core::Workbook>(std::move(book));
    m_choices = {};
    m_planned = {};
    m_file->setText(text(QFileInfo(path).fileName()));
    m_file->setToolTip(text(path));
    m_questions->clear();
    m_meanings->clear();
    m_model->clear();
    say({});
    {
        const QSignalBlocker quiet(m_tables);
        m_tables->clear();
        m_tables->addItem(tr("the fullest"), QString());
        for (const core::SheetTable& table : m_book->tables)
            m_tables->addItem(text(table.name), QString::fromStdString(table.name));
    }
    m_tables->setEnabled(m_book->tables.size() > 1);
    for (const MakeBox& each : m_make) {
        const QSignalBlocker quiet(each.box);
        each.box->setChecked(false);
    }
    const QSignalBlocker quiet(m_kind);
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(kind)));
    setKind(kind);
    m_kind->setFocus(Qt::OtherFocusReason);
}

void SpreadsheetPage::forgetMeanings() {
    m_picked.clear();
    m_choices.columns.clear();
}

void SpreadsheetPage::setKind(SheetId sheet) {
    m_choices.sheet = sheet;
    forgetMeanings(); // of other rows
    m_choices.words = m_said[sheet];
    for (const MakeBox& each : m_make) {
        each.box->setVisible(mayLack(sheet, each.sheet));
        if (!mayLack(sheet, each.sheet))
            m_choices.make.erase(each.sheet);
        else if (each.box->isChecked())
            m_choices.make.insert(each.sheet);
    }
    m_below->findChild<QLabel*>("spreadsheetMakeLabel")
        ->setVisible(std::any_of(m_make.begin(), m_make.end(),
                                 [&](const MakeBox& each) { return mayLack(sheet, each.sheet); }));
    plan();
}

/// A meaning that another column had goes over to this one, and back when this one gets another: whoever goes
/// through the list by keys passes by meanings that are not meant.
void SpreadsheetPage::chooseMeaning(const QString& heading, const QString& meaning) {
    const std::string own = heading.toStdString();
    std::erase_if(m_picked, [&](const auto& each) { return each.first == own; });
    m_picked.emplace_back(own, meaning.toStdString());
    m_choices.columns.clear();
    std::set<std::string> taken;
    for (auto pick = m_picked.rbegin(); pick != m_picked.rend(); ++pick)
        if (pick->second.empty() || taken.insert(pick->second).second) m_choices.columns.push_back(*pick);
    plan();
}

/// One plan at a time: a choice that is changed meanwhile is planned when that one is there.
void SpreadsheetPage::plan() {
    if (!m_book) return;
    m_mustPlan = m_isPlanning;
    if (m_isPlanning) return;
    m_isPlanning = true;
    adapt();
    ask([book = m_book, choices = m_choices,
         day = today()](core::Club& club) { return plannedSheet(club, *book, choices, day); },
        [this, turn = m_turn](PlannedSheet planned) {
            if (turn != m_turn) return;
            m_isPlanning = false;
            if (m_mustPlan) return plan(); // of another choice, or another spreadsheet
            takePlan(std::move(planned));
        });
}

void SpreadsheetPage::takePlan(PlannedSheet planned) {
    m_planned = std::move(planned);
    showLayout();
    showQuestions();
    showPlan();
    adapt();
}

void SpreadsheetPage::showLayout() {
    if (!m_planned.layout) return m_model->clear();
    const core::TableLayout& layout = *m_planned.layout;
    const auto isSame = [](const core::TableColumn& a, const core::TableColumn& b) {
        return a.at == b.at && a.heading == b.heading;
    };
    const core::TableLayout& shown = m_model->layout();
    if (shown.table != layout.table || shown.headingRow != layout.headingRow ||
        !std::equal(shown.columns.begin(), shown.columns.end(), layout.columns.begin(), layout.columns.end(),
                    isSame))
        m_model->setTable(m_book, layout);
    m_meanings->setLayoutOf(layout, m_choices.sheet, SheetTableModel::ownColumns);
}

void SpreadsheetPage::showQuestions() {
    if (m_planned.error && m_planned.error->code == core::ErrorCode::DayAmbiguous)
        m_questions->askForDays(QString::fromStdString(m_planned.error->arguments.front()), m_choices.days);
    SheetQuestions::Words told, ofClub;
    for (const auto& [where, ours] : m_planned.told)
        ofClub.emplace(where, m_choices.words.contains(where) ? m_choices.words.at(where) : ours);
    for (const auto& [where, ours] : m_choices.words)
        if (m_planned.layout && m_planned.layout->meaning(where.first)) told.emplace(where, ours);
    const auto asked = m_planned.plan ? unknownWords(*m_planned.plan, *m_book) : SheetQuestions::Asked();
    m_questions->askForWords(m_choices.sheet, asked, told, ofClub);
    m_questions->showRows(m_planned.plan ? m_planned.plan->words : std::vector<core::WordApplied>());
    tabAsLaidOut(*this);
    m_meanings->putBehind(*m_make.back().box);
}

QString SpreadsheetPage::planAndWords(const core::ClubSheetPlan& plan) const {
    const QString words = wordsAppliedInWords(m_choices.sheet, plan.words);
    return words.isEmpty() ? planInWords(plan.plan) : planInWords(plan.plan) + ' ' + words;
}

void SpreadsheetPage::showPlan() {
    const bool isRefused = m_planned.plan && !m_planned.plan->plan.rejected.empty();
    const auto& reasons = isRefused ? m_planned.plan->plan.rejected : warnings();
    m_model->setReasons(reasons, isRefused ? SheetTableModel::Told::Refused : SheetTableModel::Told::Warned,
                        m_choices.sheet);
    m_table->setReasonShown(!reasons.empty());
    m_next->setText(isRefused ? tr("Next refused row") : tr("Next such row"));
    if (m_planned.error) {
        m_summary->setText(hindranceInWords(m_choices.sheet, *m_planned.error));
    } else if (m_planned.plan) {
        const core::ImportPlan& plan = m_planned.plan->plan;
        std::set<int> rows;
        for (const core::RejectedRow& row : plan.rejected)
            rows.insert(row.row);
        if (isRefused)
            m_summary->setText(
                counted(static_cast<int>(rows.size()),
                        QT_TRANSLATE_N_NOOP("Words", "%n row is refused, so nothing is imported yet."),
                        QT_TRANSLATE_N_NOOP("Words", "%n rows are refused, so nothing is imported yet.")));
        else if (plan.changes.empty())
            m_summary->setText(tr("Nothing would change: all of it is in the register already."));
        else
            m_summary->setText(planAndWords(*m_planned.plan));
    }
    showCurrentRow();
}

/// Of a plan that changes nothing they are of the register as it is.
const std::vector<core::RejectedRow>& SpreadsheetPage::warnings() const {
    static const std::vector<core::RejectedRow> none;
    return m_planned.plan && !m_planned.plan->plan.changes.empty() ? m_planned.plan->plan.warnings : none;
}

void SpreadsheetPage::forgetWord(const QString& column, const QString& word) {
    const std::pair place{column.toStdString(), word.toStdString()};
    write(
        [place, sheet = m_choices.sheet](core::Club& club, const std::string& by, core::Moment) {
            return club.register_().forgetWords({{place.second, place.first, sheet}}, by);
        },
        [this, place, word, turn = m_turn](const std::vector<core::ToldWord>&) {
            if (turn != m_turn) return;
            m_choices.words.erase(place);
            m_said[m_choices.sheet] = m_choices.words;
            say(tr("What “%1” means is asked again.").arg(text(word)));
            m_table->setFocus(Qt::OtherFocusReason); // its line goes
            plan();
        });
}

void SpreadsheetPage::goToNextReason() {
    const int row =
        m_model->nextWithReason(m_table->currentIndex().isValid() ? m_table->currentIndex().row() : -1);
    if (row < 0) return;
    m_table->goTo(row);
    m_table->setFocus(Qt::OtherFocusReason);
}

/// Of many that may not be meant so, those from that row on are told.
void SpreadsheetPage::showCurrentRow() {
    const int row = m_table->currentIndex().row();
    m_row->setText(warnings().empty() ? withCapital(m_model->reasonOf(row)) : QString());
    m_row->setVisible(!m_row->text().isEmpty());
    const int number = m_model->index(row, SheetTableModel::NumberColumn).data().toInt();
    const auto first = std::find_if(warnings().begin(), warnings().end(),
                                    [&](const auto& each) { return each.row == number; });
    const auto place = first == warnings().end() ? 0 : first - warnings().begin();
    m_warnings->setText(warnedRowsInWords(warnings(), static_cast<std::size_t>(place), mostWarnedRows));
}

void SpreadsheetPage::importIt() {
    m_isPlanning = true;
    say(tr("The rows are being imported…"));
    adapt();
    doAct([book = m_book, choices = m_choices, day = today()](
              core::Club& club) { return club.register_().importClubSheet(*book, choices, day, false); },
          [this, turn = m_turn](const core::Result<core::ClubSheetPlan>& done) {
              if (turn != m_turn) return;
              m_isPlanning = false;
              if (!done) {
                  sayError(done.error());
              } else if (done->plan.rejected.empty()) {
                  m_said.erase(m_choices.sheet); // they are the club's now
                  m_choices.words.clear();
                  say(tr("Imported. %1").arg(planAndWords(*done)));
              } else {
                  say({}); // somebody wrote meanwhile: the new plan says which rows
              }
              plan();
          });
}

void SpreadsheetPage::adapt() {
    m_below->setVisible(m_book != nullptr);
    if (!m_book) m_file->setText(tr("An .xlsx, .ods, .csv or .tsv file, such as the club's list of kit."));
    m_choose->setProperty("role", m_book ? "" : "usual");
    m_choose->style()->unpolish(m_choose);
    m_choose->style()->polish(m_choose);
    m_choose->setEnabled(!m_isReading);
    const bool isGood =
        m_planned.plan && m_planned.plan->plan.rejected.empty() && !m_planned.plan->plan.changes.empty();
    m_import->setEnabled(isGood && !isBusy());
    m_warnings->setVisible(!warnings().empty());
    m_next->setVisible(m_warnings->isVisibleTo(m_below) ||
                       (m_planned.plan && !m_planned.plan->plan.rejected.empty()));
    if (m_isPlanning && m_book && !m_planned.layout) m_summary->setText(tr("The rows are being looked at…"));
}

} // namespace app
