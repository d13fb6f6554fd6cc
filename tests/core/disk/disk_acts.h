#pragma once

#include "core/base/error.h"
#include "core/club/club.h"
#include "core/store/migrations.h"

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

/// What a person does with a club that is open. Each can be done to the club of a DiskFolder.
struct ClubAct {
    const char* name;
    std::function<Told(core::Club& club, const std::filesystem::path& folder)> run;
    bool isTriedAlways = true; ///< or in the long form alone, where it writes as others do
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

/// The steps of this version and one more.
const std::vector<core::Migration>& stepsAndOne();

} // namespace support
