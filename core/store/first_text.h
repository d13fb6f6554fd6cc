#pragma once

#include "core/store/database.h"

#include <optional>
#include <string>

namespace core {

/// The first column of a query's first row; empty without a row.
inline std::optional<std::string> firstText(Statement query) {
    std::optional<std::string> text;
    if (query.step()) {
        text = query.text(0);
        query.reset();
    }
    return text;
}

} // namespace core
