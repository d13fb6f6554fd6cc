#pragma once

#include <string>
#include <utility>
#include <vector>

namespace fuzzing {

/// A ZIP file of these parts, stored as they are: a fuzzer finds no checksum by itself.
std::string zipOf(const std::vector<std::pair<std::string, std::string>>& parts);

} // namespace fuzzing
