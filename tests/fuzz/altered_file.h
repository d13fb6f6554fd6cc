#pragma once

#include <cstdint>
#include <filesystem>
#include <span>

/// A club file as another program, or a failing disk, may leave it.
namespace fuzz {

/// Of this process, in memory where the system has such a place.
std::filesystem::path scratchFolder();

/// Copies the sample and alters the copy as the bytes say: a row of records of 16 bytes each, the first of
/// which chooses what is altered. Pages keep SQLite's layout, cells their tables, frames their checksums, so
/// that what is altered is read.
void alter(const std::filesystem::path& sample, const std::filesystem::path& file,
           std::span<const std::uint8_t> bytes);

} // namespace fuzz
