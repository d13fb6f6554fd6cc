#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/sheet_file.h"

#include <optional>
#include <vector>

namespace core {

/// The rows of a table as rows of a file of the contract. Numbers of rows are the table's own; a row with a
/// quantity stands as often as that. Faults stand by the meaning of their column.
struct RowsOfTable {
    SheetFile file;
    Rejections rejections;
    std::vector<WordApplied> words; ///< those in no row are left out
    /// Why nothing can be said of the rows: the first day that may be read in two ways, with its cell in
    /// `where`, or more things than an import takes.
    std::optional<Error> refusal;
};

/// Left out: rows with nothing in the columns that mean something, headings that are repeated further down,
/// rows that one merged cell fills, and sums: rows that begin with "Total", "Sum", "Summe" or "Gesamt".
RowsOfTable rowsOf(const SheetTable& table, const TableLayout& layout, const ClubSheetChoices& choices,
                   const RegisterRows& current);

} // namespace core
