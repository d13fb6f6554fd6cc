#include "app/text/rule_sentences.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

using core::Anchor;
using core::DueState;
using core::RuleKind;

struct RuleSentencesText {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

QString anchorInWords(Anchor anchor, const QString& day) {
    switch (anchor) {
    case Anchor::Made:
        return RuleSentencesText::tr("made %1").arg(day);
    case Anchor::FirstUse:
        return RuleSentencesText::tr("first used %1").arg(day);
    case Anchor::Stamped:
        return RuleSentencesText::tr("stamped %1").arg(day);
    case Anchor::Registered:
        return RuleSentencesText::tr("registered %1, no record since").arg(day);
    case Anchor::Service:
        return RuleSentencesText::tr("last recorded %1").arg(day);
    case Anchor::Event:
    case Anchor::None:
        break;
    }
    return day;
}

QString countedInWords(const core::RuleDue& due) {
    const QString sum = numberInWords(*due.counted);
    const QString limit = numberInWords(due.limit.value_or(due.rule.n));
    const bool isRecorded = due.anchor == Anchor::Service;
    if (due.rule.kind == RuleKind::EveryUses)
        return isRecorded
                   ? RuleSentencesText::tr("%1 launches since the last record, the limit is %2")
                         .arg(sum, limit)
                   : RuleSentencesText::tr("%1 launches, never recorded, the limit is %2").arg(sum, limit);
    return isRecorded
               ? RuleSentencesText::tr("%1 hours run since the last record, the limit is %2").arg(sum, limit)
               : RuleSentencesText::tr("%1 hours run, never recorded, the limit is %2").arg(sum, limit);
}

QString startInWords(const core::RuleDue& due) {
    if (due.state == DueState::Undated) return {};
    if (due.counted) return countedInWords(due);
    if (!due.event.empty()) {
        const QString day =
            due.anchorDay ? RuleSentencesText::tr(" on %1").arg(inWords(*due.anchorDay)) : QString();
        return text(due.event) + day;
    }
    return due.anchorDay ? anchorInWords(due.anchor, inWords(*due.anchorDay)) : QString();
}

} // namespace

QString theRule(const core::RuleDue& due) {
    if (due.rule.part.empty()) return RuleSentencesText::tr("the rule “%1”").arg(text(due.rule.name));
    return RuleSentencesText::tr("the rule “%1” for its %2").arg(text(due.rule.name), text(due.rule.part));
}

QString whatItCountsFrom(RuleKind kind) {
    switch (kind) {
    case RuleKind::Stamped:
        return RuleSentencesText::tr("the expiry printed on it");
    case RuleKind::FromMade:
    case RuleKind::YearEndFromMade:
        return RuleSentencesText::tr("the day it was made");
    case RuleKind::FromFirstUse:
        return RuleSentencesText::tr("the day of its first use");
    default:
        return RuleSentencesText::tr("the day of its last record or first use");
    }
}

QString explanationOf(const core::RuleDue& due) {
    QStringList clauses;
    if (const QString start = startInWords(due); !start.isEmpty()) clauses << start;
    clauses << (due.rule.source.empty() ? RuleSentencesText::tr("no source given")
                                        : RuleSentencesText::tr("source: %1").arg(text(due.rule.source)));
    return clauses.join(QStringLiteral("; "));
}

QString ruleInWords(const core::LifeRule& rule) {
    return rule.part.empty() ? text(rule.name)
                             : RuleSentencesText::tr("%1: %2").arg(text(rule.part), text(rule.name));
}

QString passedInWords(const core::RuleDue& due) {
    const QString rule = ruleInWords(due.rule);
    if (due.due) return RuleSentencesText::tr("%1, %2").arg(rule, inWords(*due.due));
    const QString start = startInWords(due);
    return start.isEmpty() ? rule : RuleSentencesText::tr("%1, %2").arg(rule, start);
}

} // namespace app
