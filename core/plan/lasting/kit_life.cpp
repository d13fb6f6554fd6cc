#include "core/plan/lasting/kit_life.h"

#include "core/plan/last_good_day.h"
#include "core/plan/replacement/in_service.h"
#include "core/plan/replacement/loss_rate.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

constexpr int fewestForAFit = 5;

std::optional<CalendarDay> lifeFrom(const Item& item) {
    for (const auto* known : {&item.firstUse, &item.made, &item.registered})
        if (*known) return (*known)->firstDay();
    return std::nullopt;
}

/// Gathers the lives of one kit type.
class Lives {
public:
    explicit Lives(const std::string& kitType) { m_known.kitType = kitType; }

    void add(const Item& item, CalendarDay today) {
        const ServiceEnd end = serviceEndOf(item);
        const auto from = lifeFrom(item);
        if (!from || *from > today || (end != ServiceEnd::StillHere && !item.since)) {
            ++m_known.leftOut;
            return;
        }
        const bool expired = end == ServiceEnd::WrittenOff && item.why == "expired";
        const bool ended = end != ServiceEnd::StillHere && !expired;
        ++(end == ServiceEnd::StillHere ? m_known.stillHere
           : end == ServiceEnd::Lost    ? m_known.lost
           : expired                    ? m_known.expired
                                        : m_known.wornOut);
        m_lives.push_back({std::max(0, daysBetween(*from, inServiceUntil(item, today))), ended});
    }

    KitLife known(const KitType& kitType) const {
        KitLife life = m_known;
        life.lives = static_cast<int>(m_lives.size());
        life.curve = SurvivalCurve(m_lives);
        if (life.endings() >= fewestForAFit) life.weibull = fitWeibull(timed());
        for (const LifeRule& rule : kitType.rules)
            if (endsLife(rule) && rule.kind != RuleKind::Stamped)
                life.allowed.push_back(allowedBy(rule, life.curve));
        return life;
    }

private:
    std::vector<TimedLife> timed() const {
        std::vector<TimedLife> lives;
        for (const Life& life : m_lives)
            lives.push_back({static_cast<double>(std::max(1, life.days)), life.ended});
        return lives;
    }

    static AllowedLife allowedBy(const LifeRule& rule, const SurvivalCurve& curve) {
        constexpr double daysOfMonth = daysOfYear / 12;
        const double months = rule.kind == RuleKind::YearEndFromMade ? 12 * rule.n : rule.n;
        AllowedLife allowed{rule.name, rule.kind, static_cast<int>(std::min(months, 120000.0)), {}};
        allowed.record = curve.at(static_cast<int>(std::lround(allowed.months * daysOfMonth)));
        return allowed;
    }

    KitLife m_known;
    std::vector<Life> m_lives;
};

} // namespace

std::vector<KitLife> kitLivesOf(const std::map<std::string, KitType>& kitTypes,
                                const std::vector<ItemRecord>& items, CalendarDay today) {
    std::map<std::string, Lives> byType;
    for (const ItemRecord& record : items)
        if (kitTypes.contains(record.item.kitType) && !record.item.isByMistake())
            byType.try_emplace(record.item.kitType, record.item.kitType)
                .first->second.add(record.item, today);
    std::vector<KitLife> lives;
    for (const auto& [name, gathered] : byType)
        lives.push_back(gathered.known(kitTypes.at(name)));
    return lives;
}

} // namespace core
