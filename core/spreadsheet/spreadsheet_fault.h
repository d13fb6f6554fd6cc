#pragma once

#include "core/base/error.h"
#include "core/base/error_code.h"

#include <exception>
#include <utility>

namespace core {

/// Thrown within this folder by whatever reads a part of a workbook; readWorkbook makes a Result of it.
struct SpreadsheetFault : std::exception {
    explicit SpreadsheetFault(Error e)
        : error(std::move(e)) {}
    const char* what() const noexcept override { return "SpreadsheetFault"; }

    Error error;
};

[[noreturn]] inline void refuse(ErrorCode code, std::vector<std::string> arguments = {}) {
    throw SpreadsheetFault({code, std::move(arguments)});
}

} // namespace core
