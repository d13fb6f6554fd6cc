#pragma once

#include "core/check/check_record.h"
#include "core/register/item.h"
#include "tests/core/base/days.h"
#include "tests/core/register/item_names.h"

#include <string>

namespace core {

inline Instant instant(const std::string& text) {
    return Instant::parse(text).value();
}

/// A check of the boat Petrel that Odalys Finch signed. Stamps in the tests are "1", "2" …
inline SignOff signOff(const std::string& check, const std::string& stamp, Phase phase,
                       const std::string& at) {
    return {.check = check,
            .stamp = stamp,
            .location = Location::boat("Petrel"),
            .phase = phase,
            .by = "Odalys Finch",
            .at = instant(at)};
}

inline Item itemOf(const std::string& code, const std::string& kitType) {
    Item item;
    item.id = code;
    item.tag = tagOn(code);
    item.kitType = kitType;
    return item;
}

} // namespace core
