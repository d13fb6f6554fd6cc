#pragma once

#include "core/base/error.h"

#include <cstdint>
#include <exception>
#include <optional>
#include <string>
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

/// Where a stored text stands.
struct CellPlace {
    std::string table; ///< a sheet's file, "items.csv", or another table of the club file
    std::string row;   ///< its key, as a person reads it
    std::string column;
};

/// FileDamaged: what stands there is nothing that this program writes. `part`: of a text that holds several
/// values, like "findings.2.kind"; else empty.
Error unreadableCell(const CellPlace& place, const std::string& part, const std::string& text);

/// The same of a field of a fact. Without a text the field is not there.
Error unreadableField(std::int64_t number, const std::string& machine, const std::string& field,
                      const std::optional<std::string>& text);

} // namespace core
