#pragma once

#include "core/plan/last_good_day.h"
#include "core/plan/replacement/loss_rate.h"

#include <map>
#include <string>
#include <vector>

namespace core {

/// What a club has of one kit type, as a replacement plan sees it.
struct KitStock {
    KitType lifeEnds;  ///< the type with its life-ending rules only
    LossRecord record; ///< its sizes together
    /// Last good days of the serviceable items that count on some day from today on, by size.
    std::map<std::string, std::vector<CalendarDay>> bySize;

    std::vector<CalendarDay> lastGoodDaysOf(const std::string& size) const;
    std::size_t mostOfOneSize() const;
};

/// One for each kit type. Items of a type that is not among them are left out. Of a type without sizes all
/// items are of one size without a name.
std::map<std::string, KitStock> stocksOf(const std::vector<ItemRecord>& items,
                                         const std::map<std::string, KitType>& kitTypes, CalendarDay today);

} // namespace core
