#pragma once

#include "core/base/error.h"

#include <exception>
#include <utility>

namespace core {

/// Thrown when the disk or the file fails beneath a function that otherwise cannot fail. Functions that
/// return a Result never throw it; plain readers of Club may, and a program catches it where it starts.
struct StoreFailure : std::exception {
    explicit StoreFailure(Error e)
        : error(std::move(e)) {}
    const char* what() const noexcept override { return "StoreFailure"; }

    Error error;
};

/// What to tell a person of whatever a function of core threw: the failure's own error, else that something
/// in the file has another shape than the program wrote.
Error errorOf(const std::exception& thrown);

} // namespace core
