#include "app/common/plan_sentences.h"

#include "app/common/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(PlanSentences)
};

QString monthsInWords(int months) {
    return counted(months, QT_TRANSLATE_NOOP("Words", "%n month"), QT_TRANSLATE_NOOP("Words", "%n months"));
}

} // namespace

QString kitInWords(const core::ReplacementRow& row) {
    const QString name = QString::fromStdString(row.kitType);
    return row.size.empty() ? name : Say::tr("%1 (%2)").arg(name, QString::fromStdString(row.size));
}

QString quantityInWords(const core::ReplacementRow& row) {
    if (!row.runsShort()) return {};
    if (!row.quantity) return Say::tr("order again and again: new kit falls due before the cover ends");
    return Say::tr("order %1").arg(*row.quantity);
}

QString orderInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    if (!row.runsShort()) return Say::tr("enough until %1").arg(inWords(plan.end));
    if (row.late) return Say::tr("late: order now, the day was %1").arg(inWords(*row.orderBy));
    return Say::tr("order by %1").arg(inWords(*row.orderBy));
}

QString shortInWords(const core::ReplacementRow& row, core::CalendarDay today) {
    if (!row.runsShort()) return {};
    if (*row.firstShort <= today) return Say::tr("short now");
    return Say::tr("short from %1").arg(inWords(*row.firstShort));
}

QString planCaution() {
    return Say::tr(
        "A forecast is an estimate from the club's own record. It replaces no look at the kit, and a date "
        "printed on a thing prevails.");
}

QString moneyInWords(double amount) {
    return QString::number(amount, 'f', 2);
}

QString budgetInWords(const core::BudgetYear& year) {
    const QString unpriced = counted(year.unpriced, QT_TRANSLATE_NOOP("Words", "%n order without a price"),
                                     QT_TRANSLATE_NOOP("Words", "%n orders without a price"));
    QString words = year.cost > 0 || year.unpriced == 0 ? moneyInWords(year.cost) : unpriced;
    if (year.cost > 0 && year.unpriced > 0) words = Say::tr("%1 and %2").arg(words, unpriced);
    return Say::tr("%1: %2").arg(year.year).arg(words);
}

QString questionInWords(const core::ReplacementPlan& plan) {
    return Say::tr("%1 from %2; each kit is enough with a confidence of %3 %.")
        .arg(withCapital(monthsInWords(plan.question.months)), inWords(plan.today),
             numberInWords(100 * plan.question.confidence));
}

QString reckoningInWords(const core::ReplacementPlan& plan) {
    return Say::
        tr("An order lasts %1 from the day that kit would run short. Order-by days allow for delivery and "
           "%2 to spare.")
            .arg(monthsInWords(plan.question.coverMonths),
                 counted(plan.question.marginDays, QT_TRANSLATE_NOOP("Words", "%n day"),
                         QT_TRANSLATE_NOOP("Words", "%n days")));
}

} // namespace app
