// libFuzzer target: the bytes of a CSV file. The first byte chooses the file of the contract, the rest is its
// text. Whatever the bytes are, reading ends, every reason is UTF-8, and what was read comes back the same
// when it is written.

#include "core/base/plain_text.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"
#include "core/exchange/import_checks.h"
#include "core/exchange/import_draft.h"
#include "core/exchange/name_spelling.h"
#include "core/exchange/sheet_file.h"
#include "core/register/typed_rows.h"
#include "tests/fuzz/fuzz_support.h"

#include <cstdint>

namespace {

using fuzz::EmptyRegister;
using fuzz::require;

/// Written behind a byte-order mark, as spreadsheet programs save it: a mark that is text of the first cell
/// stays.
void checkCsvRoundTrip(const core::CsvText& text) {
    std::string written = "\uFEFF";
    for (const core::CsvRecord& record : text.records)
        for (std::size_t i = 0; i < record.cells.size(); ++i)
            written += core::csvCell(record.cells[i]) + (i + 1 < record.cells.size() ? "," : "\r\n");
    const core::CsvText again = core::readCsv(written);
    require(again.faultRow == 0 && again.records.size() == text.records.size());
    for (std::size_t i = 0; i < again.records.size(); ++i)
        require(again.records[i].cells == text.records[i].cells);
}

void checkCellsComeBack(const core::Sheet& sheet, const core::SheetFile& file) {
    for (const core::GivenRow& row : file.rows)
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            if (!row.cells[i] || row.cells[i]->empty()) continue;
            const core::CellReading again =
                core::readCell(sheet.columns[i], core::writtenCell(sheet.columns[i], *row.cells[i]));
            require(again.text == row.cells[i]);
        }
}

/// As planImport does it, from the text of one file instead of a folder.
void plan(core::SheetFile& file, core::Rejections& rejections) {
    const EmptyRegister current;
    core::ImportDraft draft(current);
    int minted = 0;
    draft.lay(
        file, [&](core::TagClass) { return "minted " + std::to_string(++minted); }, rejections);
    core::NameSpelling spelling(draft, rejections);
    for (core::DraftRow* row : draft.touched(file.sheet->id))
        spelling.spell(*row);
    core::checkRows(draft, rejections);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    if (size == 0) return 0;
    const core::Sheet& sheet = core::allSheets()[bytes[0] % core::sheetCount];
    const std::string_view text(reinterpret_cast<const char*>(bytes) + 1, size - 1);

    checkCsvRoundTrip(core::readCsv(text));
    core::Rejections rejections;
    core::SheetFile file = core::readSheet(sheet, text, rejections);
    checkCellsComeBack(sheet, file);
    plan(file, rejections);
    for (const core::RejectedRow& row : rejections.rows) {
        require(core::isUtf8(row.column));
        for (const std::string& argument : row.reason.arguments)
            require(core::isUtf8(argument));
    }
    return 0;
}
