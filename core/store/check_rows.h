#pragma once

#include "core/base/instant.h"
#include "core/check/check_record.h"
#include "core/store/statement.h"

#include <optional>
#include <vector>

/// Reads rows of the tables about checks; of a cell that cannot be understood StoreFailure says where it
/// stands. The first column of `row` is its key, `table` and `name` are for the error.
namespace core::checkRows {

Phase phaseIn(const Statement& row, const char* table, int column);
Instant instantIn(const Statement& row, const char* table, const char* name, int column);

template <class Make>
auto firstOf(Statement query, Make make) {
    std::optional<decltype(make(query))> result;
    if (query.step()) {
        result = make(query);
        query.reset();
    }
    return result;
}

template <class Make>
auto allOf(Statement query, Make make) {
    std::vector<decltype(make(query))> result;
    while (query.step())
        result.push_back(make(query));
    return result;
}

} // namespace core::checkRows
