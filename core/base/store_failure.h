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

/// What to tell a person of whatever a function of core threw: the failure's own error, else that something
/// in the file has another shape than the program wrote.
inline Error errorOf(const std::exception& thrown) {
    if (const auto* failure = dynamic_cast<const StoreFailure*>(&thrown)) return failure->error;
    return {ErrorKind::FileDamaged,
            std::string("the club file holds something that cannot be read: ") + thrown.what(),
            {},
            "look it over with verify, and restore a backup"};
}

} // namespace core
