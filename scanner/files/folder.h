#pragma once

#include "scanner/files/file_fault.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace scanner {

/// What can be said against a file before its content is looked at: not there, shut, not a regular file, no
/// bytes.
std::optional<FileError> faultOfFile(const std::filesystem::path& path);

/// The pictures of a folder by their names' endings, sorted by name byte by byte; hidden files and subfolders
/// are left out. Empty when the folder cannot be opened. Never throws.
std::vector<std::filesystem::path> picturesIn(const std::filesystem::path& folder);

/// The pictures and videos that a path stands for, in the order to read them: itself, or those of the folder
/// it names by their endings, sorted by name. Empty only for a folder without any.
std::vector<std::filesystem::path> filesToRead(const std::filesystem::path& path);

} // namespace scanner
