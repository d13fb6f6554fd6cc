#pragma once

#include <filesystem>
#include <vector>

namespace scanner {

/// The pictures and videos that a path stands for, in the order to read them: itself, or those of the folder
/// it names by their endings, sorted by name. Empty only for a folder without any.
std::vector<std::filesystem::path> filesToRead(const std::filesystem::path& path);

} // namespace scanner
