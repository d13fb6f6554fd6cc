#pragma once

#include "tests/support/kept_state.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <optional>
#include <string>

namespace support {

/// A folder with a club in use, `club.tholepin`, which nobody has open, a backup of it, `backup.tholepin`,
/// one that was tampered with, `tampered`, the file of another machine of the club, `van`, and `more`, a
/// folder of CSV.
class DiskFolder {
public:
    DiskFolder();
    /// Makes `to` a folder like it.
    void copyTo(const std::filesystem::path& to) const;
    std::string contentOf(const char* name) const;

private:
    ScratchFolder m_folder;
    std::optional<KeptState> m_keys;
};

} // namespace support
