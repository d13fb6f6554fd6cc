#pragma once

#include "core/base/result.h"
#include "core/register/sheets.h"

#include <filesystem>
#include <string>
#include <vector>

namespace core {

/// Writes the register as one CSV file per sheet: RFC 4180, UTF-8, CRLF, rows by key (manifest lines and
/// points in the manifest's order), cells that a spreadsheet would run made harmless with a leading `'`. The
/// folder is made when it is missing; files of the contract in it are replaced, others stay. Either every
/// file is new or none is touched; DiskFailed names the file.
///
/// The measures of a person are private: they are written only for those in `measuresOf` (names, compared as
/// names are). NotFound for a name that is not in the register.
Outcome exportSheets(const RegisterRows& rows, const std::filesystem::path& folder,
                     const std::vector<std::string>& measuresOf = {});

} // namespace core
