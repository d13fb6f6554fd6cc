#include "core/check/return_check.h"

#include "core/check/expected_kit.h"

namespace core {
namespace {

Finding notReturned(const Item& item, const std::string& boat) {
    Finding finding;
    finding.kind = FindingKind::NotReturned;
    finding.severity = Severity::Stop;
    finding.kitType = item.kitType;
    finding.code = item.code;
    finding.size = item.size;
    finding.boat = boat;
    return finding;
}

Finding strange(const JudgedItem& item, const std::string& boat) {
    const std::string& launchedOn = item.seen->lastLaunchedOn;
    const bool swapped = item.seen->launchedBoatStillOut && !launchedOn.empty() && launchedOn != boat;
    Finding finding =
        findingAbout(item, swapped ? FindingKind::Swapped : FindingKind::Extra, Severity::Remark);
    if (swapped) finding.boat = launchedOn;
    return finding;
}

} // namespace

CheckAnswer judgeReturn(const BoatCheckInput& input) {
    return judgeExpected(input, {[&](const Item& item) { return notReturned(item, input.boat); },
                                 [&](const JudgedItem& item) { return strange(item, input.boat); }});
}

} // namespace core
