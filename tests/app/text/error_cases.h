#pragma once

#include "core/base/error.h"
#include "core/base/error_code.h"

#include <string>
#include <vector>

namespace app {

/// A code with arguments of each kind, and what is said of it in English: scripts read it, so it stays.
struct ErrorCase {
    core::Error error;
    core::ErrorKind kind;
    std::string sentence;
    std::string mend = {};
    std::string place = {}; ///< in the record
};

// Every code of error_code.h stands in one of them.
extern const std::vector<ErrorCase> fileCases;
extern const std::vector<ErrorCase> hubCases;
extern const std::vector<ErrorCase> clubCases;
extern const std::vector<ErrorCase> tagCases;
extern const std::vector<ErrorCase> importCases;
extern const std::vector<ErrorCase> spreadsheetCases;

} // namespace app
