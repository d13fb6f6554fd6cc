#include "app/text/plan_sentences.h"
#include "app/text/text.h"

#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct PlanSentencesText {
    Q_DECLARE_TR_FUNCTIONS(PlanSentences)
};

QString monthsInWords(int months) {
    return counted(months, QT_TRANSLATE_N_NOOP("Words", "%n month"),
                   QT_TRANSLATE_N_NOOP("Words", "%n months"));
}

/// Whether it will be short. A forecast is never quite sure: what is nearly none or nearly all says so.
QString likelyInWords(double p) {
    if (p <= 0) return PlanSentencesText::tr("no");
    if (p >= 1) return PlanSentencesText::tr("yes");
    if (p < 0.001) return PlanSentencesText::tr("hardly likely (< 0.1 %)");
    if (p > 0.999) return PlanSentencesText::tr("almost certain (> 99.9 %)");
    return PlanSentencesText::tr("%1 %").arg(QString::number(100 * p, 'f', p < 0.1 && p > 0 ? 1 : 0));
}

} // namespace

QString kitInWords(const core::ReplacementRow& row) {
    const QString name = text(row.kitType);
    return row.size.empty() ? name : PlanSentencesText::tr("%1 (%2)").arg(name, text(row.size));
}

QString quantityInWords(const core::ReplacementRow& row) {
    if (!row.runsShort()) return {};
    if (!row.quantity)
        return PlanSentencesText::tr("new kit would itself expire within this period: order again");
    return PlanSentencesText::tr("order %1").arg(*row.quantity);
}

QString orderInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    if (!row.runsShort()) return PlanSentencesText::tr("enough until %1").arg(inWords(plan.end));
    if (row.late) return PlanSentencesText::tr("late: order now, the day was %1").arg(inWords(*row.orderBy));
    return PlanSentencesText::tr("order by %1").arg(inWords(*row.orderBy));
}

QString shortInWords(const core::ReplacementRow& row, core::CalendarDay today) {
    if (!row.runsShort()) return {};
    if (*row.firstShort <= today) return PlanSentencesText::tr("short now");
    return PlanSentencesText::tr("short from %1").arg(inWords(*row.firstShort));
}

QString chancesInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    if (row.runsShort() && *row.firstShort <= plan.today) return {}; // it is: no chance is to be told
    const core::CalendarDay other = row.firstShort.value_or(plan.end);
    QStringList words;
    for (const core::ShortChance& chance : row.chances) {
        if (chance.day == plan.today)
            words << PlanSentencesText::tr("short now? %1").arg(likelyInWords(chance.p));
        else if (chance.day == other)
            words
                << PlanSentencesText::tr("short on %1? %2").arg(inWords(chance.day), likelyInWords(chance.p));
    }
    return words.join(PlanSentencesText::tr("; "));
}

QString planCaution() {
    return PlanSentencesText::tr(
        "A forecast is an estimate from the club's own record. It does not replace looking at the kit, and "
        "where a day printed on a thing is earlier, that day holds.");
}

QString moneyInWords(double amount) {
    return QString::number(amount, 'f', 2);
}

QString budgetInWords(const core::BudgetYear& year) {
    const QString unpriced = counted(year.unpriced, QT_TRANSLATE_N_NOOP("Words", "%n order without a price"),
                                     QT_TRANSLATE_N_NOOP("Words", "%n orders without a price"));
    QString words = year.cost > 0 || year.unpriced == 0 ? moneyInWords(year.cost) : unpriced;
    if (year.cost > 0 && year.unpriced > 0) words = PlanSentencesText::tr("%1 and %2").arg(words, unpriced);
    return PlanSentencesText::tr("%1: %2").arg(year.year).arg(words);
}

QString questionInWords(const core::ReplacementPlan& plan) {
    return PlanSentencesText::tr("%1 from %2; each kit is enough with a confidence of %3 %.")
        .arg(withCapital(monthsInWords(plan.question.months)), inWords(plan.today),
             numberInWords(100 * plan.question.confidence));
}

QString reckoningInWords(const core::ReplacementPlan& plan) {
    return PlanSentencesText::
        tr("An order lasts %1 from the day that kit would run short. Order-by days allow for delivery and "
           "%2 to spare.")
            .arg(monthsInWords(plan.question.coverMonths),
                 counted(plan.question.marginDays, QT_TRANSLATE_N_NOOP("Words", "%n day"),
                         QT_TRANSLATE_N_NOOP("Words", "%n days")));
}

QString yearsInWords(double days) {
    return PlanSentencesText::tr("%1 years").arg(QString::number(days / core::daysOfYear, 'f', 1));
}

QString endingsInWords(const core::KitLife& life) {
    if (life.endings() == 0) return PlanSentencesText::tr("none ended, %1 here").arg(life.stillHere);
    return PlanSentencesText::tr("%1 ended (%2 lost, %3 worn out), %4 here")
        .arg(life.endings())
        .arg(life.lost)
        .arg(life.wornOut)
        .arg(life.stillHere);
}

QString medianInWords(const core::KitLife& life) {
    const auto median = life.curve.medianDays();
    if (median) return PlanSentencesText::tr("half last %1").arg(yearsInWords(*median));
    return PlanSentencesText::tr("more than half outlast the record");
}

QString weibullInWords(const core::KitLife& life) {
    if (!life.weibull) return {};
    const QString tenth = yearsInWords(life.weibull->timeOfShareEnded(.1));
    if (life.weibull->shape > 1.2)
        return PlanSentencesText::tr("goes faster with age; a tenth is gone after %1").arg(tenth);
    if (life.weibull->shape < 0.8)
        return PlanSentencesText::tr("goes mostly when new; a tenth is gone after %1").arg(tenth);
    return PlanSentencesText::tr("age makes no difference; a tenth is gone after %1").arg(tenth);
}

QString allowedInWords(const core::AllowedLife& allowed) {
    const QString words = PlanSentencesText::tr("rule “%1” allows %2")
                              .arg(text(allowed.rule), yearsInWords(allowed.months * core::daysOfYear / 12));
    if (!allowed.record) return words + PlanSentencesText::tr(": nothing here is known to be that old");
    if (allowed.record->lasting == 1)
        return words + PlanSentencesText::tr(": none ended before that, and %1 came that far")
                           .arg(allowed.record->atRisk);
    const auto percent = [](double share) { return QString::number(100 * share, 'f', 0); };
    return words + PlanSentencesText::tr(": %1 % come that far (%2 to %3 %)")
                       .arg(percent(allowed.record->lasting), percent(allowed.record->low),
                            percent(allowed.record->high));
}

} // namespace app
