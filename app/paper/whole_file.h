#pragma once

#include "core/base/result.h"

#include <QByteArray>

#include <filesystem>

namespace app {

/// What a failure calls it.
enum class Paper { File, Sheet };

/// Writes a file so that it is whole or as it was before: first beside it, then renamed over it. DiskFailed.
core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes,
                             Paper paper = Paper::File);

/// Whether writeWholeFile would find a place for it; asked before what cannot be taken back. Leaves nothing
/// behind.
core::Outcome canWriteWholeFile(const std::filesystem::path& file, Paper paper = Paper::File);

} // namespace app
