#pragma once

#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <QString>

namespace app {

// The replacement plan in a person's words.

QString kitInWords(const core::ReplacementRow& row); ///< "life jacket (M)"
/// "order 8 by 23 December 2026", "order 8 now: the last day was 3 March 2026", "enough until 1 March 2029".
QString orderInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan);
/// "order 8", "new kit would itself expire within this period: order again", empty when nothing runs short.
QString quantityInWords(const core::ReplacementRow& row);
/// "runs short on 1 April 2027"; empty when it does not.
QString shortInWords(const core::ReplacementRow& row, core::CalendarDay today);
/// How likely fewer are left than are wanted: "short now? no; short on 1 April 2027? 38 %"; the other
/// day is the first short one, else the horizon's end. Empty where it is short already.
QString chancesInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan);
/// To be shown beside a replacement plan, an order sheet or a survival curve.
QString planCaution();
QString moneyInWords(double amount); ///< "48.00"
/// "2026: 464.00", "2027: 12.00 and 2 orders without a price".
QString budgetInWords(const core::BudgetYear& year);
/// "For 36 months from 1 March 2026, so that nothing runs short with a confidence of 95 %."
QString questionInWords(const core::ReplacementPlan& plan);
/// What an order must last, and what it was reckoned with.
QString reckoningInWords(const core::ReplacementPlan& plan);

QString yearsInWords(double days);                 ///< "4.2 years"
QString endingsInWords(const core::KitLife& life); ///< "9 ended (4 lost, 5 worn out), 21 here"
QString medianInWords(const core::KitLife& life);  ///< "half last 4.2 years", "more than half still here"
QString weibullInWords(const core::KitLife& life); ///< "wears out with age …"; empty: too few endings
/// "rule “retire” allows 10.0 years: 62 % come so far (39 to 90 %)".
QString allowedInWords(const core::AllowedLife& allowed);

} // namespace app
