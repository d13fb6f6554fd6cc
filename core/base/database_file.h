#pragma once

#include <filesystem>

namespace core {

/// Whether the file is a database of SQLite, such as a club file, its rollback journal or its write-ahead
/// log, or stands where SQLite would take it for one of those of a database that is there. Told by how the
/// files begin (SQLite's file format, sections 1.3, 3 and 4.1); what is no regular
/// file, or cannot be read, is none.
bool isOfDatabase(const std::filesystem::path& file);

} // namespace core
