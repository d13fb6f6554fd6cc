#include "app/gui/gear/register/row_form.h"

#include "app/gui/gear/register/cell_field.h"
#include "app/gui/gear/register/rule_sentence.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/contract_words.h"
#include "app/text/errors.h"
#include "app/text/register_words.h"
#include "app/text/words.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

RowForm::RowForm(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QVBoxLayout(this)) {
    m_layout->setContentsMargins(0, 0, 0, 0);
}

RowForm::~RowForm() = default;

void RowForm::clear() {
    m_fields.clear();
    m_sentence = nullptr;
    delete m_body;
    m_body = nullptr;
}

void RowForm::begin(core::SheetId id, bool isNew, const std::vector<std::string>& given) {
    clear();
    m_sheet = id;
    const core::Sheet& sheet = core::sheet(id);
    m_stored.assign(sheet.columns.size(), {});
    m_body = new QWidget(this);
    for (std::size_t at = 0; at < sheet.columns.size(); ++at) {
        const core::Column& column = sheet.columns[at];
        const bool isKey = static_cast<int>(at) < sheet.keyColumns;
        const bool isMinted = column.type == core::CellType::Tag && column.refersTo == core::SheetId::Items;
        if ((isKey && (!isNew || isMinted)) ||
            std::find(given.begin(), given.end(), column.name) != given.end())
            continue;
        CellField* field = makeCellField(sheet, column, m_body);
        m_fields.push_back(field);
        connect(field, &CellField::edited, this, [this] {
            adaptNames();
            emit cellEdited();
        });
    }
    if (id == core::SheetId::LifeRules) {
        m_sentence = new RuleSentence(m_fields, m_body);
    } else {
        auto* grid = new QGridLayout(m_body);
        grid->setContentsMargins(0, 0, spaceUnit, 0);
        grid->setVerticalSpacing(spaceUnit / 2);
        grid->setHorizontalSpacing(2 * spaceUnit);
        grid->setColumnStretch(1, 1);
        for (std::size_t i = 0; i < m_fields.size(); ++i)
            addToGrid(*m_fields[i], static_cast<int>(i));
    }
    m_layout->addWidget(m_body);
}

void RowForm::addToGrid(CellField& field, int row) {
    auto* grid = static_cast<QGridLayout*>(m_body->layout());
    const core::Column& column = field.column();
    if (column.type == core::CellType::YesNo) { // it has its word itself
        grid->addWidget(&field, row, 1);
        return;
    }
    QLabel* label = wordsIn("quiet", withCapital(columnInWords(m_sheet, column.name)), m_body);
    label->setTextFormat(Qt::PlainText);
    label->setBuddy(field.input());
    grid->addWidget(label, row, 0, Qt::AlignTop);
    label->setMinimumHeight(field.input()->sizeHint().height());
    grid->addWidget(&field, row, 1);
}

void RowForm::setStored(const core::Cells& row) {
    m_stored = row;
    for (CellField* field : m_fields)
        field->setStored(row[static_cast<std::size_t>(core::sheet(m_sheet).indexOf(field->column().name))]);
    if (m_sentence) m_sentence->adapt();
    adaptNames();
}

void RowForm::setNames(const NamesOfColumns& names) {
    m_names = names;
    for (CellField* field : m_fields)
        if (const auto found = names.find(field->column().name); found != names.end())
            field->setNames(found->second);
    adaptNames();
}

/// Sizes are those of the kit type that is chosen.
void RowForm::adaptNames() {
    CellField* size = field("size");
    if (m_sheet != core::SheetId::Items || !size) return;
    const CellField* kitType = field("kit_type");
    const std::string type = kitType ? kitType->cell() : m_stored[1];
    const auto found = m_names.find("size of " + core::foldName(type));
    size->setNames(found == m_names.end() ? QStringList() : found->second);
}

core::CellTexts RowForm::changes() const {
    core::CellTexts cells;
    for (const CellField* field : m_fields) {
        const std::string name(field->column().name);
        const std::string& stored = m_stored[static_cast<std::size_t>(core::sheet(m_sheet).indexOf(name))];
        // A gap that the sentence of this kind of rule has not is empty.
        const std::string cell = m_sentence && !m_sentence->asks(name) ? std::string() : field->cell();
        if (cell != stored) cells.emplace_back(name, cell);
    }
    return cells;
}

std::map<QString, QString> RowForm::typed() const {
    std::map<QString, QString> typed;
    for (const CellField* field : m_fields)
        if (field->isEdited())
            typed[QString::fromStdString(std::string(field->column().name))] = field->typed();
    return typed;
}

void RowForm::setTyped(const std::map<QString, QString>& typed) {
    for (const auto& [column, words] : typed)
        if (CellField* each = field(column.toStdString())) each->setTyped(words);
}

CellField* RowForm::field(std::string_view column) const {
    const auto found = std::find_if(m_fields.begin(), m_fields.end(),
                                    [&](const CellField* each) { return each->column().name == column; });
    return found == m_fields.end() ? nullptr : *found;
}

QStringList RowForm::refuse(const std::vector<core::RejectedRow>& rejected, bool all) {
    for (CellField* each : m_fields)
        each->refuse({});
    QStringList others;
    for (const core::RejectedRow& row : rejected) {
        const QString reason = withCapital(inWordsOfForms(rejectionInWords(row.reason))) + '.';
        CellField* at = field(row.column);
        if (!at || (m_sentence && !m_sentence->asks(row.column)))
            others << reason;
        else if ((all || at->isEdited()) && at->refusal().isEmpty())
            at->refuse(reason);
    }
    if (m_sentence) m_sentence->fitGaps();
    return others;
}

QString RowForm::hint() const {
    for (const CellField* each : m_fields)
        if (each->input()->hasFocus()) return each->hint();
    return {};
}

void RowForm::takeKeyboard() {
    if (m_fields.empty()) return;
    const auto refused = std::find_if(m_fields.begin(), m_fields.end(),
                                      [](const CellField* each) { return !each->refusal().isEmpty(); });
    CellField* first = field("rule") ? field("rule") : m_fields.front(); // a new rule begins with its name
    CellField* to = refused == m_fields.end() ? first : *refused;
    to->input()->setFocus(Qt::OtherFocusReason);
}

} // namespace app
