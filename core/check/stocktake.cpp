#include "core/check/judges.h"

#include "core/check/expected_kit.h"

#include <algorithm>

namespace core {
namespace {

Finding notThere(const Item& item) {
    Finding finding;
    finding.kind = FindingKind::Missing;
    finding.severity = Severity::Stop;
    finding.kitType = item.kitType;
    finding.item = item.name();
    finding.size = item.size;
    return finding;
}

/// What is at home here and is not looked for, such as a written-off thing, has nowhere else to be brought.
std::optional<Finding> fromElsewhere(const JudgedItem& item, const std::string& place) {
    if (item.item().place == place) return std::nullopt;
    Finding finding = findingAbout(item.item(), FindingKind::Extra, Severity::Remark);
    finding.boat = item.item().boat.empty() ? item.item().place : item.item().boat;
    return finding;
}

/// What is missing or written off is not looked for; what a boat has out may lie at home all the same.
bool isExpected(const Item& item, const BoatCheckInput& input) {
    if (item.state == ItemState::Missing || item.state == ItemState::WrittenOff) return false;
    const auto isIt = [&](const SeenItem& seen) { return seen.record.item.id == item.id; };
    return !input.outOnBoats.contains(item.id) || std::ranges::any_of(input.seen, isIt);
}

} // namespace

CheckAnswer judgeStocktake(const BoatCheckInput& input) {
    std::vector<const Item*> expected;
    for (const ItemRecord& record : input.expectedBack)
        if (isExpected(record.item, input)) expected.push_back(&record.item);
    return judgeExpected(input, expected, {notThere, [&](const JudgedItem& item) {
                                               return fromElsewhere(item, input.location.name);
                                           }});
}

} // namespace core
