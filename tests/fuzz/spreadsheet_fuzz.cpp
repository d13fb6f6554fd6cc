// libFuzzer target: somebody's spreadsheet. The first byte chooses what the rest is: a whole file, a text
// file, or one part of a workbook that is otherwise good. Whatever it is, reading ends within its bounds,
// every text and reason is UTF-8, and a plan either has rejected rows or changes.

#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "tests/fuzz/fuzz_support.h"
#include "tests/fuzz/zip_of_parts.h"

#include <cstdint>

namespace {

using fuzz::EmptyRegister;
using fuzz::require;

const std::string book = R"(<workbook><sheets><sheet name="Kit" sheetId="1" id="r1"/></sheets></workbook>)";
const std::string relations =
    R"(<Relationships><Relationship Id="r1" Type="a/worksheet" Target="sheet.xml"/>)"
    R"(<Relationship Id="r2" Type="a/sharedStrings" Target="texts.xml"/><Relationship Id="r3" Type="a/styles" Target="styles.xml"/>)"
    R"(</Relationships>)";
const std::string sheet =
    R"(<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="str"><v>Made</v></c></row>)"
    R"(<row r="2"><c r="A2" t="s"><v>1</v></c><c r="B2" s="1"><v>46000</v></c></row></sheetData></worksheet>)";
const std::string texts = "<sst><si><t>What</t></si><si><t>Knife</t></si></sst>";
const std::string styles =
    R"(<styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>)";

std::string workbookWith(int changed, const std::string& part) {
    const auto one = [&](int number, const std::string& good) { return changed == number ? part : good; };
    return fuzzing::zipOf({{"[Content_Types].xml", ""},
                           {"xl/workbook.xml", one(0, book)},
                           {"xl/_rels/workbook.xml.rels", one(1, relations)},
                           {"xl/sheet.xml", one(2, sheet)},
                           {"xl/texts.xml", one(3, texts)},
                           {"xl/styles.xml", one(4, styles)}});
}

core::Result<core::Workbook> read(int kind, const std::string& rest) {
    if (kind == 0) return core::readWorkbook(rest, "a.xlsx");
    if (kind == 1) return core::readWorkbook(rest, "a.csv");
    if (kind == 2) return core::readWorkbook(fuzzing::zipOf({{"content.xml", rest}}), "a.ods");
    return core::readWorkbook(workbookWith(kind - 3, rest), "a.xlsx");
}

void checkBounds(const core::Workbook& workbook) {
    require(!workbook.tables.empty());
    for (const core::SheetTable& table : workbook.tables) {
        require(core::isUtf8(table.name) && !table.rows.empty());
        int before = 0;
        for (const core::TableRow& row : table.rows) {
            require(row.number > before && row.number <= core::mostTableRows && !row.cells.empty());
            before = row.number;
            for (const auto& [column, cell] : row.cells)
                require(column >= 0 && column < core::mostTableColumns && core::isUtf8(cell.text));
        }
    }
}

void plan(const core::Workbook& workbook, core::SheetId sheet) {
    core::ClubSheetChoices choices;
    choices.sheet = sheet;
    choices.days = core::DayOrder::DayFirst;
    choices.make = {core::SheetId::KitTypes, core::SheetId::Sizes, core::SheetId::Places,
                    core::SheetId::People};
    int minted = 0;
    const auto read =
        core::planClubSheet(workbook, choices, EmptyRegister(), *core::CalendarDay::from(2026, 3, 14),
                            [&](core::TagClass) { return "minted " + std::to_string(++minted); });
    if (!read) return;
    require(read->plan.rejected.empty() || read->plan.changes.empty());
    for (const core::RejectedRow& row : read->plan.rejected) {
        require(core::isUtf8(row.file) && core::isUtf8(row.column));
        for (const std::string& argument : row.reason.arguments)
            require(core::isUtf8(argument));
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    if (size == 0) return 0;
    const std::string rest(reinterpret_cast<const char*>(bytes) + 1, size - 1);
    const auto workbook = read(bytes[0] % 8, rest);
    if (!workbook) return 0;
    checkBounds(*workbook);
    plan(*workbook, core::allSheets()[bytes[0] / 8 % core::sheetCount].id);
    return 0;
}
