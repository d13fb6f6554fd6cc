#include "core/plan/replacement/kit_stock.h"

#include <algorithm>

namespace core {

std::vector<CalendarDay> KitStock::lastGoodDaysOf(const std::string& size) const {
    const auto found = bySize.find(size);
    return found == bySize.end() ? std::vector<CalendarDay>() : found->second;
}

std::size_t KitStock::mostOfOneSize() const {
    std::size_t most = 0;
    for (const auto& [size, days] : bySize)
        most = std::max(most, days.size());
    return most;
}

std::map<std::string, KitStock> stocksOf(const std::vector<ItemRecord>& items,
                                         const std::map<std::string, KitType>& kitTypes, CalendarDay today) {
    std::map<std::string, KitStock> stocks;
    for (const auto& [name, kitType] : kitTypes)
        stocks[name].lifeEnds = withLifeEndsOnly(kitType);
    for (const ItemRecord& record : items) {
        const auto stock = stocks.find(record.item.kitType);
        if (stock == stocks.end()) continue;
        stock->second.record.add(record.item, today);
        if (record.item.state != ItemState::Serviceable) continue;
        const auto last = lastGoodDayOf(record, stock->second.lifeEnds);
        const bool isSized = !stock->second.lifeEnds.sizes.empty();
        if (last && *last >= today)
            stock->second.bySize[isSized ? record.item.size : std::string()].push_back(*last);
    }
    return stocks;
}

} // namespace core
