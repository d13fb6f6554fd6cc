#include "core/spreadsheet/workbook.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/spreadsheet/packed_file.h"
#include "core/spreadsheet/readers.h"
#include "core/spreadsheet/spreadsheet_fault.h"

#include <algorithm>
#include <fstream>
#include <new>

namespace core {
namespace {

namespace fs = std::filesystem;

/// Microsoft's compound files: old .xls workbooks, and new ones behind a password ([MS-OFFCRYPTO] 2.3), which
/// name their stream in UTF-16.
bool isCompoundFile(std::string_view bytes) {
    return bytes.starts_with("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1");
}

bool isEncryptedCompound(std::string_view bytes) {
    std::string name;
    for (char c : std::string_view("EncryptedPackage"))
        name.append({c, '\0'});
    return bytes.find(name) != std::string_view::npos;
}

bool isTextFile(const std::string& name) {
    const std::string extension = foldName(fs::path(name).extension().string());
    return extension == ".csv" || extension == ".tsv" || extension == ".txt";
}

std::vector<SheetTable> tablesOf(std::string_view bytes, const std::string& name) {
    if (isCompoundFile(bytes))
        refuse(isEncryptedCompound(bytes) ? ErrorCode::SpreadsheetProtected : ErrorCode::SpreadsheetOldKind);
    if (bytes.starts_with("PK")) {
        const PackedFile file(bytes);
        if (file.has("content.xml")) return readOds(file);
        if (file.has("[Content_Types].xml") || file.has("xl/workbook.xml")) return readXlsx(file);
        refuse(ErrorCode::SpreadsheetOtherKind);
    }
    if (isTextFile(name)) return {readDelimited(bytes, name)};
    const std::string extension = foldName(fs::path(name).extension().string());
    const bool isNamedWorkbook = extension == ".xlsx" || extension == ".ods" || extension == ".xlsm";
    if (bytes.empty()) refuse(ErrorCode::SpreadsheetEmpty);
    refuse(isNamedWorkbook ? ErrorCode::SpreadsheetUnreadable : ErrorCode::SpreadsheetOtherKind);
}

Result<Workbook> withFaultsCaught(std::string_view bytes, const std::string& name) {
    try {
        if (bytes.size() > largestWorkbook) refuse(ErrorCode::SpreadsheetTooLarge, {"64"});
        Workbook book{tablesOf(bytes, name)};
        std::erase_if(book.tables, [](const SheetTable& table) { return table.rows.empty(); });
        if (book.tables.empty()) refuse(ErrorCode::SpreadsheetEmpty);
        return book;
    } catch (const SpreadsheetFault& fault) {
        return fault.error;
    } catch (const std::bad_alloc&) {
        return Error{ErrorCode::MemoryShort};
    } catch (const std::exception&) { // what the XML parser throws
        return Error{ErrorCode::SpreadsheetUnreadable};
    }
}

} // namespace

Result<Workbook> readWorkbook(std::string_view bytes, const std::string& fileName) {
    auto book = withFaultsCaught(bytes, fileName);
    if (book) return book;
    Error error = book.error();
    error.where = fileName;
    return error;
}

Result<Workbook> readWorkbook(const fs::path& file) {
    std::error_code failure;
    const fs::file_status status = fs::status(file, failure);
    if (!fs::exists(status)) return Error{ErrorCode::SpreadsheetMissing, {}, file.string()};
    if (!fs::is_regular_file(status)) return Error{ErrorCode::ImportNotAFile, {}, file.string()};
    if (fs::file_size(file, failure) > largestWorkbook && !failure)
        return Error{ErrorCode::SpreadsheetTooLarge, {"64"}, file.string()};
    std::ifstream stream(file, std::ios::binary);
    const std::string bytes(std::istreambuf_iterator<char>(stream), {});
    if (!stream) return Error{ErrorCode::ImportFileUnreadable, {}, file.string()};
    return readWorkbook(bytes, file.filename().string());
}

std::string columnLetters(int column) {
    std::string letters;
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    return letters;
}

std::string cellAddress(int column, int row) {
    return columnLetters(column) + std::to_string(row);
}

} // namespace core
