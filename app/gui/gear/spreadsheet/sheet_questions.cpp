#include "app/gui/gear/spreadsheet/sheet_questions.h"

#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/text/register_words.h"
#include "app/text/text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr std::size_t askedAtOnce = 8;
const QString nothing = QStringLiteral("nothing"), unanswered = QStringLiteral("unanswered");

const core::Column* columnOf(core::SheetId sheet, const std::string& name) {
    const int at = core::sheet(sheet).indexOf(name);
    return at < 0 ? nullptr : &core::sheet(sheet).columns[static_cast<std::size_t>(at)];
}

QStringList choicesOf(const core::Column& column) {
    if (column.type == core::CellType::YesNo) return {QStringLiteral("yes"), QStringLiteral("no")};
    QStringList choices;
    for (const std::string_view choice : column.choices)
        choices << QString::fromUtf8(choice.data(), static_cast<qsizetype>(choice.size()));
    return choices;
}

} // namespace

SheetQuestions::SheetQuestions(QWidget* parent)
    : QWidget(parent)
    , m_list(new QVBoxLayout(this)) {
    setObjectName("sheetQuestions");
    m_list->setContentsMargins(0, 0, spaceUnit, 0);
    m_list->setSpacing(spaceUnit / 2);
}

ChoiceBox* SheetQuestions::addQuestion(const QString& question, const QString& name) {
    auto* line = new QWidget(this);
    auto* box = new ChoiceBox(line);
    box->setObjectName(name);
    box->setAccessibleName(question);
    box->setAccessibleDescription(tr("The rows are read by what is chosen here."));
    box->takeRoom(12);
    auto* label = new QLabel(question, line);
    label->setProperty("role", "remark");
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setBuddy(box);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins({});
    row->setSpacing(2 * spaceUnit);
    row->addWidget(label, 1);
    row->addWidget(box, 1);
    m_list->addWidget(line);
    return box;
}

void SheetQuestions::askForDays(const QString& example, std::optional<core::DayOrder> days) {
    if (example.isEmpty()) return;
    if (!m_daysBox) {
        m_daysBox = addQuestion({}, QStringLiteral("spreadsheetDaysBox"));
        m_days = m_daysBox->parentWidget();
        m_list->removeWidget(m_days);
        m_list->insertWidget(0, m_days);
        m_daysBox->addItem(tr("choose"), unanswered);
        m_daysBox->addItem(tr("the day first, then the month"), static_cast<int>(core::DayOrder::DayFirst));
        m_daysBox->addItem(tr("the month first, then the day"), static_cast<int>(core::DayOrder::MonthFirst));
        connect(m_daysBox, &QComboBox::currentIndexChanged, this, [this](int index) {
            if (index > 0) emit daysTold(static_cast<core::DayOrder>(m_daysBox->currentData().toInt()));
        });
    }
    const QString question = tr("Days such as %1 have").arg(text(example));
    m_days->findChild<QLabel*>()->setText(question);
    m_daysBox->setAccessibleName(question);
    const QSignalBlocker quiet(m_daysBox);
    m_daysBox->setCurrentIndex(days ? m_daysBox->findData(static_cast<int>(*days)) : 0);
}

void SheetQuestions::askForWords(core::SheetId sheet, const Asked& asked, const Words& told) {
    Asked all;
    for (const auto& [where, ours] : told)
        all.push_back(where);
    for (const auto& each : asked)
        if (all.size() < told.size() + askedAtOnce && std::find(all.begin(), all.end(), each) == all.end())
            all.push_back(each);
    // What is asked still stays where it is, also because it may have the keyboard.
    const auto isGone = [&](const auto& line) {
        return sheet != m_sheet || std::find(all.begin(), all.end(), line.first) == all.end();
    };
    for (const auto& line : m_words)
        if (isGone(line)) line.second->deleteLater();
    std::erase_if(m_words, isGone);
    m_sheet = sheet;
    for (const auto& each : all) {
        const auto isIt = [&](const auto& line) { return line.first == each; };
        const core::Column* column = columnOf(sheet, each.first);
        if (!column || std::any_of(m_words.begin(), m_words.end(), isIt)) continue;
        const auto said = told.find(each);
        m_words.emplace_back(each,
                             addWord(*column, each.second, said == told.end() ? nullptr : &said->second));
    }
}

QWidget* SheetQuestions::addWord(const core::Column& column, const std::string& word,
                                 const std::string* told) {
    const QString name = QString::fromUtf8(column.name.data(), static_cast<qsizetype>(column.name.size()));
    ChoiceBox* box = addQuestion(tr("“%1” as %2 means").arg(text(word), columnInWords(m_sheet, column.name)),
                                 QStringLiteral("word %1").arg(QString::fromStdString(word)));
    box->addItem(tr("choose"), unanswered);
    for (const QString& choice : choicesOf(column))
        box->addItem(choiceInWords(column, choice.toStdString()), choice);
    box->addItem(tr("nothing: leave the cell empty"), nothing);
    if (told) box->setCurrentIndex(box->findData(told->empty() ? nothing : QString::fromStdString(*told)));
    connect(box, &QComboBox::currentIndexChanged, this,
            [this, box, name, word = QString::fromStdString(word)](int index) {
                const QString ours = box->currentData().toString();
                if (index > 0) emit wordTold(name, word, ours == nothing ? QString() : ours);
            });
    return box->parentWidget();
}

void SheetQuestions::clear() {
    if (m_days) m_days->deleteLater();
    m_days = nullptr;
    m_daysBox = nullptr;
    for (const auto& line : m_words)
        line.second->deleteLater();
    m_words.clear();
}

} // namespace app
