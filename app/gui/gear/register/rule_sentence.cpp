#include "app/gui/gear/register/rule_sentence.h"

#include "app/gui/gear/register/cell_field.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/text/register_words.h"

#include <QCoreApplication>
#include <QLabel>
#include <QRegularExpression>

#include <algorithm>

namespace app {
namespace {

struct RuleText {
    Q_DECLARE_TR_FUNCTIONS(RuleSentence)
};

/// What the rule asks; {…} is a gap, to be filled with that column.
QString beginningOf(const std::string& kind) {
    if (kind == "stamped") return RuleText::tr("{kind} on it,");
    if (kind == "from_made") return RuleText::tr("{kind} : {n} after it was made,");
    if (kind == "from_first_use") return RuleText::tr("{kind} : {n} later,");
    if (kind == "year_end_from_made") return RuleText::tr("{kind} , the one {n} after it was made,");
    if (kind == "inspect_every") return RuleText::tr("{kind} every {n} , with age {steps} ,");
    if (kind == "service_every") return RuleText::tr("{kind} every {n} , with age {steps} ,");
    if (kind == "every_hours") return RuleText::tr("{kind} , every {n} of use, with age {steps} ,");
    if (kind == "every_uses") return RuleText::tr("{kind} , every {n} , with age {steps} ,");
    if (kind == "after_event") return RuleText::tr("{kind} : {event} ,");
    return RuleText::tr("{kind}");
}

constexpr int marginsOfField = 48, widthOfReason = 360; // pixels

/// How wide a gap is, in letters.
int lettersOf(std::string_view column) {
    if (column == "n" || column == "lead_days") return 4;
    if (column == "steps") return 12;
    if (column == "tolerance") return 16;
    if (column == "source") return 28;
    if (column == "kind") return 20;
    return column == "severity" || column == "undated" ? 16 : 13;
}

} // namespace

QString ruleTemplate(const std::string& kind, bool isNew) {
    QString sentence = isNew ? RuleText::tr("Rule {rule} for the part {part} :") + ' ' : QString();
    sentence += beginningOf(kind);
    if (kind.empty()) return sentence;
    const bool ends = kind == "stamped" || kind.starts_with("from_") || kind == "year_end_from_made";
    return sentence + ' ' +
           (ends ? RuleText::tr("{severity} after that day, {lead_days} days' notice, tolerance "
                                "{tolerance} , {strict} , {undated} where no date is known, source {source}")
                 : RuleText::tr("{severity} when overdue, {lead_days} days' notice, tolerance {tolerance} , "
                                "{strict} , {undated} where no date is known, source {source}"));
}

RuleSentence::RuleSentence(std::vector<CellField*> fields, QWidget* parent)
    : QObject(parent)
    , m_parent(*parent)
    , m_fields(std::move(fields))
    , m_kind("none yet")
    , m_flow(new FlowLayout(parent)) {
    m_flow->setContentsMargins(0, 0, 0, 0);
    connect(field("kind"), &CellField::edited, this, &RuleSentence::adapt);
    adapt();
}

CellField* RuleSentence::field(std::string_view column) const {
    const auto found = std::find_if(m_fields.begin(), m_fields.end(),
                                    [&](const CellField* each) { return each->column().name == column; });
    return found == m_fields.end() ? nullptr : *found;
}

bool RuleSentence::asks(std::string_view column) const {
    return std::find(m_asked.begin(), m_asked.end(), column) != m_asked.end();
}

void RuleSentence::addWords(const QString& words) {
    QStringList all = words.split(' ', Qt::SkipEmptyParts);
    if (all.size() > 1 && all.front().size() == 1 && !all.front().at(0).isLetterOrNumber()) {
        all[1].prepend(all.front() + ' '); // a mark begins no line
        all.removeFirst();
    }
    for (const QString& word : all) {
        QLabel* label = wordsLabel(&m_parent, "remark", "ruleWord");
        label->setWordWrap(false);
        label->setText(word);
        m_words.push_back(label);
        m_flow->addWidget(label);
        label->show();
    }
}

void RuleSentence::addGap(CellField& gap) {
    m_asked.emplace_back(gap.column().name);
    m_flow->addWidget(&gap);
    gap.show();
}

/// As wide as what stands in it; a reason beneath needs room to be read.
void RuleSentence::fitGaps() {
    for (CellField* gap : m_fields) {
        if (gap->column().type == core::CellType::YesNo) continue;
        const int letters = lettersOf(gap->column().name) + (gap->column().name == "n" ? 8 : 0);
        const int width = gap->input()->fontMetrics().averageCharWidth() * letters + marginsOfField;
        gap->setFixedWidth(gap->refusal().isEmpty() ? width : std::max(width, widthOfReason));
    }
}

void RuleSentence::adapt() {
    const std::string kind = field("kind")->cell();
    if (kind == m_kind) return;
    m_kind = kind;
    while (QLayoutItem* item = m_flow->takeAt(0))
        delete item;
    for (QWidget* word : m_words)
        word->deleteLater();
    for (QWidget* word : m_words)
        word->hide();
    m_words.clear();
    m_asked.clear();
    if (CellField* n = field("n")) n->setUnit(countedBy(kind));
    static const QRegularExpression gaps("\\{([a-z_]+)\\}");
    const QString sentence = ruleTemplate(kind, field("rule") != nullptr);
    qsizetype at = 0;
    for (auto match = gaps.globalMatch(sentence); match.hasNext();) {
        const auto gap = match.next();
        addWords(sentence.mid(at, gap.capturedStart() - at));
        if (CellField* each = field(gap.captured(1).toStdString())) addGap(*each);
        at = gap.capturedEnd();
    }
    addWords(sentence.mid(at));
    for (CellField* each : m_fields)
        if (!asks(each->column().name)) each->hide();
    fitGaps();
    tabAsLaidOut(m_parent);
}

} // namespace app
