#include "core/check/fit.h"

#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {

const Size* sizeOf(const Item& item, const KitType& kitType) {
    if (item.size.empty()) return nullptr;
    const auto found = std::find_if(kitType.sizes.begin(), kitType.sizes.end(),
                                    [&](const Size& s) { return sameName(s.name, item.size); });
    return found == kitType.sizes.end() ? nullptr : &*found;
}

bool hasMeasures(const Person& person) {
    return person.massKg || person.chestCm;
}

bool fits(const Item& item, const KitType& kitType, const Person& person) {
    const Size* size = sizeOf(item, kitType);
    if (!size) return true;
    return (!person.massKg || size->massKg.holds(*person.massKg)) &&
           (!person.chestCm || size->chestCm.holds(*person.chestCm));
}

} // namespace core
