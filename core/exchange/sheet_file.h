#pragma once

#include "core/exchange/csv_import.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// A row as a file gives it, aligned with the sheet's columns: no text leaves the old value, an empty one
/// clears.
struct GivenRow {
    int row = 0;
    std::vector<std::optional<std::string>> cells;
    std::vector<bool> faulty; ///< cells that were rejected already
    bool isRejected = false;
    bool isRagged =
        false; ///< more or fewer cells than the header: rejected, and its cells may be out of step

    bool isFaulty(int column) const { return faulty[static_cast<std::size_t>(column)]; }
    /// What the file says, with nothing and cleared alike.
    const std::string& text(int column) const;
};

/// What one file gives. When it is not whole (quoting or header beyond use), what it lacks cannot be held
/// against rows of other files.
struct SheetFile {
    const Sheet* sheet = nullptr;
    std::vector<GivenRow> rows;
    bool isWhole = true;
};

/// Collects what is wrong, and marks rows as rejected.
class Rejections {
public:
    void add(std::string_view file, int row, std::string_view column, Error reason);
    void add(const Sheet& sheet, GivenRow& row, int column, Error reason); ///< marks the cell as faulty

    std::vector<RejectedRow> rows;
};

/// Reads the text of one file of the contract.
SheetFile readSheet(const Sheet& sheet, std::string_view bytes, Rejections& rejections);

/// May the key column be empty: the contract's "or" columns, and the part of a rule or record.
bool mayBeEmpty(const Sheet& sheet, int keyColumn);

} // namespace core
