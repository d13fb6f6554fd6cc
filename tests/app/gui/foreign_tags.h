#pragma once

#include <filesystem>
#include <set>
#include <string>

#include <QString>

namespace support {

/// The codes of a sheet's pages, drawn by poppler and read by ZXing: neither shares code with this program.
std::set<std::string> tagsReadByOthers(const QString& pdf, const std::filesystem::path& scratch);

} // namespace support
