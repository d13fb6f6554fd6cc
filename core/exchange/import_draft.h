#pragma once

#include "core/exchange/sheet_file.h"
#include "core/register/sheets.h"
#include "core/tag/tag_code.h"

#include <array>
#include <deque>
#include <functional>
#include <string>
#include <unordered_map>
#include <vector>

namespace core {

/// A row of the register as it would be after the import.
struct DraftRow {
    SheetId sheet = SheetId::Places;
    Cells before; ///< as it is now; no cells: the row is new
    Cells cells;
    GivenRow* given = nullptr; ///< null: the import does not touch it

    bool isNew() const { return before.empty(); }
    const std::string& cell(std::string_view column) const;
    bool isRejected() const { return given && given->isRejected; }
};

/// The register as it would be after the import: what is there now with the rows of the files laid over it.
/// Rows keep their address.
class ImportDraft {
public:
    explicit ImportDraft(const RegisterRows& current);

    /// Lays the rows of a file over the register, rejecting rows without a good key and doubles. New items
    /// without a code are given one.
    void lay(SheetFile& file, const MintTag& mintTag, Rejections& rejections);

    /// By folded key; null: not there. Looks into the register as well.
    DraftRow* find(SheetId id, const std::string& key);
    /// Rows that the import touches, in the file's order.
    const std::vector<DraftRow*>& touched(SheetId id) const { return of(id).touched; }
    /// All rows, those of the register first. Services, use and the log hold only rows that were looked for.
    const std::deque<DraftRow>& all(SheetId id) const { return of(id).rows; }
    /// False: the sheet's file could not be read to its end, so a row that is not found may yet be there.
    bool isWhole(SheetId id) const { return of(id).isWhole; }

private:
    struct SheetDraft {
        std::deque<DraftRow> rows;
        std::unordered_map<std::string, DraftRow*> byKey;
        std::vector<DraftRow*> touched;
        bool isWhole = true;
    };

    SheetDraft& of(SheetId id) { return m_sheets[static_cast<std::size_t>(id)]; }
    const SheetDraft& of(SheetId id) const { return m_sheets[static_cast<std::size_t>(id)]; }
    DraftRow& add(SheetId id, const std::string& key, DraftRow row);
    bool rejectTagOfAnother(const Sheet& sheet, GivenRow& given, Rejections& rejections) const;
    bool rejectOldName(const Sheet& sheet, GivenRow& given, Rejections& rejections) const;
    void layRow(const Sheet& sheet, GivenRow& given, Rejections& rejections);
    bool mintCode(GivenRow& given, const MintTag& mintTag);

    const RegisterRows& m_current;
    std::array<SheetDraft, sheetCount> m_sheets;
};

} // namespace core
