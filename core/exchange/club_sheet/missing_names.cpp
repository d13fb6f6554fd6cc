#include "core/exchange/club_sheet/missing_names.h"

#include "core/register/cell_values.h"

#include <map>
#include <unordered_set>

namespace core {
namespace {

class Making {
public:
    Making(const std::set<SheetId>& make, const RegisterRows& current)
        : m_make(make)
        , m_current(current) {}

    void add(SheetId id, int row, const Cells& key) {
        if (!m_make.contains(id)) return;
        const Sheet& sheet = core::sheet(id);
        if (!m_known[id].insert(keyOf(sheet, key)).second || m_current.find(id, keyOf(sheet, key))) return;
        GivenRow made;
        made.row = row;
        made.cells.resize(sheet.columns.size());
        made.faulty.resize(sheet.columns.size());
        std::copy(key.begin(), key.end(), made.cells.begin());
        m_files.try_emplace(id, SheetFile{&sheet, {}, true}).first->second.rows.push_back(std::move(made));
    }

    std::vector<SheetFile> take() {
        std::vector<SheetFile> files;
        for (auto& [id, file] : m_files)
            files.push_back(std::move(file));
        return files;
    }

private:
    const std::set<SheetId>& m_make;
    const RegisterRows& m_current;
    std::map<SheetId, std::unordered_set<std::string>> m_known;
    std::map<SheetId, SheetFile> m_files;
};

void addNames(const Sheet& sheet, const GivenRow& row, int at, Making& making) {
    const Column& column = sheet.columns[static_cast<std::size_t>(at)];
    if (!column.refersTo || column.type == CellType::Tag || row.text(at).empty()) return;
    if (column.type == CellType::Name) return making.add(*column.refersTo, row.row, {row.text(at)});
    for (const std::string& name : namesFrom(row.text(at)))
        making.add(*column.refersTo, row.row, {name});
}

} // namespace

std::vector<SheetFile> missingNames(const SheetFile& file, const std::set<SheetId>& make,
                                    const RegisterRows& current) {
    Making making(make, current);
    const Sheet& sheet = *file.sheet;
    const bool hasSizes = sheet.id == SheetId::Items;
    for (const GivenRow& row : file.rows) {
        for (int at = 0; at < static_cast<int>(sheet.columns.size()); ++at)
            addNames(sheet, row, at, making);
        if (!hasSizes) continue;
        const std::string& kitType = row.text(sheet.indexOf("kit_type"));
        const std::string& size = row.text(sheet.indexOf("size"));
        if (!kitType.empty() && !size.empty()) making.add(SheetId::Sizes, row.row, {kitType, size});
    }
    return making.take();
}

} // namespace core
