#include "core/answers/fit_out.h"

#include "core/base/plain_text.h"
#include "core/upkeep/same_name.h"

namespace core {
namespace {

bool isPersonal(const std::map<std::string, KitType>& kitTypes, const std::string& name) {
    const auto found = kitTypes.find(name);
    return found != kitTypes.end() && found->second.personal;
}

/// How many of each kit type, folded, are aboard, as the register has it.
std::map<std::string, int> aboard(const Boat& boat, const std::map<std::string, KitType>& kitTypes,
                                  const std::vector<Item>& kit) {
    std::map<std::string, int> counts;
    for (const Item& item : kit) {
        const bool goesWithOwner =
            item.boat.empty() && !item.person.empty() && isPersonal(kitTypes, item.kitType);
        if (item.state != ItemState::WrittenOff && (goesWithOwner || sameName(item.boat, boat.name)))
            ++counts[foldName(item.kitType)];
    }
    return counts;
}

int takeOf(int& left, int most) {
    const int taken = std::min(left, most);
    left -= taken;
    return taken;
}

} // namespace

std::vector<int> filledLines(const std::vector<ManifestLine>& lines, std::map<std::string, int> left) {
    std::vector<int> filled;
    for (const ManifestLine& line : lines)
        filled.push_back(takeOf(left[foldName(line.kitType)], line.quantity));
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (const std::string& substitute : lines[i].substitutes)
            filled[i] += takeOf(left[foldName(substitute)], lines[i].quantity - filled[i]);
    return filled;
}

std::vector<FitOutLine> fitOutOfBoat(const Boat& boat, const std::vector<ManifestLine>& lines,
                                     const std::map<std::string, KitType>& kitTypes,
                                     const std::vector<Item>& kit) {
    const std::vector<int> filled = filledLines(lines, aboard(boat, kitTypes, kit));
    std::vector<FitOutLine> answer;
    for (std::size_t i = 0; i < lines.size(); ++i)
        answer.push_back({lines[i], filled[i]});
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
            answer.push_back({spares, takeOf(left[name], spares.quantity)});
        }
    return answer;
}

} // namespace core
