#include "app/gui/gear/kit/kit_words.h"

#include "app/gui/gear/record/history_rows.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/register_words.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct KitWordsText {
    Q_DECLARE_TR_FUNCTIONS(Kit)
};

QString daysOf(const std::optional<core::PartialDay>& made, const std::optional<core::PartialDay>& firstUse,
               const std::optional<core::PartialDay>& stamped) {
    QStringList words;
    if (made) words << KitWordsText::tr("made %1").arg(text(made->text()));
    if (firstUse) words << KitWordsText::tr("first used %1").arg(text(firstUse->text()));
    if (stamped) words << KitWordsText::tr("stamped %1").arg(text(stamped->text()));
    return words.join(KitWordsText::tr(", "));
}

/// A count has no day before it is reached.
QString notDueYet(const core::RuleDue& due) {
    if (due.rule.kind == core::RuleKind::AfterEvent)
        return KitWordsText::tr("not due: no such event recorded");
    return KitWordsText::tr("not due: %1 of %2")
        .arg(numberInWords(due.counted.value_or(0)), numberInWords(due.rule.n));
}

QString dayOf(const core::RuleDue& due, core::CalendarDay today) {
    return !due.due && due.state == core::DueState::Later ? notDueYet(due) : dueInWords(due, today);
}

/// Out of date before overdue before undated, as a check tells it (design: rules 3).
const core::RuleDue* whyNotCounting(const std::vector<core::RuleDue>& dues) {
    const auto rank = [](const core::RuleDue& due) {
        if (due.state == core::DueState::Undated) return 2;
        return core::endsLife(due.rule.kind) ? 0 : 1;
    };
    const core::RuleDue* first = nullptr;
    for (const core::RuleDue& due : dues)
        if (due.isPassedStop() && (!first || rank(due) < rank(*first))) first = &due;
    return first;
}

QString whyInWords(const core::RuleDue& due) {
    const QString rule = ruleInWords(due.rule);
    if (due.state == core::DueState::Undated) return KitWordsText::tr("no date is known for %1").arg(rule);
    return core::endsLife(due.rule.kind) ? KitWordsText::tr("out of date by the rule “%1”").arg(rule)
                                         : KitWordsText::tr("%1 is due").arg(rule);
}

Mark markOf(const core::RuleDue& due) {
    if (due.isPassedStop()) return Mark::Look;
    return due.state == core::DueState::Later ? Mark::Found : Mark::StillToFind;
}

QString markWordOf(const core::RuleDue& due) {
    if (due.isPassedStop()) return KitWordsText::tr("does not count any more");
    return due.state == core::DueState::Later ? KitWordsText::tr("good")
                                              : KitWordsText::tr("due soon, or with a remark");
}

class Lines {
public:
    Lines(const ItemAnswer& answer, core::CalendarDay today)
        : m_answer(answer)
        , m_today(today) {}

    std::vector<ListRow> all() && {
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
        head("dates", KitWordsText::tr("dates"), m_answer.dues.size());
        for (const core::RuleDue& due : m_answer.dues)
            m_rows.push_back(lineOf(due, m_today));
        if (m_answer.dues.empty())
            m_rows.push_back(plainRow("no dates", Mark::NotAsked, {},
                                      KitWordsText::tr("Its kit type has no rule that applies to it")));
    }

    void addParts() {
        if (m_answer.record.parts.empty()) return;
        head("parts", KitWordsText::tr("parts"), m_answer.record.parts.size());
        for (const core::Part& part : m_answer.record.parts)
            m_rows.push_back(plainRow("part " + text(part.name), Mark::NotAsked, {}, text(part.name),
                                      daysOf(part.made, part.firstUse, part.stamped)));
    }

    void addLog() {
        if (m_answer.openLog.empty()) return;
        head("log", KitWordsText::tr("open in the log"), m_answer.openLog.size());
        for (const core::LogEntry& entry : m_answer.openLog)
            m_rows.push_back(plainRow(
                "log " + text(entry.id), Mark::Look, KitWordsText::tr("look"), text(entry.text),
                entry.by.empty() ? inWords(entry.day)
                                 : KitWordsText::tr("%1, by %2").arg(inWords(entry.day), text(entry.by))));
    }

