#include "core/upkeep/service_state.h"

#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {
namespace {

bool isLater(const ServiceRecord& a, const ServiceRecord& b) {
    if (a.day != b.day) return a.day > b.day;
    return a.at && b.at && *a.at > *b.at;
}

bool isPutRight(const ServiceRecord& failed, const std::vector<ServiceRecord>& services) {
    return std::any_of(services.begin(), services.end(), [&](const ServiceRecord& other) {
        return other.passed && sameName(other.rule, failed.rule) && sameName(other.part, failed.part) &&
               isLater(other, failed);
    });
}

} // namespace

std::optional<ServiceRecord> failedRecord(const std::vector<ServiceRecord>& services) {
    std::optional<ServiceRecord> failed;
    for (const ServiceRecord& record : services)
        if (!record.passed && !isPutRight(record, services) && (!failed || record.day < failed->day))
            failed = record;
    return failed;
}

std::optional<CalendarDay> failedSince(const std::vector<ServiceRecord>& services) {
    const auto failed = failedRecord(services);
    return failed ? std::optional(failed->day) : std::nullopt;
}

} // namespace core
