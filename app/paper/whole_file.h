#pragma once

#include "core/base/result.h"

#include <QByteArray>

#include <filesystem>
#include <string>

namespace app {

/// Writes a file so that it is whole or as it was before: first beside it, then renamed over it. DiskFailed,
/// which calls it `what`.
core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes,
                             const std::string& what = "file");

/// Whether writeWholeFile would find a place for it; asked before what cannot be taken back. Leaves nothing
/// behind.
core::Outcome canWriteWholeFile(const std::filesystem::path& file, const std::string& what = "file");

} // namespace app
