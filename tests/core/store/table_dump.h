#pragma once

#include "core/store/database.h"

#include <string>
#include <vector>

namespace support {

/// Everything that is told of a club in its tables, but which private cells are here.
inline std::string dump(core::Database& database) {
    std::string text;
    // By the schema, so that no table is forgotten.
    std::vector<std::string> tables;
    auto names =
        database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'fact' AND "
                         "name NOT LIKE 'private%' AND name NOT LIKE 'sqlite%' ORDER BY name");
    while (names.step())
        tables.push_back(names.text(0));
    for (const std::string& table : tables) {
        auto rows = database.prepare("SELECT * FROM " + table + " ORDER BY 1, 2");
        while (rows.step())
            text += table + ' ' + rows.row() + '\n';
    }
    return text;
}

} // namespace support
