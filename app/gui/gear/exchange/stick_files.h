#pragma once

#include "core/base/error.h"
#include "core/base/instant.h"

#include <QStringList>

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace app {

/// A club file that lies on a stick, or a stick without one.
struct FoundFile {
    enum class Kind {
        OfThisClub,
        OfAnotherClub,
        NoClubFile,
        Unreadable, ///< why is in `error`
        NoneYet,    ///< `file` is where one of this club may be made
    };
    Kind kind = Kind::NoneYet;
    std::filesystem::path file;
    std::filesystem::path stick;
    std::optional<core::Instant> written{}; ///< as the file system tells
    std::optional<core::Error> error{};
};

/// What lies on these sticks, in their top folder and the folders in it. The file that is open (`own`) is
/// left out, and so are the copies that are made after each check: an exchange would write to them. `origin`:
/// of the open club (core/club/club_record.h). Reads each file, so not on the window's thread.
std::vector<FoundFile> filesOnSticks(const QStringList& sticks, const std::filesystem::path& own,
                                     const std::string& origin);

/// A name in that folder at which nothing stands: that of the open file, with a number where it must be.
std::filesystem::path freeName(const std::filesystem::path& folder, const std::filesystem::path& own);

} // namespace app
