#include "core/answers/fit_out.h"

#include "core/upkeep/same_name.h"

namespace core {
namespace {

bool isPersonal(const std::map<std::string, KitType>& kitTypes, const std::string& name) {
    const auto found = kitTypes.find(name);
    return found != kitTypes.end() && found->second.personal;
}

/// How many of each kit type are aboard, as the register has it.
std::map<std::string, int> aboard(const Boat& boat, const std::map<std::string, KitType>& kitTypes,
                                  const std::vector<Item>& kit) {
    std::map<std::string, int> counts;
    for (const Item& item : kit) {
        const bool goesWithOwner =
            item.boat.empty() && !item.person.empty() && isPersonal(kitTypes, item.kitType);
        if (item.state != ItemState::WrittenOff && (goesWithOwner || sameName(item.boat, boat.name)))
            ++counts[item.kitType];
    }
    return counts;
}

void fill(FitOutLine& line, int& left) {
    const int taken = std::min(line.lacking(), left);
    line.there += taken;
    left -= taken;
}

} // namespace

std::vector<FitOutLine> fitOutOfBoat(const Boat& boat, const std::vector<ManifestLine>& lines,
                                     const std::map<std::string, KitType>& kitTypes,
                                     const std::vector<Item>& kit) {
    std::map<std::string, int> left = aboard(boat, kitTypes, kit);
    std::vector<FitOutLine> answer;
    for (const ManifestLine& line : lines)
        fill(answer.emplace_back(FitOutLine{line}), left[line.kitType]);
    for (FitOutLine& each : answer)
        for (const std::string& substitute : each.line.substitutes)
            fill(each, left[substitute]);
    return answer;
}

std::vector<FitOutLine> fitOutOfSpares(const std::map<std::string, KitType>& kitTypes,
                                       const std::vector<Item>& kit) {
    std::map<std::string, int> left;
    for (const Item& item : kit)
        if (item.state != ItemState::WrittenOff && !item.place.empty()) ++left[item.kitType];
    std::vector<FitOutLine> answer;
    for (const auto& [name, kitType] : kitTypes)
        if (kitType.spares > 0) {
            ManifestLine spares;
            spares.kitType = name;
            spares.quantity = kitType.spares;
            fill(answer.emplace_back(FitOutLine{spares}), left[name]);
        }
    return answer;
}

} // namespace core
