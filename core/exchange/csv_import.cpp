#include "core/exchange/csv_import.h"

#include "core/base/error_code.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"
#include "core/exchange/import_planner.h"
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

const std::string* find(const CellTexts& row, const Column& column) {
    const auto found =
        std::find_if(row.begin(), row.end(), [&](const auto& cell) { return cell.first == column.name; });
    return found == row.end() ? nullptr : &found->second;
}

} // namespace

Result<ImportPlan> planImport(const fs::path& folder, const RegisterRows& current, CalendarDay today,
                              const MintTag& mintTag, const std::function<void(int done, int of)>& progress) {
    const auto paths = csvFilesIn(folder);
    if (!paths) return paths.error();
    Rejections rejections;
    std::vector<SheetFile> files = readFiles(*paths, rejections);
    return planFiles(files, std::move(rejections), {current, today, mintTag, progress});
}

ImportPlan planSheet(const Sheet& sheet, std::string_view csv, const RegisterRows& current, CalendarDay today,
                     const MintTag& mintTag) {
    Rejections rejections;
    std::vector<SheetFile> files{readSheet(sheet, csv, rejections)};
    return planFiles(files, std::move(rejections), {current, today, mintTag, {}});
}

ImportPlan planRows(const Sheet& sheet, const std::vector<CellTexts>& rows, const RegisterRows& current,
                    CalendarDay today, const MintTag& mintTag) {
    const auto noTag = [](TagClass) { return std::string(); };
    return planSheet(sheet, sheetOfRows(sheet, rows), current, today, mintTag ? mintTag : MintTag(noTag));
}

std::string sheetOfRows(const Sheet& sheet, const std::vector<CellTexts>& rows) {
    std::vector<const Column*> columns;
    for (const Column& column : sheet.columns)
        if (std::any_of(rows.begin(), rows.end(), [&](const CellTexts& row) { return find(row, column); }))
            columns.push_back(&column);
    const auto line = [&](auto textOf) {
        std::string text;
        for (const Column* column : columns)
            text += (column == columns.front() ? "" : ",") + textOf(*column);
        return text + "\r\n";
    };
    std::string csv = line([](const Column& column) { return std::string(column.name); });
    for (const CellTexts& row : rows)
        csv += line([&](const Column& column) {
            const std::string* text = find(row, column);
            return text ? csvCell(text->empty() ? "-" : writtenCell(column, *text)) : std::string();
        });
    return csv;
}

} // namespace core
