#pragma once

#include <filesystem>
#include <map>
#include <string>

namespace support {

/// A new club file with the rows of these CSV files as they stand there, looked at by nothing: texts that no
/// import takes, as an older file or another machine may hold them.
void writeUnchecked(const std::filesystem::path& file, const std::string& club,
                    const std::map<std::string, std::string>& files);

/// The texts of a CSV file or an answer in which each name of the left side stands as the right side.
std::string replaced(std::string text, const std::map<std::string, std::string>& names);

} // namespace support
