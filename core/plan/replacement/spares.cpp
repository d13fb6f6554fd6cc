#include "core/plan/replacement/loss_rate.h"

#include "core/plan/replacement/smallest_number.h"

#include <boost/math/special_functions/beta.hpp>

namespace core {

double chanceOfAtMost(int count, LossRate rate, double itemYears) {
    if (count < 0) return 0;
    if (itemYears <= 0) return 1;
    // The complement: the other way round much is lost when the rate is known well.
    return boost::math::ibetac(count + 1.0, rate.shape, itemYears / (rate.rate + itemYears));
}

int sparesFor(LossRate rate, double itemYears, double confidence) {
    constexpr int most = 1 << 30;
    const auto isEnough = [&](int count) { return chanceOfAtMost(count, rate, itemYears) >= confidence; };
    return smallestNumber(0, most, isEnough).value_or(most);
}

} // namespace core
