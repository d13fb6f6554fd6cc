#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"

namespace core {

/// The size that the item's label names; null when it names none, or none that its type knows.
const Size* sizeOf(const Item& item, const KitType& kitType);

bool hasMeasures(const Person& person);

/// Whether every measure known of the person lies in the size's range, both ends included. A person without a
/// measure fits any size, and anybody fits an item without a size: that has to be looked at (design: rules
/// 5).
bool fits(const Item& item, const KitType& kitType, const Person& person);

} // namespace core
