#pragma once

#include "core/check/boat_check.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace core::bench {

inline constexpr int boats = 10, itemsOfBoat = 30;

/// Of all items, boat after boat.
const std::vector<std::string>& codes();

/// A register as CSV: boats "boat 0" and on, their kit, and Wren Sadler.
void writeRegister(const std::filesystem::path& folder);

/// Signed launch and return checks in turn, boat after boat, until so many sightings are on record; by this
/// machine. `name`: of these checks; `answer`: what each signature keeps.
void writeHistory(const std::filesystem::path& file, const std::string& name, const CheckAnswer& answer,
                  std::int64_t sightings);

} // namespace core::bench
