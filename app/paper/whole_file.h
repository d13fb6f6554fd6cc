#pragma once

#include "core/base/result.h"

#include <QByteArray>

#include <filesystem>

namespace app {

/// What a failure calls it.
enum class Paper { File, Sheet, Picture };

// The one way to make a file for people. It never takes the place of a club file (nor of what SQLite keeps
// beside one), of a folder, a device or a pipe, whatever name or link leads there: BadInput. Any other file
// of that name is written over.

/// Writes a file so that it is whole or as it was before: first beside it, then renamed over it. DiskFailed.
core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes,
                             Paper paper = Paper::File);

/// Whether writeWholeFile would find a place for it; asked before what cannot be taken back. Leaves nothing
/// behind.
core::Outcome canWriteWholeFile(const std::filesystem::path& file, Paper paper = Paper::File);

} // namespace app
