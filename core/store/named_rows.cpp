#include "core/store/named_rows.h"

#include "core/store/row_table.h"

#include "core/register/cell_values.h"

#include <algorithm>

namespace core::namedRows {
namespace {

std::string cell(const Sheet& sheet, const Cells& row, std::string_view column) {
    const int index = sheet.indexOf(column);
    return index < 0 ? std::string() : row[static_cast<std::size_t>(index)];
}

bool isAnyOf(const std::vector<Key>& keys, const Key& wanted) {
    return std::find(keys.begin(), keys.end(), wanted) != keys.end();
}

/// There may be ten thousand items, of a few kit types and sizes.
bool isOfAnItem(Database& database, const Key& wanted) {
    Statement query = database.prepare("SELECT DISTINCT kit_type, size FROM item");
    const Sheet& items = sheet(SheetId::Items);
    Cells row(items.columns.size());
    bool isFound = false;
    while (query.step()) {
        row[static_cast<std::size_t>(items.indexOf("kit_type"))] = query.text(0);
        row[static_cast<std::size_t>(items.indexOf("size"))] = query.text(1);
        isFound = isFound || isAnyOf(in(items, row), wanted);
    }
    return isFound;
}

} // namespace

bool mayName(const Sheet& sheet) {
    return sheet.id == SheetId::Items || sheet.id == SheetId::ManifestLines ||
           sheet.id == SheetId::LifeRules || sheet.id == SheetId::Sizes;
}

std::vector<Key> in(const Sheet& sheet, const Cells& row) {
    if (!mayName(sheet)) return {};
    std::vector<Key> named;
    const std::string kitType = cell(sheet, row, "kit_type");
    if (sheet.id == SheetId::Items && !cell(sheet, row, "size").empty())
        named.push_back(
            {SheetId::Sizes, keyOf(core::sheet(SheetId::Sizes), {kitType, cell(sheet, row, "size")})});
    if (!kitType.empty()) named.push_back({SheetId::KitTypes, foldName(kitType)});
    for (const std::string& other : namesFrom(cell(sheet, row, "substitutes")))
        named.push_back({SheetId::KitTypes, foldName(other)});
    return named;
}

bool isNamed(Database& database, const Key& row) {
    if (isOfAnItem(database, row)) return true;
    for (const SheetId id : {SheetId::Sizes, SheetId::LifeRules, SheetId::ManifestLines})
        for (const Cells& other : rowTable::all(database, sheet(id)))
            if (isAnyOf(in(sheet(id), other), row)) return true;
    return false;
}

} // namespace core::namedRows
