#include "core/exchange/csv_text.h"

#include "tests/support/errors.h"

#include <gmock/gmock.h>

namespace {

using core::readCsv;
using testing::ElementsAre;

std::vector<std::vector<std::string>> cellsOf(std::string_view bytes) {
    const core::CsvText text = readCsv(bytes);
    EXPECT_EQ(text.faultRow, 0);
    EXPECT_FALSE(text.fault);
    std::vector<std::vector<std::string>> rows;
    for (const core::CsvRecord& record : text.records)
        rows.push_back(record.cells);
    return rows;
}

// RFC 4180, section 2: the numbers are its rules.

TEST(CsvText, eachRecordIsALineThatEndsWithCrlf) { // 1
    EXPECT_THAT(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"),
                ElementsAre(ElementsAre("aaa", "bbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
}

TEST(CsvText, theLastRecordMayLackItsLineEnd) { // 2
    EXPECT_THAT(cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"),
                ElementsAre(ElementsAre("aaa", "bbb", "ccc"), ElementsAre("zzz", "yyy", "xxx")));
}

TEST(CsvText, blanksArePartOfACell) { // 4
    EXPECT_THAT(cellsOf(" a , b\t,c \r\n"), ElementsAre(ElementsAre(" a ", " b\t", "c ")));
}

TEST(CsvText, cellsMayStandInQuotes) { // 5
    EXPECT_THAT(cellsOf("\"aaa\",\"bbb\",ccc\r\n"), ElementsAre(ElementsAre("aaa", "bbb", "ccc")));
}

TEST(CsvText, quotesHoldLineBreaksAndCommas) { // 6
    EXPECT_THAT(cellsOf("\"aaa\",\"b\r\nb,b\",\"c\nc\rc\"\r\nzzz,yyy,xxx"),
                ElementsAre(ElementsAre("aaa", "b\r\nb,b", "c\nc\rc"), ElementsAre("zzz", "yyy", "xxx")));
}

TEST(CsvText, aDoubledQuoteMarkIsOne) { // 7
    EXPECT_THAT(cellsOf("\"aaa\",\"b\"\"bb\",\"\"\"\"\r\n"), ElementsAre(ElementsAre("aaa", "b\"bb", "\"")));
}

TEST(CsvText, nothingBetweenCommasIsAnEmptyCell) {
    EXPECT_THAT(cellsOf("a,,\"\"\r\n,b,\r\n"),
                ElementsAre(ElementsAre("a", "", ""), ElementsAre("", "b", "")));
}

// Beyond the RFC: what editors and spreadsheets leave behind. Common practice, no source.

TEST(CsvText, recordsMayEndWithLfOrCrAlone) {
    EXPECT_THAT(cellsOf("a,b\nc,d\n"), ElementsAre(ElementsAre("a", "b"), ElementsAre("c", "d")));
    EXPECT_THAT(cellsOf("a,b\rc,d\r"), ElementsAre(ElementsAre("a", "b"), ElementsAre("c", "d")));
}

TEST(CsvText, aByteOrderMarkIsNoText) {
    EXPECT_THAT(cellsOf("\xEF\xBB\xBF\"a\",b\r\n"), ElementsAre(ElementsAre("a", "b")));
    EXPECT_THAT(cellsOf("a,\xEF\xBB\xBF"), ElementsAre(ElementsAre("a", "\xEF\xBB\xBF")));
}

TEST(CsvText, blankLinesGiveNoRecordAndKeepTheirNumber) {
    for (const char* bytes :
         {"a,b\r\n\r\n,,\r\nc,d\r\n\r\n\r\n", "a,b\n\n,,\nc,d\n\n\n", "a,b\r\r,,\rc,d\r\r\r"}) {
        const core::CsvText text = readCsv(bytes);
        ASSERT_EQ(text.records.size(), 2U) << bytes;
        EXPECT_EQ(text.records[0].row, 1);
        EXPECT_EQ(text.records[1].row, 4);
    }
}

TEST(CsvText, rowsCountRecordsNotLines) {
    const core::CsvText text = readCsv("a,\"b\nb\nb\"\nc,d\n");
    ASSERT_EQ(text.records.size(), 2U);
    EXPECT_EQ(text.records[1].row, 2);
}

TEST(CsvText, noBytesAreNoRecords) {
    EXPECT_THAT(cellsOf(""), ElementsAre());
    EXPECT_THAT(cellsOf("\xEF\xBB\xBF"), ElementsAre());
    EXPECT_THAT(cellsOf("\r\n"), ElementsAre());
}

TEST(CsvText, aZeroByteIsABytesLikeAnother) {
    using namespace std::string_literals;
    EXPECT_THAT(cellsOf("a\0b,c\r\n"s), ElementsAre(ElementsAre("a\0b"s, "c")));
}

// RFC 4180, rules 5 and 7 the other way round: such texts have no one meaning.

TEST(CsvText, aQuoteMarkInABareCellIsAFault) {
    const core::CsvText text = readCsv("a,b\r\nc,8\" rope\r\n");
    EXPECT_EQ(text.faultRow, 2);
    EXPECT_EQ(text.fault, core::ErrorCode::CsvQuoteInCell);
    EXPECT_THAT(cellsOf("a,b\r\nc,\"8\"\" rope\"\r\n"),
                ElementsAre(ElementsAre("a", "b"), ElementsAre("c", "8\" rope")));
}

TEST(CsvText, textBehindAClosingQuoteMarkIsAFault) {
    EXPECT_EQ(readCsv("a,\"b\"c\r\n").faultRow, 1);
    EXPECT_EQ(readCsv("a,\"b\" ,c\r\n").faultRow, 1);
}

TEST(CsvText, quotesThatNeverCloseAreAFault) {
    const core::CsvText text = readCsv("a,b\r\nc,d\r\ne,\"f\r\ng,h\r\n");
    EXPECT_EQ(text.faultRow, 3);
    EXPECT_EQ(text.records.size(), 2U);
    EXPECT_EQ(text.fault, core::ErrorCode::CsvQuoteOpen);
}

TEST(CsvText, aWrittenCellReadsBackAsItWas) {
    for (const std::string cell : {"", "a", "a,b", "a\"b", "\"", "a\r\nb", "\r", " a ", "'=1"}) {
        const auto rows = cellsOf("x," + core::csvCell(cell) + ",y\r\n");
        EXPECT_THAT(rows, ElementsAre(ElementsAre("x", cell, "y")));
    }
    EXPECT_EQ(core::csvCell("plain text"), "plain text");
    EXPECT_EQ(core::csvCell("a \"b\", c"), "\"a \"\"b\"\", c\"");
}

} // namespace
