#pragma once

#include "core/base/result.h"

#include <QByteArray>

#include <filesystem>

namespace app {

/// Writes a file so that it is whole or as it was before: first beside it, then renamed over it. DiskFailed.
core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes);

} // namespace app
