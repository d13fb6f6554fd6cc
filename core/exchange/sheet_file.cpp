#include "core/exchange/sheet_file.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {
namespace {

constexpr int noColumn = -1;

/// Name of a header cell as it can be shown: it may be anything.
std::string headerName(const std::string& cell) {
    return shown(withoutOuterBlanks(cell));
}

bool isSeparatedOtherwise(const CsvRecord& header) {
    return header.cells.size() == 1 && header.cells[0].find_first_of(";\t") != std::string::npos;
}

Error unknownColumn(const Sheet& sheet, const std::string& cell, std::size_t position) {
    if (withoutOuterBlanks(cell).empty())
        return {ErrorCode::ColumnWithoutName, {std::to_string(position + 1)}};
    std::vector<std::string_view> names;
    for (const Column& column : sheet.columns)
        names.push_back(column.name);
    return {ErrorCode::ColumnUnknown,
            {shown(cell), std::string(sheet.file), fmt::format("{}", fmt::join(names, ", "))}};
}

/// Which column of the sheet each cell of a record belongs to.
std::vector<int> columnsOf(const Sheet& sheet, const CsvRecord& header, Rejections& rejections) {
    std::vector<int> columns;
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        const std::string& cell = header.cells[i];
        int column = sheet.indexOf(foldName(cell));
        if (column < 0) {
            rejections.add(sheet.file, header.row, headerName(cell), unknownColumn(sheet, cell, i));
        } else if (std::find(columns.begin(), columns.end(), column) != columns.end()) {
            rejections.add(sheet.file, header.row, headerName(cell), {ErrorCode::ColumnTwice, {shown(cell)}});
            column = noColumn;
        }
        columns.push_back(column);
    }
    return columns;
}

/// An item's code may be left out with its column: then all rows are new items.
bool hasKeyColumns(const Sheet& sheet, const CsvRecord& header, const std::vector<int>& columns,
                   Rejections& rejections) {
    bool all = true;
    for (int key = 0; key < sheet.keyColumns; ++key) {
        const bool isThere = std::find(columns.begin(), columns.end(), key) != columns.end();
        if (isThere || sheet.id == SheetId::Items || mayBeEmpty(sheet, key)) continue;
        const std::string_view name = sheet.columns[static_cast<std::size_t>(key)].name;
        rejections.add(sheet.file, header.row, name, {ErrorCode::KeyColumnMissing, {std::string(name)}});
        all = false;
    }
    return all;
}

GivenRow readRow(const Sheet& sheet, const CsvRecord& record, const std::vector<int>& columns,
                 Rejections& rejections) {
    GivenRow row;
    row.row = record.row;
    row.cells.resize(sheet.columns.size());
    row.faulty.resize(sheet.columns.size());
    if (record.cells.size() != columns.size()) {
        rejections.add(
            sheet.file, record.row, {},
            {ErrorCode::RowLength, {std::to_string(record.cells.size()), std::to_string(columns.size())}});
        row.isRejected = row.isRagged = true;
    }
    for (std::size_t i = 0; i < std::min(columns.size(), record.cells.size()); ++i) {
        if (columns[i] == noColumn) continue;
        const auto column = static_cast<std::size_t>(columns[i]);
        CellReading reading = readCell(sheet.columns[column], record.cells[i]);
        row.cells[column] = std::move(reading.text);
        // The cells of a ragged row may be out of step: its key is good for what refers to it, its faults are
        // not.
        if (reading.fault && !row.isRagged) rejections.add(sheet, row, columns[i], std::move(*reading.fault));
    }
    return row;
}

bool isUtf16(std::string_view bytes) {
    return bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF");
}

} // namespace

const std::string& GivenRow::text(int column) const {
    static const std::string nothing;
    const auto& cell = cells[static_cast<std::size_t>(column)];
    return cell ? *cell : nothing;
}

void Rejections::add(std::string_view file, int row, std::string_view column, Error reason) {
    rows.push_back({std::string(file), row, std::string(column), std::move(reason)});
}

void Rejections::add(const Sheet& sheet, GivenRow& row, int column, Error reason) {
    const auto at = static_cast<std::size_t>(column);
    add(sheet.file, row.row, sheet.columns[at].name, std::move(reason));
    row.faulty[at] = true;
    row.isRejected = true;
}

bool mayBeEmpty(const Sheet& sheet, int keyColumn) {
    const std::string_view name = sheet.columns[static_cast<std::size_t>(keyColumn)].name;
    switch (sheet.id) {
    case SheetId::LifeRules:
    case SheetId::Services:
        return name == "part";
    case SheetId::ManifestLines:
    case SheetId::Points:
        return name == "boat_class" || name == "boat";
    case SheetId::Log:
        return name == "boat" || name == "code";
    default:
        return false;
    }
}

SheetFile readSheet(const Sheet& sheet, std::string_view bytes, Rejections& rejections) {
    SheetFile file{&sheet, {}, true};
    if (isUtf16(bytes)) {
        rejections.add(sheet.file, 0, {}, {ErrorCode::ImportUtf16});
        file.isWhole = false;
        return file;
    }
    const CsvText text = readCsv(bytes);
    if (text.fault) {
        rejections.add(sheet.file, text.faultRow, {}, {*text.fault});
        file.isWhole = false;
    }
    if (text.records.empty()) {
        if (file.isWhole) rejections.add(sheet.file, 1, {}, {ErrorCode::ImportWithoutHeader});
        file.isWhole = false;
        return file;
    }
    const CsvRecord& header = text.records.front();
    if (isSeparatedOtherwise(header)) {
        rejections.add(sheet.file, header.row, headerName(header.cells[0]), {ErrorCode::ImportNotByCommas});
        file.isWhole = false;
        return file;
    }
    const std::vector<int> columns = columnsOf(sheet, header, rejections);
    if (!hasKeyColumns(sheet, header, columns, rejections)) {
        file.isWhole = false;
        return file;
    }
    for (auto record = text.records.begin() + 1; record != text.records.end(); ++record)
        file.rows.push_back(readRow(sheet, *record, columns, rejections));
    return file;
}

} // namespace core
