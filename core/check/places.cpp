#include "core/check/places.h"

#include "core/check/fit.h"

#include <algorithm>

namespace core {

bool isPerPerson(const BoatCheckInput& input, const ManifestLine& line) {
    const KitType& kitType = kitTypeOf(input, line.kitType);
    return (kitType.worn || kitType.personal) && !input.people.empty();
}

std::vector<Place> placesOf(const BoatCheckInput& input) {
    std::vector<Place> places;
    for (int line = 0; line < static_cast<int>(input.lines.size()); ++line) {
        const ManifestLine& wanted = input.lines[line];
        if (wanted.quantity < 1) continue;
        if (isPerPerson(input, wanted))
            for (const Person& person : input.people)
                places.push_back({line, &person});
        else
            places.insert(places.end(), static_cast<std::size_t>(wanted.quantity), Place{line, nullptr});
    }
    return places;
}

bool takes(const ManifestLine& line, const std::string& kitType) {
    return line.kitType == kitType ||
           std::find(line.substitutes.begin(), line.substitutes.end(), kitType) != line.substitutes.end();
}

bool mayFillButForFit(const BoatCheckInput& input, const Place& place, const JudgedItem& item) {
    const bool belongs = !place.person || !item.kitType->personal || item.item().person == place.person->name;
    return takes(input.lines[place.line], item.item().kitType) && item.isSound() && belongs;
}

bool mayFill(const BoatCheckInput& input, const Place& place, const JudgedItem& item) {
    const bool tooBigOrSmall =
        place.person && item.kitType->worn && !fits(item.item(), *item.kitType, *place.person);
    return mayFillButForFit(input, place, item) && !tooBigOrSmall;
}

} // namespace core