    void addHistory() {
        head("history", KitWordsText::tr("history, newest first"), m_answer.history.size());
        const auto lines = linesOf(m_answer.history, m_today);
        m_rows.insert(m_rows.end(), lines.begin(), lines.end());
    }

    const ItemAnswer& m_answer;
    core::CalendarDay m_today;
    std::vector<ListRow> m_rows;
};

} // namespace

QString kitName(const core::Item& item) {
    return item.size.empty() ? text(item.kitType)
                             : KitWordsText::tr("%1 (%2)").arg(text(item.kitType), text(item.size));
}

QString homeOf(const core::Item& item) {
    QStringList words{text(item.boat), text(item.place), text(item.person)};
    words.removeAll(QString());
    return words.isEmpty() ? KitWordsText::tr("no home") : words.join(KitWordsText::tr(" · "));
}

QString stateOf(const core::Item& item, const std::vector<core::RuleDue>& dues) {
    QString words = nameInWords(item.state);
    if (const core::RuleDue* due = whyNotCounting(dues); due && item.state == core::ItemState::Serviceable)
        return KitWordsText::tr("%1, but does not count: %2").arg(words, whyInWords(*due));
    if (!item.why.empty() && item.state == core::ItemState::WrittenOff)
        words = KitWordsText::tr("%1: %2").arg(words, writtenOffAs(item.why));
    return item.since && item.state != core::ItemState::Serviceable
               ? KitWordsText::tr("%1, since %2").arg(words, inWords(*item.since))
               : words;
}

QString aboutOf(const core::Item& item) {
    QStringList words{KitWordsText::tr("Home: %1").arg(homeOf(item))};
    if (const QString days = daysOf(item.made, item.firstUse, item.stamped); !days.isEmpty()) words << days;
    if (!item.maker.empty()) words << KitWordsText::tr("maker %1").arg(text(item.maker));
    if (!item.serial.empty()) words << KitWordsText::tr("serial %1").arg(text(item.serial));
    if (!item.batch.empty()) words << KitWordsText::tr("batch %1").arg(text(item.batch));
    if (!item.note.empty()) words << text(item.note);
    return words.join(KitWordsText::tr(" · "));
}

std::vector<TableColumn> kitColumns() {
    return {{KitWordsText::tr("kit")},    {KitWordsText::tr("size")},  {KitWordsText::tr("home")},
            {KitWordsText::tr("whose")},  {KitWordsText::tr("state")}, {KitWordsText::tr("next due")},
            {KitWordsText::tr("serial")}, {KitWordsText::tr("tag")}};
}

QString nextInWords(const core::RuleDue& due) {
    const QString rule = ruleInWords(due.rule);
    if (due.due) return KitWordsText::tr("%1: %2").arg(inWords(*due.due), rule);
    if (due.state == core::DueState::Undated) return KitWordsText::tr("no date: %1").arg(rule);
    return due.state == core::DueState::Later ? QString() : KitWordsText::tr("now: %1").arg(rule);
}

TableRow rowOf(const core::ItemDue& kit) {
    const core::Item& item = kit.item;
    const bool isLook = kit.isToLookAt && item.state == core::ItemState::Serviceable;
    const QString state = nameInWords(item.state);
    return {text(item.id),
            markOf(kit),
            isLook ? KitWordsText::tr("look, something is due; %1").arg(state) : state,
            {text(item.kitType), text(item.size), text(item.boat.empty() ? item.place : item.boat),
             text(item.person), state, kit.next ? nextInWords(*kit.next) : QString(), text(item.serial),
             codeInWords(item.tag)}};
}

ListRow lineOf(const core::RuleDue& due, core::CalendarDay today) {
    const QString rule = due.rule.part.empty()
                             ? text(due.rule.name)
                             : KitWordsText::tr("%1, %2").arg(text(due.rule.part), text(due.rule.name));
    return plainRow("due " + rule, markOf(due), markWordOf(due),
                    KitWordsText::tr("%1: %2").arg(withCapital(rule), dayOf(due, today)),
                    withCapital(explanationOf(due)));
}

std::vector<ListRow> linesOf(const ItemAnswer& answer, core::CalendarDay today) {
    return Lines(answer, today).all();
}

} // namespace app
