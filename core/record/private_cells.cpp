#include "core/record/private_cells.h"

#include "core/record/hex.h"
#include "core/record/json_values.h"

#include <algorithm>
#include <array>
#include <sodium.h>

namespace core {
namespace {

constexpr const char* pinColumn = "pin";

std::string freshSalt() {
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    return hexOf(bytes);
}

} // namespace

std::string digestOf(const std::string& fact, const PrivateCell& cell) {
    return sha256Hex(canonical(json{fact, cell.column, cell.salt, cell.value}));
}

std::vector<PrivateCell> seal(RowWritten& row, const std::string& fact) {
    const auto& columns = sheet(row.sheet).columns;
    const auto isOpen = [&](const auto& set) {
        return !columns[static_cast<std::size_t>(set.first)].isPrivate;
    };
    const auto hidden = std::stable_partition(row.set.begin(), row.set.end(), isOpen);
    std::vector<PrivateCell> cells;
    for (auto set = hidden; set != row.set.end(); ++set) {
        const auto& column = columns[static_cast<std::size_t>(set->first)];
        cells.push_back({std::string(column.name), freshSalt(), set->second});
        row.sealed.emplace_back(set->first, digestOf(fact, cells.back()));
    }
    row.set.erase(hidden, row.set.end());
    return cells;
}

std::vector<PrivateCell> seal(FactBody& body, const std::string& fact) {
    if (auto* row = std::get_if<RowWritten>(&body)) return seal(*row, fact);
    auto* set = std::get_if<PinSet>(&body);
    if (set == nullptr) return {};
    PrivateCell cell{pinColumn, freshSalt(), std::move(set->pin)};
    set->pin.clear();
    set->sealed = digestOf(fact, cell);
    return {std::move(cell)};
}

std::vector<SealedCell> sealedCells(const FactBody& body) {
    if (const auto* set = std::get_if<PinSet>(&body)) return {{pinColumn, set->sealed}};
    const auto* row = std::get_if<RowWritten>(&body);
    if (row == nullptr) return {};
    std::vector<SealedCell> cells;
    for (const auto& [column, digest] : row->sealed) {
        const auto& columns = sheet(row->sheet).columns;
        cells.push_back({std::string(columns[static_cast<std::size_t>(column)].name), digest});
    }
    return cells;
}

} // namespace core
