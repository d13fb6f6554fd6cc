#include "core/exchange/csv_import.h"

#include "core/base/error_code.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"
#include "core/exchange/import_checks.h"
#include "core/exchange/import_draft.h"
#include "core/exchange/name_spelling.h"
#include "core/exchange/sheet_file.h"

#include <algorithm>
#include <fmt/format.h>
#include <fstream>
#include <map>

namespace core {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t largestFile = 256U << 20;

/// The CSV files of a folder, by folded name.
Result<std::map<std::string, fs::path>> csvFilesIn(const fs::path& folder) {
    std::error_code failure;
    std::map<std::string, fs::path> files;
    fs::directory_iterator entry(folder, failure);
    for (; !failure && entry != fs::directory_iterator(); entry.increment(failure))
        if (foldName(entry->path().extension().string()) == ".csv")
            files.emplace(entry->path().filename().string(), entry->path());
    if (failure) return Error{ErrorCode::FolderUnreadable, {failure.message()}, folder.string()};
    if (files.empty()) return Error{ErrorCode::FolderWithoutCsv, {}, folder.string()};
    return files;
}

/// The text of a file, or nothing with a rejection.
std::optional<std::string> textOf(const fs::path& path, std::string_view name, Rejections& rejections) {
    std::error_code failure;
    const auto refuse = [&](ErrorCode code) {
        rejections.add(name, 0, {}, {code});
        return std::nullopt;
    };
    if (!fs::is_regular_file(path, failure)) return refuse(ErrorCode::ImportNotAFile);
    if (fs::file_size(path, failure) > largestFile || failure) return refuse(ErrorCode::ImportFileTooLarge);
    std::ifstream stream(path, std::ios::binary);
    std::string text(std::istreambuf_iterator<char>(stream), {});
    if (!stream) return refuse(ErrorCode::ImportFileUnreadable);
    return text;
}

Error unknownFile() {
    std::vector<std::string_view> names;
    for (const Sheet& sheet : allSheets())
        names.push_back(sheet.file);
    return {ErrorCode::ImportFileUnknown, {fmt::format("{}", fmt::join(names, ", "))}};
}

std::vector<SheetFile> readFiles(const std::map<std::string, fs::path>& paths, Rejections& rejections) {
    std::vector<SheetFile> files;
    for (const Sheet& sheet : allSheets()) {
        const fs::path* first = nullptr;
        for (const auto& [name, path] : paths) {
            if (foldName(name) != sheet.file) continue;
            if (first) {
                rejections.add(sheet.file, 0, {}, {ErrorCode::ImportFileTwice});
                continue;
            }
            first = &path;
            const auto text = textOf(path, sheet.file, rejections);
            files.push_back(text ? readSheet(sheet, *text, rejections) : SheetFile{&sheet, {}, false});
        }
    }
    for (const auto& [name, path] : paths)
        if (!sheetOfFile(foldName(name))) rejections.add(shown(name), 0, {}, unknownFile());
    return files;
}

/// An item that is new and tells no day of registration is registered today.
void fillRegistered(ImportDraft& draft, CalendarDay today) {
    const auto column = static_cast<std::size_t>(sheet(SheetId::Items).indexOf("registered"));
    for (DraftRow* row : draft.touched(SheetId::Items))
        if (row->isNew() && row->cells[column].empty()) row->cells[column] = today.iso();
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

void addChanges(const ImportDraft& draft, const Sheet& sheet, std::vector<RowChange>& changes) {
    Places places(draft, sheet.id);
    for (const DraftRow* row : draft.touched(sheet.id)) {
        RowChange change{sheet.id,
                         Cells(row->cells.begin(), row->cells.begin() + sheet.keyColumns),
                         {},
                         places.next(*row),
                         row->isNew()};
        for (auto i = static_cast<std::size_t>(sheet.keyColumns); i < row->cells.size(); ++i)
            if (row->cells[i] != (row->isNew() ? std::string() : row->before[i]))
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

/// Without warnings; lays the files into the draft, which refers to their rows from then on.
ImportPlan planFiles(ImportDraft& draft, std::vector<SheetFile>& files, Rejections rejections,
                     CalendarDay today, const std::function<std::string()>& mintItemCode,
                     const std::function<void(int done, int of)>& progress) {
    int total = 0;
    for (SheetFile& file : files) {
        draft.lay(file, mintItemCode, rejections);
        total += static_cast<int>(file.rows.size());
    }
    NameSpelling spelling(draft, rejections);
    int done = 0;
    for (const SheetFile& file : files) {
        for (DraftRow* row : draft.touched(file.sheet->id))
            spelling.spell(*row);
        done += static_cast<int>(file.rows.size());
        if (progress) progress(done, total);
    }
    checkRows(draft, rejections);
    fillRegistered(draft, today);

    ImportPlan plan;
    for (const SheetFile& file : files) {
        const auto good =
            std::count_if(file.rows.begin(), file.rows.end(), [](auto& row) { return !row.isRejected; });
        plan.accepted.emplace_back(file.sheet->file, static_cast<int>(good));
        if (rejections.rows.empty()) addChanges(draft, *file.sheet, plan.changes);
    }
    plan.rejected = std::move(rejections.rows);
    sortByFileRowAndColumn(plan.rejected);
    return plan;
}

} // namespace

Result<ImportPlan> planImport(const fs::path& folder, const RegisterRows& current, CalendarDay today,
                              const std::function<std::string()>& mintItemCode,
                              const std::function<void(int done, int of)>& progress) {
    const auto paths = csvFilesIn(folder);
    if (!paths) return paths.error();
    Rejections rejections;
    std::vector<SheetFile> files = readFiles(*paths, rejections);
    ImportDraft draft(current);
    ImportPlan plan = planFiles(draft, files, std::move(rejections), today, mintItemCode, progress);
    if (!plan.rejected.empty()) return plan;
    plan.warnings = warningsOf(draft);
    sortByFileRowAndColumn(plan.warnings);
    return plan;
}

ImportPlan planSheet(const Sheet& sheet, std::string_view csv, const RegisterRows& current, CalendarDay today,
                     const std::function<std::string()>& mintItemCode) {
    Rejections rejections;
    std::vector<SheetFile> files{readSheet(sheet, csv, rejections)};
    ImportDraft draft(current);
    return planFiles(draft, files, std::move(rejections), today, mintItemCode, {});
}

std::string sheetOfRow(const Sheet& sheet, const std::vector<std::pair<std::string, std::string>>& cells) {
    std::string header, row;
    for (const auto& [name, text] : cells) {
        const Column& column = sheet.columns[static_cast<std::size_t>(sheet.indexOf(name))];
        header += (header.empty() ? "" : ",") + name;
        row += (&name == &cells.front().first ? "" : ",") +
               csvCell(text.empty() ? "-" : writtenCell(column, text));
    }
    return header + "\r\n" + row + "\r\n";
}

} // namespace core
