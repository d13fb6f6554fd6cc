#pragma once

#include "core/plan/replacement_plan.h"

#include <QString>

namespace app {

// The replacement plan in a person's words.

QString kitInWords(const core::ReplacementRow& row); ///< "life jacket (M)"
/// "order 8 by 23 December 2026", "order 8 now: the last day was 3 March 2026", "enough until 1 March 2029".
QString orderInWords(const core::ReplacementRow& row, const core::ReplacementPlan& plan);
/// "order 8", "order some: no number would last the cover", empty when nothing runs short.
QString quantityInWords(const core::ReplacementRow& row);
/// "runs short on 1 April 2027"; empty when it does not.
QString shortInWords(const core::ReplacementRow& row, core::CalendarDay today);
/// To be shown beside a replacement plan, an order sheet or a survival curve.
QString planCaution();
QString moneyInWords(double amount); ///< "48.00"
/// "2026: 464.00", "2027: 12.00 and 2 orders without a price".
QString budgetInWords(const core::BudgetYear& year);
/// "For 36 months from 1 March 2026, so that nothing runs short with a confidence of 95 %."
QString questionInWords(const core::ReplacementPlan& plan);
/// What an order must last, and what it was reckoned with.
QString reckoningInWords(const core::ReplacementPlan& plan);

} // namespace app
