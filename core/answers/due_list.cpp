#include "core/answers/due_list.h"

#include <algorithm>
#include <tuple>

namespace core {
namespace {

/// Worst first: what stops, then what is passed, then what has no day, then by the day.
int rankOf(const RuleDue& due) {
    if (due.isPassedStop()) return 0;
    switch (due.state) {
    case DueState::Passed:
        return 1;
    case DueState::WithinTolerance:
        return 2;
    case DueState::Undated:
    case DueState::DueSoon:
    case DueState::Later:
        break;
    }
    return 3;
}

bool isListed(const RuleDue& due, CalendarDay today, int days) {
    if (due.due) return daysBetween(today, *due.due) <= days;
    return due.state != DueState::Later; // due without a day, or undated
}

/// Worst first, then by day and rule; the rows of one thing.
auto placeOf(const RuleDue& due) {
    return std::tuple(rankOf(due), due.due, std::string_view(due.rule.name));
}

} // namespace

bool isToLookAt(const RuleDue& due) {
    return due.state != DueState::Later && due.state != DueState::DueSoon;
}

std::vector<ItemDue> nextDuesOf(std::vector<ItemRecord> kit, const std::map<std::string, KitType>& kitTypes,
                                CalendarDay today) {
    std::vector<ItemDue> rows;
    rows.reserve(kit.size());
    for (ItemRecord& record : kit) {
        ItemDue& row = rows.emplace_back();
        const auto type = kitTypes.find(record.item.kitType);
        if (record.item.state != ItemState::WrittenOff && type != kitTypes.end())
            for (RuleDue& due : dueDatesOf(record, type->second, today)) {
                if (!isListed(due, today, howeverLate)) continue;
                row.isToLookAt |= core::isToLookAt(due);
                if (!row.next || placeOf(due) < placeOf(*row.next)) row.next = std::move(due);
            }
        row.item = std::move(record.item);
    }
    return rows;
}

std::vector<DueRow> dueListOf(const std::vector<ItemRecord>& kit,
                              const std::map<std::string, KitType>& kitTypes, CalendarDay today, int days) {
    std::vector<DueRow> rows;
    for (const ItemRecord& record : kit) {
        const Item& item = record.item;
        const auto type = kitTypes.find(item.kitType);
        if (item.state == ItemState::WrittenOff || type == kitTypes.end()) continue;
        for (RuleDue& due : dueDatesOf(record, type->second, today))
            if (isListed(due, today, days))
                rows.push_back({item.name(), item.kitType, item.size, item.boat, std::move(due)});
    }
    const auto place = [](const DueRow& row) {
        return std::tuple(rankOf(row.due), row.due.due, std::string_view(row.item.id),
                          std::string_view(row.due.rule.name));
    };
    std::ranges::stable_sort(rows, {}, place);
    return rows;
}

} // namespace core
