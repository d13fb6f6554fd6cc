#include "core/check/judges.h"

#include "core/check/launch_findings.h"
#include "core/check/launch_places.h"
#include "core/check/points.h"
#include "core/check/ranked_findings.h"

#include <algorithm>

namespace core {
namespace {

LineItem lineItemOf(const JudgedItem& item, const Place* place) {
    LineItem shown{item.item().name(), item.item().kitType, place != nullptr, {},
                   item.due(),         item.seen->print};
    if (place && place->person) shown.wornBy = place->person->name;
    return shown;
}

LineAnswer answerLine(const BoatCheckInput& input, const LaunchPlaces& launch, int line) {
    LineAnswer answer;
    answer.line = input.lines[line];
    for (std::size_t p = 0; p < launch.places.size(); ++p) {
        const Place& place = launch.places[p];
        if (place.line != line) continue;
        ++answer.wanted;
        if (launch.itemAt[p] >= 0)
            answer.items.push_back(lineItemOf(launch.items[launch.itemAt[p]], &place));
        else if (place.person)
            answer.withoutPeople.push_back(place.person->name);
    }
    answer.counted = static_cast<int>(answer.items.size());
    std::ranges::sort(answer.items, {},
                      [](const LineItem& each) -> const std::string& { return each.item.id; });
    return answer;
}

/// Each seen item that does not count is listed under the first line that takes its type.
void listNotCounting(std::vector<LineAnswer>& lines, const LaunchPlaces& launch) {
    for (std::size_t i = 0; i < launch.items.size(); ++i) {
        if (launch.counts[i]) continue;
        const auto line = std::find_if(lines.begin(), lines.end(), [&](const LineAnswer& l) {
            return l.wanted > 0 && takes(l.line, launch.items[i].item().kitType);
        });
        if (line != lines.end()) line->items.push_back(lineItemOf(launch.items[i], nullptr));
    }
}

std::vector<LogEntry> openEntries(const BoatCheckInput& input, const LaunchPlaces& launch) {
    std::vector<LogEntry> entries = input.logOpen;
    for (std::size_t i = 0; i < launch.items.size(); ++i)
        if (launch.placeOf[i] >= 0)
            entries.insert(entries.end(), launch.items[i].seen->logOpen.begin(),
                           launch.items[i].seen->logOpen.end());
    return entries;
}

} // namespace

CheckAnswer judgeLaunch(const BoatCheckInput& input) {
    const LaunchPlaces launch = fillPlaces(input);
    CheckAnswer answer{input.location, input.phase, input.today, {}, {}, {}, {}, {}, {}};
    for (int line = 0; line < static_cast<int>(input.lines.size()); ++line)
        answer.lines.push_back(answerLine(input, launch, line));
    listNotCounting(answer.lines, launch);
    answer.points = answerPoints(input.points);
    answer.logOpen = openEntries(input, launch);
    answer.score = launch.score;
    RankedFindings findings;
    addLaunchFindings(findings, input, launch);
    addBoatFindings(findings, input, answer.points);
    answer.findings = std::move(findings).inOrder();
    answer.outcome = outcomeOf(answer.findings);
    return answer;
}

} // namespace core
