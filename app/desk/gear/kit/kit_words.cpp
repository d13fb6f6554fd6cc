#include "app/desk/gear/kit/kit_words.h"

#include "app/common/sentences.h"
#include "app/common/words.h"
#include "app/desk/gear/record/history_words.h"
#include "app/desk/gear/shared/plain_list_model.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(Kit)
};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

Mark markOf(const core::Item& item) {
    switch (item.state) {
    case core::ItemState::Serviceable:
        return Mark::Found;
    case core::ItemState::Missing:
        return Mark::StillToFind;
    case core::ItemState::Unserviceable:
        return Mark::Look;
    case core::ItemState::WrittenOff:
        break;
    }
    return Mark::NotAsked;
}

QString daysOf(const std::optional<core::PartialDay>& made, const std::optional<core::PartialDay>& firstUse,
               const std::optional<core::PartialDay>& stamped) {
    QStringList words;
    if (made) words << Say::tr("made %1").arg(text(made->text()));
    if (firstUse) words << Say::tr("first used %1").arg(text(firstUse->text()));
    if (stamped) words << Say::tr("stamped %1").arg(text(stamped->text()));
    return words.join(Say::tr(", "));
}

/// A count has no day before it is reached.
QString withoutDay(const core::RuleDue& due) {
    if (due.state == core::DueState::Undated) return Say::tr("undated");
    if (due.state != core::DueState::Later) return Say::tr("due now");
    if (due.rule.kind == core::RuleKind::AfterEvent) return Say::tr("not due: nothing has happened");
    return Say::tr("not due: %1 of %2")
        .arg(numberInWords(due.counted.value_or(0)), numberInWords(due.rule.n));
}

QString dayOf(const core::RuleDue& due) {
    if (!due.due) return withoutDay(due);
    const QString day = inWords(*due.due);
    switch (due.state) {
    case core::DueState::Passed:
        return Say::tr("passed on %1").arg(day);
    case core::DueState::WithinTolerance:
        return Say::tr("passed on %1, within tolerance").arg(day);
    case core::DueState::DueSoon:
        return Say::tr("due soon, on %1").arg(day);
    default:
        return Say::tr("due on %1").arg(day);
    }
}

Mark markOf(const core::RuleDue& due) {
    if (due.isPassedStop()) return Mark::Look;
    return due.state == core::DueState::Later ? Mark::Found : Mark::StillToFind;
}

QString markWordOf(const core::RuleDue& due) {
    if (due.isPassedStop()) return Say::tr("does not count any more");
    return due.state == core::DueState::Later ? Say::tr("good") : Say::tr("soon, or remarked");
}

class Lines {
public:
    Lines(const ItemAnswer& answer, core::CalendarDay today)
        : m_answer(answer)
        , m_today(today) {}

    std::vector<CheckRow> all() && {
        addDates();
        addParts();
        addLog();
        addHistory();
        return std::move(m_rows);
    }

private:
    void head(const QString& key, const QString& title, std::size_t count) {
        m_rows.push_back(headingRow(key, title, QString::number(count)));
    }

    void addDates() {
        head("dates", Say::tr("dates"), m_answer.dues.size());
        for (const core::RuleDue& due : m_answer.dues)
            m_rows.push_back(lineOf(due));
        if (m_answer.dues.empty())
            m_rows.push_back(plainRow("no dates", Mark::NotAsked, {},
                                      Say::tr("Its kit type has no rule that applies to it")));
    }

    void addParts() {
        if (m_answer.record.parts.empty()) return;
        head("parts", Say::tr("parts"), m_answer.record.parts.size());
        for (const core::Part& part : m_answer.record.parts)
            m_rows.push_back(plainRow("part " + text(part.part), Mark::NotAsked, {}, text(part.part),
                                      daysOf(part.made, part.firstUse, part.stamped)));
    }

    void addLog() {
        if (m_answer.openLog.empty()) return;
        head("log", Say::tr("open in the log"), m_answer.openLog.size());
        for (const core::LogEntry& entry : m_answer.openLog)
            m_rows.push_back(
                plainRow("log " + text(entry.entry), Mark::Look, Say::tr("look"), text(entry.text),
                         entry.by.empty() ? inWords(entry.day)
                                          : Say::tr("%1, by %2").arg(inWords(entry.day), text(entry.by))));
    }

    void addHistory() {
        head("history", Say::tr("history, newest first"), m_answer.history.size());
        const auto lines = linesOf(m_answer.history, m_today);
        m_rows.insert(m_rows.end(), lines.begin(), lines.end());
    }

    const ItemAnswer& m_answer;
    core::CalendarDay m_today;
    std::vector<CheckRow> m_rows;
};

} // namespace

QString kitName(const core::Item& item) {
    return item.size.empty() ? text(item.kitType)
                             : Say::tr("%1 (%2)").arg(text(item.kitType), text(item.size));
}

QString homeOf(const core::Item& item) {
    QStringList words{text(item.boat), text(item.place), text(item.person)};
    words.removeAll(QString());
    return words.isEmpty() ? Say::tr("no home") : words.join(Say::tr(" · "));
}

QString stateOf(const core::Item& item) {
    QString words = nameInWords(item.state);
    if (!item.why.empty() && item.state == core::ItemState::WrittenOff)
        words = Say::tr("%1: %2").arg(words, text(item.why));
    return item.since && item.state != core::ItemState::Serviceable
               ? Say::tr("%1, since %2").arg(words, inWords(*item.since))
               : words;
}

QString aboutOf(const core::Item& item) {
    QStringList words{Say::tr("Home: %1").arg(homeOf(item))};
    if (const QString days = daysOf(item.made, item.firstUse, item.stamped); !days.isEmpty()) words << days;
    if (!item.maker.empty()) words << Say::tr("maker %1").arg(text(item.maker));
    if (!item.serial.empty()) words << Say::tr("serial %1").arg(text(item.serial));
    if (!item.batch.empty()) words << Say::tr("batch %1").arg(text(item.batch));
    if (!item.note.empty()) words << text(item.note);
    return words.join(Say::tr(" · "));
}

std::vector<TableColumn> kitColumns() {
    return {{Say::tr("kit")}, {Say::tr("home")}, {Say::tr("tag")}};
}

TableRow rowOf(const core::KitEntry& entry) {
    return {text(entry.item.code),
            markOf(entry.item),
            nameInWords(entry.item.state),
            {kitName(entry.item), homeOf(entry.item), codeInWords(entry.tag)}};
}

CheckRow lineOf(const core::RuleDue& due) {
    const QString rule = due.rule.part.empty()
                             ? text(due.rule.rule)
                             : Say::tr("%1, %2").arg(text(due.rule.part), text(due.rule.rule));
    return plainRow("due " + rule, markOf(due), markWordOf(due),
                    Say::tr("%1: %2").arg(withCapital(rule), dayOf(due)), withCapital(explanationOf(due)));
}

std::vector<CheckRow> linesOf(const ItemAnswer& answer, core::CalendarDay today) {
    return Lines(answer, today).all();
}

} // namespace app
