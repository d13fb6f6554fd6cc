#include "core/answers/outlook.h"

#include "core/answers/fit_out.h"
#include "core/base/plain_text.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace core {
namespace {

bool isInUse(const Item& item) {
    return item.state == ItemState::Serviceable;
}

bool isSame(const NotReadyReason& a, const NotReadyReason& b) {
    return a.kind == b.kind && a.item.id == b.item.id && a.kitType == b.kitType &&
           (a.finding ? a.finding->kind == (b.finding ? b.finding->kind : FindingKind::NoManifest)
                      : !b.finding);
}

bool isSame(const BoatCondition& a, const BoatCondition& b) {
    return a.kind == b.kind && a.urgent == b.urgent &&
           std::equal(a.reasons.begin(), a.reasons.end(), b.reasons.begin(), b.reasons.end(),
                      [](const auto& x, const auto& y) { return isSame(x, y); });
}

bool isSame(const KitAtHome& a, const KitAtHome& b) {
    return a.wanted == b.wanted && a.there == b.there;
}

bool isSame(const DueRow& a, const DueRow& b) {
    return a.due.due == b.due.due && a.due.state == b.due.state && a.due.severity == b.due.severity;
}

bool isShort(const KitAtHome& kit) {
    return kit.there < kit.wanted;
}

auto keyOf(const BoatCondition& boat) {
    return std::tuple(boat.boat);
}
auto keyOf(const KitAtHome& kit) {
    return std::tuple(kit.boat, kit.kitType);
}
auto keyOf(const DueRow& row) {
    return std::tuple(row.item.id, row.due.rule.part, row.due.rule.name);
}

/// Tells of each row that stands in one only, or otherwise in the other: those of `before` in their order,
/// then the new ones.
template <class Row, class Tell>
void compare(const std::vector<Row>& before, const std::vector<Row>& after, Tell tell) {
    std::map<decltype(keyOf(before.front())), const Row*> now, then;
    for (const Row& row : after)
        now.emplace(keyOf(row), &row);
    for (const Row& row : before) {
        then.emplace(keyOf(row), &row);
        const auto found = now.find(keyOf(row));
        const Row* other = found == now.end() ? nullptr : found->second;
        if (!other || !isSame(row, *other)) tell(&row, other);
    }
    for (const Row& row : after)
        if (then.count(keyOf(row)) == 0) tell(nullptr, &row);
}

template <class Value>
std::optional<Value> copied(const Value* value) {
    return value ? std::optional(*value) : std::nullopt;
}

std::optional<RuleDue> dueOf(const DueRow* row) {
    return row ? std::optional(row->due) : std::nullopt;
}

} // namespace

std::vector<KitAtHome> kitAtHomeOf(const std::string& boat, const std::vector<ManifestLine>& manifest,
                                   const std::vector<Item>& items) {
    std::map<std::string, int> free;
    for (const Item& item : items)
        if (isInUse(item) && sameName(item.boat, boat)) ++free[foldName(item.kitType)];
    const std::vector<int> filled = filledLines(manifest, std::move(free));
    std::vector<KitAtHome> kit;
    for (std::size_t i = 0; i < manifest.size(); ++i)
        kit.push_back({boat, manifest[i].kitType, manifest[i].quantity, filled[i]});
    return kit;
}

OutlookChange changesBetween(const Outlook& before, const Outlook& after) {
    OutlookChange change;
    compare(before.boats, after.boats, [&](const BoatCondition* then, const BoatCondition* now) {
        change.boats.push_back({then ? then->boat : now->boat, copied(then), copied(now)});
    });
    compare(before.kit, after.kit, [&](const KitAtHome* then, const KitAtHome* now) {
        if ((then && isShort(*then)) || (now && isShort(*now)))
            change.kit.push_back({then ? then->boat : now->boat, then ? then->kitType : now->kitType,
                                  copied(then), copied(now)});
    });
    compare(before.due, after.due, [&](const DueRow* then, const DueRow* now) {
        const DueRow& row = then ? *then : *now;
        change.due.push_back({row.item, row.kitType, dueOf(then), dueOf(now)});
    });
    return change;
}

} // namespace core
