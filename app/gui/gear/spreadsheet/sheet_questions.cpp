#include "app/gui/gear/spreadsheet/sheet_questions.h"

#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
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
    , m_list(new QVBoxLayout(this))
    , m_asked(new QVBoxLayout)
    , m_ofClub(new QVBoxLayout)
    , m_ofClubHeading(wordsLabel(this, "quiet", "sheetToldWordsLabel")) {
    setObjectName("sheetQuestions");
    m_list->setContentsMargins(0, 0, spaceUnit, 0);
    m_ofClubHeading->setText(tr("Words this club has told"));
    m_ofClubHeading->hide();
    m_list->addLayout(m_asked);
    m_list->addWidget(m_ofClubHeading);
    m_list->addLayout(m_ofClub);
    for (QVBoxLayout* lines : {m_list, m_asked, m_ofClub})
        lines->setSpacing(spaceUnit / 2);
}

/// A line that is laid nowhere yet.
SheetQuestions::WordLine SheetQuestions::addQuestion(const QString& question, const QString& name) {
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
    row->addWidget(label, 3);
    row->addWidget(box, 2);
    return {{}, false, line, label, box};
}

void SheetQuestions::askForDays(const QString& example, std::optional<core::DayOrder> days) {
    if (example.isEmpty()) return;
    if (!m_daysBox) {
        const WordLine days = addQuestion({}, QStringLiteral("spreadsheetDaysBox"));
        m_daysBox = days.box;
        m_days = days.line;
        m_daysBox->takeRoom(24); // its choices are sentences
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

void SheetQuestions::askForWords(core::SheetId sheet, const Asked& asked, const Words& told,
                                 const Words& ofClub) {
    Words all = ofClub;
    for (const auto& each : told)
        all.insert(each);
    const std::size_t most = all.size() + askedAtOnce;
    for (const auto& each : asked)
        if (all.size() < most) all.try_emplace(each);
    // What is asked still stays where it is, also because it may have the keyboard.
    const auto isGone = [&](const WordLine& word) {
        return sheet != m_sheet || !all.contains(word.place) || word.isOfClub != ofClub.contains(word.place);
    };
    for (const WordLine& word : m_words)
        if (isGone(word)) word.line->deleteLater();
    std::erase_if(m_words, isGone);
    m_sheet = sheet;
    for (const auto& [place, means] : all) {
        const auto isIt = [&place = place](const WordLine& word) { return word.place == place; };
        if (!columnOf(sheet, place.first) || std::any_of(m_words.begin(), m_words.end(), isIt)) continue;
        const bool isTold = told.contains(place) || ofClub.contains(place);
        m_words.push_back(addWord(place, isTold ? &means : nullptr, ofClub.contains(place)));
    }
    m_ofClubHeading->setVisible(
        std::any_of(m_words.begin(), m_words.end(), [](const WordLine& word) { return word.isOfClub; }));
}

QString SheetQuestions::questionOf(const Place& place, int rows) const {
    const QString word = text(place.second), column = columnInWords(m_sheet, place.first);
    if (rows == 0) return tr("“%1” as %2 means").arg(word, column);
    return tr("“%1” as %2, %3, means")
        .arg(word, column,
             counted(rows, QT_TRANSLATE_N_NOOP("Words", "in %n row"),
                     QT_TRANSLATE_N_NOOP("Words", "in %n rows")));
}

void SheetQuestions::showRows(const std::vector<core::WordApplied>& words) {
    for (const WordLine& line : m_words) {
        const auto applied = std::find_if(words.begin(), words.end(), [&](const core::WordApplied& each) {
            return each.column == line.place.first && each.word == line.place.second;
        });
        line.question->setText(questionOf(line.place, applied == words.end() ? 0 : applied->rows));
        line.box->setAccessibleName(line.question->text());
    }
}

SheetQuestions::WordLine SheetQuestions::addWord(const Place& place, const std::string* told, bool isOfClub) {
    const core::Column& column = *columnOf(m_sheet, place.first);
    const QString name = QString::fromStdString(place.first), theirs = QString::fromStdString(place.second);
    WordLine word = addQuestion(questionOf(place, 0), QStringLiteral("word %1").arg(theirs));
    word.place = place;
    word.isOfClub = isOfClub;
    ChoiceBox* box = word.box;
    box->addItem(tr("choose"), unanswered);
    for (const QString& choice : choicesOf(column))
        box->addItem(choiceInWords(column, choice.toStdString()), choice);
    box->addItem(tr("nothing: leave the cell empty"), nothing);
    if (told) {
        const QString ours = told->empty() ? nothing : QString::fromStdString(*told);
        if (box->findData(ours) < 0) box->addItem(text(ours), ours); // a name, say
        box->setCurrentIndex(box->findData(ours));
    }
    connect(box, &QComboBox::currentIndexChanged, this, [this, box, name, theirs](int index) {
        const QString ours = box->currentData().toString();
        if (index > 0) emit wordTold(name, theirs, ours == nothing ? QString() : ours);
    });
    if (isOfClub) addForget(word);
    (isOfClub ? m_ofClub : m_asked)->addWidget(word.line);
    return word;
}

void SheetQuestions::addForget(const WordLine& word) {
    auto* forget = wordsButton(word.line, tr("Forget"), "forget");
    const QString name = QString::fromStdString(word.place.first);
    const QString theirs = QString::fromStdString(word.place.second);
    forget->setObjectName(QStringLiteral("forget %1").arg(theirs));
    forget->setAccessibleName(tr("forget what “%1” means").arg(text(theirs)));
    word.line->layout()->addWidget(forget);
    connect(forget, &QPushButton::clicked, this, [this, name, theirs] { emit wordForgotten(name, theirs); });
}

void SheetQuestions::clear() {
    if (m_days) m_days->deleteLater();
    m_days = nullptr;
    m_daysBox = nullptr;
    for (const WordLine& word : m_words)
        word.line->deleteLater();
    m_words.clear();
    m_ofClubHeading->hide();
}

} // namespace app
