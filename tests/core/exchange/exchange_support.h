#pragma once

#include "core/exchange/csv_import.h"
#include "core/register/sheets.h"
#include "core/tag/tag_code.h"

#include <array>
#include <filesystem>
#include <map>
#include <string>
#include <string_view>

namespace support {

/// A register in memory, for import and export without a club file.
class MapRegister : public core::RegisterRows {
public:
    std::optional<core::Cells> find(core::SheetId id, const std::string& key) const override;
    std::vector<core::Cells> all(core::SheetId id) const override;
    std::vector<core::Cells> where(core::SheetId id, std::string_view column,
                                   const std::string& value) const override;

    void apply(const std::vector<core::RowChange>& changes);

private:
    struct Row {
        core::Cells cells;
        int order = 0;
    };
    std::array<std::map<std::string, Row>, core::sheetCount> m_sheets;
};

using Files = std::map<std::string, std::string>; ///< file name and text

/// A small register that every good row of these tests can refer to. `{K1}` to `{K9}`, and so with B, P
/// and S, stand for tag codes in any text, see withCodes.
Files smallClub();
std::string withCodes(std::string text);
std::string kitCode(int number);
std::string tagCode(core::TagClass tagClass, int number); ///< the same of any class

void writeFiles(const std::filesystem::path& folder, const Files& files);
Files readFiles(const std::filesystem::path& folder);

/// Plans the import of these files on 2026-03-14.
core::ImportPlan planOf(const Files& files, const core::RegisterRows& current);
/// Imports files that must be good.
void importInto(MapRegister& rows, const Files& files);

std::string describe(const core::ImportPlan& plan); ///< the rejected rows, one a line

} // namespace support
