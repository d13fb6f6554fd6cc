#pragma once

#include "scanner/files/file_fault.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace scanner {

/// What can be said against a file before its content is looked at: not there, shut, not a regular file, no
/// bytes.
std::optional<FileError> faultOfFile(const std::filesystem::path& path);

/// The regular files of a folder whose ending (without the dot, as written) the test accepts, sorted by name
/// byte by byte. Hidden files and subfolders are left out. Empty when the folder cannot be opened.
std::vector<std::filesystem::path> filesWithEnding(const std::filesystem::path& folder,
                                                   const std::function<bool(const std::string&)>& isWanted);

} // namespace scanner
