#pragma once

#include "core/base/result.h"

#include <exception>

namespace core {

/// Thrown when the disk or the file fails beneath a function that otherwise cannot fail. Functions that
/// return a Result never throw it; plain readers of Club may, and a program catches it where it starts.
struct StoreFailure : std::exception {
    explicit StoreFailure(Error e)
        : error(std::move(e)) {}
    const char* what() const noexcept override { return error.what.c_str(); }

    Error error;
};

} // namespace core
