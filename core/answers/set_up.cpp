#include "core/answers/set_up.h"

#include "core/base/plain_text.h"

namespace core {
namespace {

bool isExample(const std::string& source) {
    return foldName(source).starts_with("example");
}

SetUpTick boatsTick(const SetUpValues& values) {
    const auto boats = static_cast<int>(values.boats.size());
    SetUpTick tick{SetUpStep::Boats, boats > 0, boats};
    for (const UnaskedBoat& boat : values.unasked)
        if (!boat.like.empty()) tick.unasked.push_back(boat);
    tick.isDone = tick.isDone && tick.unasked.empty();
    return tick;
}

SetUpTick kitTick(const std::vector<BoatFitOut>& boats, const std::vector<UnaskedBoat>& unasked) {
    SetUpTick tick{SetUpStep::Kit};
    tick.unasked = unasked;
    for (const BoatFitOut& boat : boats)
        if (!boat.isComplete()) tick.lacking.push_back(boat.boat);
    tick.count = static_cast<int>(boats.size() - tick.lacking.size());
    tick.isDone = !boats.empty() && tick.lacking.empty();
    return tick;
}

SetUpTick rulesTick(const std::vector<std::string>& sources) {
    const auto examples = std::count_if(sources.begin(), sources.end(), isExample);
    return {SetUpStep::Rules, examples == 0 && !sources.empty(), static_cast<int>(examples)};
}

} // namespace

bool BoatFitOut::isComplete() const {
    return !lines.empty() && std::all_of(lines.begin(), lines.end(),
                                         [](const FitOutLine& line) { return line.lacking() == 0; });
}

std::vector<SetUpTick> setUpOf(const SetUpValues& values) {
    return {{SetUpStep::People, values.people > 0, values.people},
            boatsTick(values),
            kitTick(values.boats, values.unasked),
            rulesTick(values.ruleSources),
            {SetUpStep::Tags, values.arePrinted || values.wasTagSeen},
            {SetUpStep::FirstCheck, values.wasSigned}};
}

bool isSetUp(const std::vector<SetUpTick>& ticks) {
    return !ticks.empty() &&
           std::all_of(ticks.begin(), ticks.end(), [](const SetUpTick& tick) { return tick.isDone; });
}

} // namespace core
