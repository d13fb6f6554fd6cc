#include "core/plan/replacement/loss_rate.h"

#include "core/plan/replacement/in_service.h"

namespace core {

void LossRecord::add(const Item& item, CalendarDay today) {
    days += daysInService(item, today);
    if (serviceEndOf(item) == ServiceEnd::Lost) ++losses;
}

LossRate lossRateOf(const LossRecord& record, const LossPrior& prior) {
    return {prior.losses + record.losses, prior.itemYears + record.itemYears()};
}

} // namespace core
