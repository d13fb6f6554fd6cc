#pragma once

#include "core/base/error.h"
#include "core/club/club.h"
#include "core/store/migrations.h"
#include "tests/support/kept_state.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string_view>
#include <vector>

namespace support {

/// When all of it is done.
core::Moment today();

/// Nothing when it was done.
using Told = std::optional<core::Error>;

/// What a person does with a club that is open.
struct ClubAct {
    const char* name;
    std::function<Told(core::Club& club, const std::filesystem::path& folder)> run;
};
const std::vector<ClubAct>& clubActs();
const ClubAct& clubAct(std::string_view name);

/// What is done with files. Each closes what it opened.
struct FileAct {
    const char* name;
    std::function<Told(const std::filesystem::path& folder)> run;
    bool isMaking; ///< when it fails, the folder holds the files of before and no others
};
const std::vector<FileAct>& fileActs();

/// A folder with a club in use, `club.tholepin`, which nobody has open, a backup of it, `backup.tholepin`,
/// one that was tampered with, `tampered`, and `more`, a folder of CSV.
class DiskFolder {
public:
    DiskFolder();
    /// Makes `to` a folder like it.
    void copyTo(const std::filesystem::path& to) const;
    std::string contentOfBackup() const;

private:
    ScratchFolder m_folder;
    std::optional<KeptState> m_keys;
};

/// The steps of this version and one more.
const std::vector<core::Migration>& stepsAndOne();

} // namespace support
