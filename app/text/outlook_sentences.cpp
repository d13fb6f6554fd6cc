#include "app/text/outlook_sentences.h"

#include "app/text/contract_words.h"
#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/exchange/csv_import.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

constexpr std::size_t mostNamed = 3;

struct OutlookText {
    Q_DECLARE_TR_FUNCTIONS(Outlook)
};

QString kitSentence(const core::KitAtHomeChange& kit) {
    const QString boat = text(kit.boat), kitType = text(kit.kitType);
    if (!kit.after) return OutlookText::tr("%1 will not be asked for %2").arg(boat, kitType);
    if (kit.after->there == 0 && kit.after->wanted > 0)
        return OutlookText::tr("%1 will have no %2").arg(boat, kitType);
    return OutlookText::tr("%1 will have %2 of %3: %4")
        .arg(boat)
        .arg(kit.after->there)
        .arg(kit.after->wanted)
        .arg(kitType);
}

QString boatSentence(const core::ConditionChange& boat, core::CalendarDay today) {
    if (!boat.after) return OutlookText::tr("%1 will not be on the board").arg(text(boat.boat));
    QStringList reasons;
    for (const core::NotReadyReason& reason : boat.after->reasons)
        reasons << reasonOf(reason);
    if (reasons.isEmpty())
        return OutlookText::tr("%1 will be %2").arg(text(boat.boat), conditionOf(*boat.after, today));
    QString why = reasons.join(' '); // each is a sentence
    if (why.endsWith('.')) why.chop(1);
    return OutlookText::tr("%1 will not be ready. %2").arg(text(boat.boat), why);
}

QString dayInWords(const std::optional<core::RuleDue>& due, core::CalendarDay today) {
    return due ? dueInWords(*due, today) : OutlookText::tr("not asked");
}

QString dueSentence(const core::DueChange& due, core::CalendarDay today) {
    const core::RuleDue& rule = due.after ? *due.after : *due.before;
    return OutlookText::tr("%1 %2, %3: %4; so far: %5")
        .arg(text(due.kitType), codeInWords(due.item.tag), ruleInWords(rule.rule),
             dayInWords(due.after, today),
             due.before ? dayInWords(due.before, today) : OutlookText::tr("not asked"));
}

/// The changes of one rule of one kit type.
QStringList ruleSentences(const std::vector<const core::DueChange*>& changes, core::CalendarDay today) {
    QStringList sentences;
    if (changes.size() <= mostNamed) {
        for (const core::DueChange* each : changes)
            sentences << dueSentence(*each, today);
        return sentences;
    }
    const core::DueChange* first = nullptr;
    for (const core::DueChange* each : changes)
        if (each->after && each->after->due && (!first || *each->after->due < *first->after->due))
            first = each;
    const core::DueChange& one = first ? *first : *changes.front();
    const QString rule = ruleInWords((one.after ? *one.after : *one.before).rule);
    const QString count =
        counted(static_cast<int>(changes.size()), QT_TRANSLATE_N_NOOP("Words", "%n thing with another day"),
                QT_TRANSLATE_N_NOOP("Words", "%n things with another day"));
    if (!first) return {OutlookText::tr("%1, %2: %3").arg(text(one.kitType), rule, count)};
    return {OutlookText::tr("%1, %2: %3, the first %4")
                .arg(text(one.kitType), rule, count, dayInWords(first->after, today))};
}

/// At most so many; one more would take no less room than to say that there is one.
void shorten(QStringList& sentences, int most) {
    const auto more = sentences.size() - most;
    if (more <= 1) return;
    sentences = sentences.mid(0, most);
    sentences << OutlookText::tr("and %1 more").arg(more);
}

} // namespace

QStringList effectsInWords(const core::OutlookChange& change, core::CalendarDay today) {
    QStringList sentences;
    for (const core::KitAtHomeChange& kit : change.kit)
        sentences << kitSentence(kit);
    for (const core::ConditionChange& boat : change.boats)
        sentences << boatSentence(boat, today);
    std::vector<std::pair<QString, std::vector<const core::DueChange*>>> rules;
    for (const core::DueChange& due : change.due) {
        const core::LifeRule& rule = (due.after ? *due.after : *due.before).rule;
        const QString key = text(due.kitType) + '\n' + text(rule.part) + '\n' + text(rule.name);
        const auto known =
            std::find_if(rules.begin(), rules.end(), [&](const auto& each) { return each.first == key; });
        if (known == rules.end())
            rules.push_back({key, {&due}});
        else
            known->second.push_back(&due);
    }
    for (const auto& [key, changes] : rules)
        sentences << ruleSentences(changes, today);
    return sentences;
}

QString effectsInLines(const core::OutlookChange& change, core::CalendarDay today, int most) {
    QStringList sentences = effectsInWords(change, today);
    shorten(sentences, most);
    for (QString& sentence : sentences)
        if (!sentence.endsWith('.')) sentence += '.'; // a reason has its own
    return sentences.join('\n');
}

QString warningInWords(const core::Error& warning) {
    return inWordsOfForms(rejectionInWords(warning));
}

QString warningsInLines(const std::vector<core::Error>& warnings, int most) {
    const auto isSlip = [](const core::Error& each) {
        return each.code == core::ErrorCode::ClassLikeAnother ||
               each.code == core::ErrorCode::KitTypeLikeAnother;
    };
    std::vector<core::Error> ordered = warnings;
    std::stable_partition(ordered.begin(), ordered.end(), isSlip); // the cause of what else is told
    QStringList sentences;
    for (const core::Error& each : ordered)
        sentences << OutlookText::tr("Is it meant so? %1.").arg(withCapital(warningInWords(each)));
    sentences.removeDuplicates();
    shorten(sentences, most);
    return sentences.join('\n');
}

QString warningsInLines(const std::vector<core::RejectedRow>& warnings, int most) {
    std::vector<core::Error> reasons;
    for (const core::RejectedRow& each : warnings)
        reasons.push_back(each.reason);
    return warningsInLines(reasons, most);
}

} // namespace app
