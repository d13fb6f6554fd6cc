#include "core/check/judges.h"

#include "core/check/expected_kit.h"

namespace core {
namespace {

Finding notReturned(const Item& item, const std::string& boat) {
    Finding finding;
    finding.kind = FindingKind::NotReturned;
    finding.severity = Severity::Stop;
    finding.kitType = item.kitType;
    finding.item = item.name();
    finding.size = item.size;
    finding.boat = boat;
    return finding;
}

Finding strange(const JudgedItem& item, const std::string& boat) {
    const std::string& launchedOn = item.seen->lastLaunchedOn;
    // Its boat is out, or came back without it.
    const bool isMissed = !launchedOn.empty() && !item.seen->cameBackSince;
    const bool swapped = isMissed && launchedOn != boat;
    Finding finding =
        findingAbout(item.item(), swapped ? FindingKind::Swapped : FindingKind::Extra, Severity::Remark);
    if (swapped) finding.boat = launchedOn;
    return finding;
}

} // namespace

CheckAnswer judgeReturn(const BoatCheckInput& input) {
    const std::string& boat = input.location.name;
    std::vector<const Item*> wentOut;
    for (const ItemRecord& record : input.expectedBack)
        wentOut.push_back(&record.item);
    return judgeExpected(input, wentOut,
                         {[&](const Item& item) { return notReturned(item, boat); },
                          [&](const JudgedItem& item) { return strange(item, boat); }});
}

} // namespace core
