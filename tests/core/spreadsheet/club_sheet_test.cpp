// Workbooks by other people's writers, read and imported, against what the generator says should come out
// (make_workbooks.py: openpyxl, XlsxWriter, odfpy).

#include "core/exchange/club_sheet/club_sheet.h"

#include "core/base/error_code.h"
#include "tests/core/exchange/exchange_support.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

namespace core {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

const fs::path workbooks = CLUB_SHEETS;

Json truth() {
    std::ifstream stream(workbooks / "truth.json");
    return Json::parse(stream);
}

/// Names of the codes that the generator knows.
std::string nameOf(ErrorCode code) {
#define CODE(name)                                                                                           \
    { ErrorCode::name, #name }
    static const std::map<ErrorCode, std::string> names{CODE(SpreadsheetUnreadable),
                                                        CODE(SpreadsheetOtherKind),
                                                        CODE(SpreadsheetOldKind),
                                                        CODE(SpreadsheetProtected),
                                                        CODE(SpreadsheetEmpty),
                                                        CODE(SpreadsheetTooLarge),
                                                        CODE(SpreadsheetTooManyCells),
                                                        CODE(SpreadsheetTooLong),
                                                        CODE(SpreadsheetTooWide),
                                                        CODE(NoSuchTable),
                                                        CODE(TableWithoutHeadings),
                                                        CODE(TableWithoutColumn),
                                                        CODE(DayAmbiguous),
                                                        CODE(CellOfFault),
                                                        CODE(CellUnsaved),
                                                        CODE(QuantityUnreadable),
                                                        CODE(QuantityOfOne),
                                                        CODE(SerialTwiceInTable),
                                                        CODE(NameToBeMade),
                                                        CODE(NameNotInClub),
                                                        CODE(HomeUnknown),
                                                        CODE(TooManyThings),
                                                        CODE(CsvQuoteOpen),
                                                        CODE(CellNotADay),
                                                        CODE(CellNotAChoice),
                                                        CODE(CellNumberWithComma),
                                                        CODE(TextUnseen),
                                                        CODE(TextTooLong)};
#undef CODE
    const auto found = names.find(code);
    return found == names.end() ? "code " + std::to_string(static_cast<int>(code)) : found->second;
}

support::MapRegister club() {
    support::MapRegister rows;
    support::importInto(rows, {{"places.csv", "place\nBoat shed\nStore\n"},
                               {"boats.csv", "boat,boat_class\nHeron,Inshore\nDabchick,Inshore\n"},
                               {"kit_types.csv", "kit_type\nLife jacket\nHelmet\nFlare\nKnife\nThrow line\n"},
                               {"sizes.csv", "kit_type,size\nLife jacket,S\nLife jacket,M\nLife jacket,L\n"},
                               {"people.csv", "person,role\nAnna Berg,crew\nBen Carter,crew\n"}});
    return rows;
}

ClubSheetChoices choicesOf(const Json& expected) {
    ClubSheetChoices choices;
    choices.sheet = sheetOfFile(expected["as"].get<std::string>() + ".csv")->id;
    choices.table = expected.value("sheet", "");
    choices.columns = columnsFrom(expected.value("columns", "")).value();
    choices.make = sheetsToMakeFrom(expected.value("make", "")).value();
    if (expected.contains("days"))
        choices.days = expected["days"] == "dmy" ? DayOrder::DayFirst : DayOrder::MonthFirst;
    return choices;
}

Result<ClubSheetPlan> planOf(const Json& expected, const support::MapRegister& rows) {
    const auto book = readWorkbook(workbooks / expected["file"].get<std::string>());
    if (!book) return book.error();
    static int minted = 0;
    return planClubSheet(*book, choicesOf(expected), rows, CalendarDay::from(2026, 3, 14).value(),
                         [](core::TagClass tagClass) { return support::tagCode(tagClass, 100 + ++minted); });
}

/// A row as the generator writes it: what is known, without the tag and the day of registration.
Json jsonOf(const Sheet& sheet, const Cells& cells) {
    Json row = Json::object();
    for (std::size_t i = 0; i < cells.size(); ++i)
        if (!cells[i].empty() && sheet.columns[i].name != "code" && sheet.columns[i].name != "tag" &&
            sheet.columns[i].name != "registered")
            row[std::string(sheet.columns[i].name)] = cells[i];
    return row;
}

std::vector<std::string> sorted(std::vector<std::string> rows) {
    std::sort(rows.begin(), rows.end());
    return rows;
}

std::string dumped(const Json& row) {
    return nlohmann::json(row).dump(); // keys in one order
}

std::vector<std::string> rowsOf(const support::MapRegister& rows, const Json& expected) {
    const Sheet& sheet = *sheetOfFile(expected["as"].get<std::string>() + ".csv");
    std::vector<std::string> found;
    for (const Cells& cells : rows.all(sheet.id))
        if (const Json row = jsonOf(sheet, cells); !expected.contains("beside") || row.size() > 1)
            found.push_back(dumped(row));
    return sorted(found);
}

void expectLayout(const TableLayout& layout, const Json& expected) {
    Json columns = Json::object(), leftOut = Json::array();
    for (const TableColumn& column : layout.columns)
        if (column.meaning.empty())
            leftOut.push_back(column.heading);
        else
            columns[column.heading] = column.meaning;
    if (expected.contains("sheet")) {
        EXPECT_EQ(layout.table, expected["sheet"].get<std::string>());
    }
    if (expected.contains("heading_row")) {
        EXPECT_EQ(layout.headingRow, expected["heading_row"].get<int>());
    }
    if (expected.contains("columns")) {
        EXPECT_EQ(columns, expected["columns"]);
    }
    if (expected.contains("left_out")) {
        EXPECT_EQ(leftOut, expected["left_out"]);
    }
}

std::string described(const ImportPlan& plan) {
    std::string text;
    for (const RejectedRow& row : plan.rejected)
        text += row.cell + ' ' + nameOf(row.reason.code) + '\n';
    return text;
}

void expectMade(const ImportPlan& plan, const Json& expected) {
    for (const auto& [file, count] : plan.accepted) {
        const std::string name = file.substr(0, file.find('.'));
        if (name != expected["as"]) {
            EXPECT_EQ(expected.value("made", Json::object()).value(name, 0), count) << file;
        }
    }
}

void expectTaken(const Json& expected) {
    support::MapRegister rows = club();
    auto read = planOf(expected, rows);
    ASSERT_TRUE(read) << nameOf(read.error().code) << ' ' << read.error().where;
    ASSERT_EQ(described(read->plan), "");
    if (expected.contains("layout")) expectLayout(read->layout, expected["layout"]);
    expectMade(read->plan, expected);
    rows.apply(read->plan.changes);
    std::vector<std::string> wanted;
    for (const Json& row : expected["rows"])
        wanted.push_back(dumped(row));
    EXPECT_EQ(rowsOf(rows, expected), sorted(wanted));

    read = planOf(expected, rows); // once more
    ASSERT_TRUE(read);
    EXPECT_EQ(described(read->plan), "");
    EXPECT_TRUE(read->plan.changes.empty()) << read->plan.changes.size();
}

void expectRefused(const Json& expected) {
    const auto read = planOf(expected, club());
    ASSERT_TRUE(read) << nameOf(read.error().code);
    EXPECT_TRUE(read->plan.changes.empty());
    std::string wanted;
    for (const Json& each : expected["refused"])
        wanted += each[0].get<std::string>() + ' ' + each[1].get<std::string>() + '\n';
    EXPECT_EQ(described(read->plan), wanted);
}

void expectError(const Json& expected) {
    const auto read = planOf(expected, club());
    ASSERT_FALSE(read);
    EXPECT_EQ(nameOf(read.error().code), expected["error"].get<std::string>());
    if (expected.contains("where")) {
        EXPECT_EQ(read.error().where, expected["where"].get<std::string>());
    }
}

class ClubSheets : public testing::TestWithParam<Json> {};

TEST_P(ClubSheets, becomeWhatTheirWriterSays) {
    const Json& expected = GetParam();
    if (expected.contains("error")) return expectError(expected);
    if (expected.contains("refused")) return expectRefused(expected);
    expectTaken(expected);
}

INSTANTIATE_TEST_SUITE_P(Written, ClubSheets, testing::ValuesIn(truth().get<std::vector<Json>>()),
                         [](const auto& info) {
                             std::string name = info.param["file"].template get<std::string>();
                             std::replace_if(
                                 name.begin(), name.end(),
                                 [](char c) { return !std::isalnum(static_cast<unsigned char>(c)); }, '_');
                             return name;
                         });

} // namespace
} // namespace core
