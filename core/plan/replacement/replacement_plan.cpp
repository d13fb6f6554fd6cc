#include "core/plan/replacement/replacement_plan.h"

#include "core/plan/replacement/kit_stock.h"
#include "core/plan/replacement/loss_rate.h"
#include "core/plan/replacement/smallest_number.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace core {
namespace {

/// More of one order no club wants; a rate that asks for it is not known at all.
constexpr int mostOrdered = 1'000'000;

double inMoney(double amount) {
    return std::round(amount * 1e4) / 1e4; // no binary dust
}

/// Makes the rows of one kit type, which share what is known of losses.
class TypePlanner {
public:
    TypePlanner(const KitType& kitType, const KitStock& stock, int mostWanted, const ReplacementPlan& plan)
        : m_kitType(kitType)
        , m_stock(stock)
        , m_plan(plan)
        , m_rate(lossRateOf(stock.record, plan.question.prior))
        , m_survivors(m_rate, mostItemYears(mostWanted)) {}

    ReplacementRow rowOf(const std::string& size, int wanted) const {
        const Shortage shortage(wanted, Stock(m_stock.lastGoodDaysOf(size)), m_survivors, m_plan.today);
        ReplacementRow row;
        row.kitType = m_kitType.name;
        row.size = size;
        row.wanted = wanted;
        row.stock = shortage.inStock();
        row.record = m_stock.record;
        row.rate = m_rate;
        row.pack = std::max(1, m_kitType.pack);
        row.leadDays = m_kitType.orderLeadDays;
        row.price = m_kitType.price;
        row.sparesAdvised = sparesFor(m_rate, wanted * row.leadDays / daysOfYear, m_plan.question.confidence);
        row.firstShort = shortage.firstShort(m_plan.end, mostChance());
        row.chances = shortage.chances(row.firstShort, m_plan.end);
        addOrder(row, shortage);
        return row;
    }

private:
    double mostChance() const { return 1 - m_plan.question.confidence; }

    /// An order is about as much as is wanted.
    double mostItemYears(int mostWanted) const {
        const double years = (m_plan.question.months + m_plan.question.coverMonths) / 12.0;
        return static_cast<double>(m_stock.mostOfOneSize() + static_cast<std::size_t>(mostWanted)) * years;
    }

    void addOrder(ReplacementRow& row, const Shortage& shortage) const {
        if (row.firstShort) {
            row.lastGood = row.firstShort->plusDays(-1);
            row.orderBy = row.lastGood->plusDays(-row.leadDays - m_plan.question.marginDays);
            row.late = *row.orderBy < m_plan.today;
            row.budgetYear = std::max(*row.orderBy, m_plan.today).year();
            row.quantity = quantityFor(row, shortage);
        } else {
            row.quantity = 0;
        }
        if (row.quantity && row.price) row.cost = inMoney(*row.quantity * *row.price);
    }

    /// The cover's end alone decides: the chance of running short only grows until then.
    std::optional<int> quantityFor(const ReplacementRow& row, const Shortage& shortage) const {
        const CalendarDay arrival = *row.lastGood;
        const CalendarDay end = row.firstShort->plusMonths(m_plan.question.coverMonths);
        if (lastGoodDayOfNew(m_stock.lifeEnds, arrival) < end) return std::nullopt;
        const auto isEnough = [&](int packs) {
            return shortage.chanceWith(packs * row.pack, arrival, end) <= mostChance();
        };
        const auto packs = smallestNumber(1, std::max(1, mostOrdered / row.pack), isEnough);
        return packs ? std::optional(*packs * row.pack) : std::nullopt;
    }

    const KitType& m_kitType;
    const KitStock& m_stock;
    const ReplacementPlan& m_plan;
    LossRate m_rate;
    Survivors m_survivors;
};

/// What the boats must carry of each kit type.
std::map<std::string, int> requiredOf(const std::vector<std::vector<ManifestLine>>& manifests) {
    std::map<std::string, int> required;
    for (const auto& lines : manifests)
        for (const ManifestLine& line : lines)
            if (line.required) required[line.kitType] += line.quantity;
    return required;
}

/// Sizes and how many are wanted of each; a type without sizes is one size without a name.
std::vector<std::pair<std::string, int>> wantedOf(const KitType& kitType, int required) {
    std::vector<std::pair<std::string, int>> wanted;
    if (kitType.sizes.empty()) wanted.emplace_back(std::string(), required + kitType.spares);
    for (const Size& size : kitType.sizes)
        wanted.emplace_back(size.name, size.wanted.value_or(0));
    std::erase_if(wanted, [](const auto& each) { return each.second <= 0; });
    return wanted;
}

void sortRows(std::vector<ReplacementRow>& rows) {
    const auto order = [](const ReplacementRow& row) {
        return std::tuple(!row.runsShort(), row.orderBy.value_or(endlessDay), row.kitType, row.size);
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](const ReplacementRow& a, const ReplacementRow& b) { return order(a) < order(b); });
}

std::vector<BudgetYear> budgetOf(const std::vector<ReplacementRow>& rows) {
    std::map<int, BudgetYear> years;
    for (const ReplacementRow& row : rows) {
        if (!row.budgetYear) continue;
        BudgetYear& year = years[*row.budgetYear];
        year.year = *row.budgetYear;
        year.cost = inMoney(year.cost + row.cost.value_or(0));
        year.unpriced += row.cost ? 0 : 1;
    }
    std::vector<BudgetYear> budget;
    for (const auto& [year, sum] : years)
        budget.push_back(sum);
    return budget;
}

} // namespace

bool ReplacementPlan::runsShort() const {
    return std::any_of(rows.begin(), rows.end(), [](const ReplacementRow& row) { return row.runsShort(); });
}

ReplacementPlan planReplacement(const ReplacementInput& input, const ReplacementQuestion& question,
                                CalendarDay today) {
    ReplacementPlan plan{today, today.plusMonths(question.months), question, {}, {}};
    const auto required = requiredOf(input.manifests);
    const auto stocks = stocksOf(input.items, input.kitTypes, today);
    for (const auto& [name, kitType] : input.kitTypes) {
        const auto found = required.find(name);
        const auto wanted = wantedOf(kitType, found == required.end() ? 0 : found->second);
        if (wanted.empty()) continue;
        const auto most = std::max_element(wanted.begin(), wanted.end(),
                                           [](const auto& a, const auto& b) { return a.second < b.second; });
        const TypePlanner planner(kitType, stocks.at(name), most->second, plan);
        for (const auto& [size, count] : wanted)
            plan.rows.push_back(planner.rowOf(size, count));
    }
    sortRows(plan.rows);
    plan.budget = budgetOf(plan.rows);
    return plan;
}

} // namespace core
