#include "core/exchange/import_planner.h"

#include "core/base/error_code.h"
#include "core/exchange/import_checks.h"
#include "core/exchange/import_draft.h"
#include "core/exchange/name_spelling.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_set>

namespace core {
namespace {

/// An item that is new and tells no day of registration is registered today.
void fillRegistered(ImportDraft& draft, CalendarDay today) {
    const auto column = static_cast<std::size_t>(sheet(SheetId::Items).indexOf("registered"));
    for (DraftRow* row : draft.touched(SheetId::Items))
        if (row->isNew() && row->cells[column].empty()) row->cells[column] = today.iso();
}

/// A new boat, person or place without a tag is given one, as kit is.
void fillTags(ImportDraft& draft, SheetId id, const MintTag& mintTag, Rejections& rejections) {
    const Sheet& sheet = core::sheet(id);
    const auto column = static_cast<std::size_t>(sheet.indexOf("tag"));
    std::vector<DraftRow*> without = draft.touched(id);
    std::erase_if(without, [&](DraftRow* row) { return !row->isNew() || !row->cells[column].empty(); });
    if (without.empty()) return;
    std::unordered_set<std::string> taken;
    for (const DraftRow& row : draft.all(id))
        taken.insert(row.cells[column]); // with that of no tag
    for (DraftRow* row : without) {
        std::string& tag = row->cells[column];
        for (int tries = 0; tries < 1000 && tag.empty(); ++tries)
            if (std::string minted = mintTag(static_cast<TagClass>(sheet.columns[column].tagClass));
                taken.insert(minted).second)
                tag = std::move(minted);
        if (tag.empty())
            rejections.add(sheet, *row->given, static_cast<int>(column), {ErrorCode::NoFreeTagCode});
    }
}

/// Where new rows of an ordered sheet go: behind those of their boat class or boat.
class Places {
public:
    Places(const ImportDraft& draft, SheetId id)
        : m_isOrdered(sheet(id).keepsOrder) {
        if (m_isOrdered)
            for (const DraftRow& row : draft.all(id))
                if (!row.isNew()) ++m_taken[ownerOf(row)];
    }

    std::optional<int> next(const DraftRow& row) {
        return m_isOrdered && row.isNew() ? std::optional(m_taken[ownerOf(row)]++) : std::nullopt;
    }

private:
    static std::string ownerOf(const DraftRow& row) {
        return foldName(row.cell("boat_class")) + '\x1F' + foldName(row.cell("boat"));
    }

    bool m_isOrdered;
    std::map<std::string, int> m_taken;
};

/// Day and reason of a state are given with it, also where they stay what they were: they are of that state.
bool isGivenWithState(const DraftRow& row, std::size_t column) {
    static const Sheet& items = sheet(SheetId::Items);
    const auto index = static_cast<int>(column);
    return row.sheet == SheetId::Items && !row.isNew() && !row.cells[column].empty() &&
           (index == items.indexOf("since") || index == items.indexOf("why")) &&
           row.cell("state") != row.before[static_cast<std::size_t>(items.indexOf("state"))];
}

void addChanges(const ImportDraft& draft, const Sheet& sheet, std::vector<RowChange>& changes) {
    Places places(draft, sheet.id);
    for (const DraftRow* row : draft.touched(sheet.id)) {
        RowChange change{sheet.id,
                         Cells(row->cells.begin(), row->cells.begin() + sheet.keyColumns),
                         {},
                         places.next(*row),
                         row->isNew()};
        for (auto i = static_cast<std::size_t>(sheet.keyColumns); i < row->cells.size(); ++i)
            if (row->cells[i] != (row->isNew() ? std::string() : row->before[i]) || isGivenWithState(*row, i))
                change.set.emplace_back(static_cast<int>(i), row->cells[i]);
        if (change.isNew || !change.set.empty()) changes.push_back(std::move(change));
    }
}

void sortByFileRowAndColumn(std::vector<RejectedRow>& rows) {
    const auto placeOf = [](const RejectedRow& rejected) {
        const Sheet* sheet = sheetOfFile(rejected.file);
        return std::tuple(sheet ? static_cast<int>(sheet->id) : sheetCount, rejected.file, rejected.row,
                          sheet ? sheet->indexOf(rejected.column) : 0);
    };
    std::stable_sort(rows.begin(), rows.end(),
                     [&](const auto& a, const auto& b) { return placeOf(a) < placeOf(b); });
}

} // namespace

ImportPlan planFiles(std::vector<SheetFile>& files, Rejections rejections, const Planning& planning) {
    ImportDraft draft(planning.current); // refers to the rows of the files from now on
    int total = 0;
    for (SheetFile& file : files) {
        draft.lay(file, planning.mintTag, rejections);
        total += static_cast<int>(file.rows.size());
    }
    NameSpelling spelling(draft, rejections);
    int done = 0;
    for (const SheetFile& file : files) {
        for (DraftRow* row : draft.touched(file.sheet->id))
            spelling.spell(*row);
        done += static_cast<int>(file.rows.size());
        if (planning.progress) planning.progress(done, total);
    }
    checkRows(draft, rejections);
    fillRegistered(draft, planning.today);
    if (rejections.rows.empty())
        for (SheetId id : {SheetId::Places, SheetId::Boats, SheetId::People})
            fillTags(draft, id, planning.mintTag, rejections);

    ImportPlan plan;
    for (const SheetFile& file : files) {
        const auto good =
            std::count_if(file.rows.begin(), file.rows.end(), [](auto& row) { return !row.isRejected; });
        plan.accepted.emplace_back(file.sheet->file, static_cast<int>(good));
        if (rejections.rows.empty()) addChanges(draft, *file.sheet, plan.changes);
    }
    plan.rejected = std::move(rejections.rows);
    sortByFileRowAndColumn(plan.rejected);
    if (!plan.rejected.empty()) return plan;
    plan.warnings = warningsOf(draft, planning.today);
    sortByFileRowAndColumn(plan.warnings);
    return plan;
}

} // namespace core
