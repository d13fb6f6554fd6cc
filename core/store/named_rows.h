#pragma once

#include "core/register/sheets.h"
#include "core/store/database.h"

#include <string>
#include <vector>

/// Which rows name a kit type or a size: as long as one does, it is there (Sheet::staysWhileNamed). Throw
/// StoreFailure.
namespace core::namedRows {

/// A row of kit types or sizes.
struct Key {
    SheetId sheet;
    std::string key; ///< see keyOf

    bool operator==(const Key&) const = default;
};

bool mayName(const Sheet& sheet); ///< whether rows of that sheet name any
/// What a row of that sheet names: of an item its size before its kit type.
std::vector<Key> in(const Sheet& sheet, const Cells& row);
/// Whether any row of the register names it: an item, also one that is written off, a manifest line, also as
/// what may stand in or with quantity 0, a life rule, or of a kit type a size.
bool isNamed(Database& database, const Key& row);

} // namespace core::namedRows
