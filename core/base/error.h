#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace core {

/// What a program does about a failure, and the exit code that follows.
enum class ErrorKind {
    BadInput,       ///< what was given cannot be used; nothing was changed
    NotFound,       ///< a name or code that the club does not have
    NotAllowed,     ///< against a rule of the record, e.g. a second signature
    FileExists,     ///< refuses to write over it
    FileMissing,    ///<
    NotAClubFile,   ///< some other file
    FileUnfinished, ///< creation was cut short before anything was recorded: create it again
    FileNewer,      ///< written by a newer Tholepin
    FileLocked,     ///< another program holds it
    FileDamaged,    ///<
    DiskFailed,     ///< full, read-only, I/O error; another thing of the machine that gave out
};

/// In error_code.h: only who fails needs the codes, so a new one does not build everything anew.
enum class ErrorCode : std::uint16_t;

ErrorKind kindOf(ErrorCode code);

/// Why something that may fail in the field failed. Holds no sentence: app/text/errors.h makes it of the
/// code.
struct Error {
    ErrorCode code{};
    std::vector<std::string> arguments = {}; ///< as error_code.h says beside the code
    std::string where = {};                  ///< file, file:row:column or option; may be empty
    std::vector<Error> cause =
        {}; ///< what the code's own sentence quotes, for codes that say so; one, or none

    ErrorKind kind() const { return kindOf(code); }
    bool operator==(const Error&) const = default;
};

} // namespace core
