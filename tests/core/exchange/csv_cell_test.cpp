#include "core/exchange/csv_cell.h"

#include "core/base/plain_text.h"
#include "core/tag/tag_code.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>

namespace {

using core::CellType;
using core::Column;
using core::Error;
using core::ErrorCode;
using core::readCell;

const Column note{"note", CellType::Text};
const Column name{"place", CellType::Text};
const Column number{"low", CellType::Number};
const Column amount{"mass_kg", CellType::Amount};
const Column count{"quantity", CellType::Count};
const Column day{"made", CellType::Day};
const Column exactDay{"since", CellType::ExactDay};
const Column yesNo{"worn", CellType::YesNo};
const Column gtin{"gtin", CellType::Gtin};
const Column steps{"steps", CellType::Steps};
const Column tolerance{"tolerance", CellType::Tolerance};
const Column kitTag{"code", CellType::Tag, std::nullopt, {}, {}, 'K'};
const Column boatTag{"tag", CellType::Tag, std::nullopt, {}, {}, 'B'};

std::string read(const Column& column, std::string_view raw) {
    const core::CellReading reading = readCell(column, raw);
    EXPECT_FALSE(reading.fault) << raw;
    return reading.text.value_or("(kept)");
}

/// What is wrong with the cell, and nothing when it is good.
std::optional<Error> faultOf(const Column& column, std::string_view raw) {
    const core::CellReading reading = readCell(column, raw);
    EXPECT_FALSE(reading.text) << raw;
    return reading.fault;
}

/// The fault of a cell with that text, which is named in it.
Error ofCell(ErrorCode code, std::string text) {
    return {code, {std::move(text)}};
}

TEST(CsvCell, emptyKeepsAndHyphenClears) {
    for (const Column& column : {note, name, number, count, day, yesNo, gtin, kitTag}) {
        EXPECT_EQ(read(column, ""), "(kept)");
        EXPECT_EQ(read(column, "  "), "(kept)");
        EXPECT_EQ(read(column, "-"), "");
    }
}

// OWASP, "CSV Injection": cells that begin with = + - @, tab (0x09) or carriage return (0x0D) are put behind
// a single quote mark. Line feed and the full-width forms: newer text of the same page, from memory.
TEST(CsvCell, formulasAreGuardedAndComeBack) {
    for (const std::string text : {"=1+1", "=cmd|'/C calc'!A0", "+SUM(A1)", "-2*3", "@x", "-", "\uFF1D1",
                                   "\uFF0B1", "\uFF0D1", "\uFF20x"}) {
        EXPECT_EQ(core::writtenCell(note, text), "'" + text);
        EXPECT_EQ(read(note, core::writtenCell(note, text)), text);
    }
    for (const std::string text : {"\tx", "\rx", "\nx"}) { // of an older file; given anew, they are blanks
        EXPECT_EQ(core::writtenCell(note, text), "'" + text);
        EXPECT_EQ(read(note, core::writtenCell(note, text)), " x");
    }
    EXPECT_EQ(read(note, "'\r"), "(kept)");
    for (const std::string text : {"1=1", "a-b", "x@y", "'tis", "", "it's", " =1"}) {
        EXPECT_EQ(core::writtenCell(note, text), text);
        EXPECT_EQ(core::withoutFormulaGuard(text), text);
    }
}

TEST(CsvCell, aTextThatLooksGuardedComesBackToo) {
    for (const std::string text : {"'=1", "''-", "'''@x"})
        EXPECT_EQ(read(note, core::writtenCell(note, text)), text);
    EXPECT_EQ(read(name, " '=1"), "'=1"); // the mark is not the cell's first character: it is the name's own
    EXPECT_EQ(read(name, "'=1 "), "=1");
}

TEST(CsvCell, negativeNumbersStayPlain) {
    EXPECT_EQ(core::writtenCell(number, "-5"), "-5");
    EXPECT_EQ(read(number, core::writtenCell(number, "-5")), "-5");
    EXPECT_EQ(read(number, "'-5"), "-5");
    EXPECT_EQ(core::writtenCell(note, "-5"), "'-5");
}

TEST(CsvCell, namesLoseOuterBlanksAndProseDoesNot) {
    EXPECT_EQ(read(name, "  Boat shed\u00A0"), "Boat shed");
    EXPECT_EQ(read(note, "  two blanks "), "  two blanks ");
    EXPECT_EQ(read(note, "first\r\nsecond"), "first second");
}

TEST(CsvCell, numbersHaveOneSpelling) {
    EXPECT_EQ(read(amount, "2.0"), "2");
    EXPECT_EQ(read(amount, "002.50"), "2.5");
    EXPECT_EQ(read(amount, "+0.5"), "0.5");
    EXPECT_EQ(read(number, "-0.0"), "0");
    EXPECT_EQ(read(number, "-3.20"), "-3.2");
    EXPECT_EQ(read(count, "0"), "0");
    EXPECT_EQ(read(count, "12.0"), "12");
    EXPECT_EQ(read(count, "100"), "100");
}

TEST(CsvCell, whatIsNoNumberSaysHowToWriteIt) {
    EXPECT_EQ(faultOf(amount, "2,5"), ofCell(ErrorCode::CellNumberWithComma, "2,5"));
    EXPECT_EQ(faultOf(amount, "1e3"), ofCell(ErrorCode::CellNotANumber, "1e3"));
    EXPECT_EQ(faultOf(amount, "0x10"), ofCell(ErrorCode::CellNotANumber, "0x10"));
    EXPECT_EQ(faultOf(amount, "nan"), ofCell(ErrorCode::CellNotANumber, "nan"));
    EXPECT_EQ(faultOf(amount, "1 000"), ofCell(ErrorCode::CellNotANumber, "1 000"));
    EXPECT_EQ(faultOf(amount, "1."), ofCell(ErrorCode::CellNotANumber, "1."));
    EXPECT_EQ(faultOf(amount, "1.2.3"), ofCell(ErrorCode::CellNotANumber, "1.2.3"));
    EXPECT_EQ(faultOf(amount, "-1"), ofCell(ErrorCode::CellNegative, "-1"));
    EXPECT_EQ(faultOf(count, "-1"), ofCell(ErrorCode::CellNegative, "-1"));
    EXPECT_EQ(faultOf(count, "1.5"), ofCell(ErrorCode::CellNotWhole, "1.5"));
    EXPECT_EQ(faultOf(count, "99999999999999999999"),
              (Error{ErrorCode::CellTooLarge, {"99999999999999999999", "1000000"}}));
    EXPECT_EQ(faultOf(number, "-99999999999"),
              (Error{ErrorCode::CellTooLarge, {"-99999999999", "1000000000"}}));
}

TEST(CsvCell, daysStayAsPreciseAsTheyAre) {
    EXPECT_EQ(read(day, "2026-03-14"), "2026-03-14");
    EXPECT_EQ(read(day, "2026-03"), "2026-03");
    EXPECT_EQ(read(day, " 2026 "), "2026");
    EXPECT_EQ(read(day, "2024-02-29"), "2024-02-29");
    EXPECT_EQ(read(exactDay, "2026-03-14"), "2026-03-14");
    // Design, rules 1: any day but an expiry, given as a month or year, is its first day.
    EXPECT_EQ(read(exactDay, "2026-03"), "2026-03-01");
    EXPECT_EQ(read(exactDay, "2026"), "2026-01-01");
}

TEST(CsvCell, daysThatAreNoneSayHowToWriteThem) {
    for (const char* none : {"14/03/2026", "14.03.2026", "2026-3-4", "20260314", "26-03-14", "March 2026",
                             "2026-03-14T00:00:00Z", "2026-", "46095"})
        EXPECT_EQ(faultOf(day, none), ofCell(ErrorCode::CellNotADay, none));
    for (const char* none : {"2026-02-30", "2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31"})
        EXPECT_EQ(faultOf(day, none), ofCell(ErrorCode::CellNotInCalendar, none));
}

TEST(CsvCell, choicesAreReadWithoutCase) {
    EXPECT_EQ(read(yesNo, "YES"), "yes");
    EXPECT_EQ(read(yesNo, " no "), "no");
    EXPECT_EQ(faultOf(yesNo, "maybe"), (Error{ErrorCode::CellNotAChoice, {"maybe", "yes, no"}}));
    const Column& state = core::sheet(core::SheetId::Items).columns[6];
    EXPECT_EQ(read(state, "Written Off"), "written off");
    EXPECT_EQ(
        faultOf(state, "broken"),
        (Error{ErrorCode::CellNotAChoice, {"broken", "serviceable, unserviceable, missing, written off"}}));
}

// GS1 General Specifications, "Check digit calculations": GTIN-13 4006381333931 and GTIN-8 96385074 are
// widely printed examples; UPC-A 036000291452 as in the literature on bar codes. All three from memory,
// re-added by hand.
TEST(CsvCell, gtinsArePaddedAndChecked) {
    EXPECT_EQ(read(gtin, "4006381333931"), "04006381333931");
    EXPECT_EQ(read(gtin, "96385074"), "00000096385074");
    EXPECT_EQ(read(gtin, "036000291452"), "00036000291452");
    EXPECT_EQ(read(gtin, "04006381333931"), "04006381333931");
    EXPECT_EQ(faultOf(gtin, "4006381333932"), ofCell(ErrorCode::CellGtinCheckDigit, "4006381333932"));
    EXPECT_EQ(faultOf(gtin, "96385075"), ofCell(ErrorCode::CellGtinCheckDigit, "96385075"));
    for (const char* none : {"40063813339", "123", "4.00638E+12", "400638133393x", "0004006381333931"})
        EXPECT_EQ(faultOf(gtin, none), ofCell(ErrorCode::CellNotAGtin, none)) << none;
}

TEST(CsvCell, tagCodesAreReadAsTheyAreTyped) {
    // The control code C00000001Y is the design's; as a kit tag its class is wrong.
    EXPECT_EQ(faultOf(kitTag, "C00000001Y"), ofCell(ErrorCode::CellNotAKitTag, "C00000001Y"));
    EXPECT_EQ(faultOf(kitTag, "K12345"), (Error{ErrorCode::TagLength, {"K12345", "6"}}));
    const std::string good =
        core::TagCode::mint(core::TagClass::Kit, [] { return std::uint64_t{0x0123456789ABCDEF}; }).text();
    std::string typed = good;
    for (char& c : typed)
        c = static_cast<char>(c >= 'A' ? c - 'A' + 'a' : c);
    EXPECT_EQ(read(kitTag, typed.substr(0, 4) + " " + typed.substr(4)), good);
    EXPECT_EQ(faultOf(boatTag, good), ofCell(ErrorCode::CellNotABoatTag, good));
    std::string slip = good;
    slip[5] = slip[5] == '7' ? '8' : '7';
    EXPECT_EQ(faultOf(kitTag, slip), ofCell(ErrorCode::TagCheckCharacter, slip));
}

TEST(CsvCell, stepsAndToleranceHaveOneSpelling) {
    EXPECT_EQ(read(steps, " 108 : 12.0 ; 120:6;"), "108:12;120:6");
    EXPECT_EQ(read(steps, "0:24"), "0:24");
    for (const char* none :
         {"108", "108:", "108:0", "108:-1", "120:6;108:12", "108:12;108:6", "1.5:2", ";", "a:b"})
        EXPECT_EQ(faultOf(steps, none), ofCell(ErrorCode::CellNotSteps, none));
    EXPECT_EQ(read(tolerance, "None"), "none");
    EXPECT_EQ(read(tolerance, "END_OF_MONTH"), "end_of_month");
    EXPECT_EQ(read(tolerance, "014d"), "14d");
    for (const char* none : {"14", "d", "-3d", "1.5d", "two weeks", "1m"})
        EXPECT_EQ(faultOf(tolerance, none), ofCell(ErrorCode::CellNotATolerance, none));
}

// RFC 3629, section 3 and 4: overlong forms, surrogates and values above U+10FFFF are no UTF-8; the sequences
// are from its security section and from the same rules turned round.
TEST(CsvCell, bytesThatAreNoUtf8AreRefused) {
    for (const std::string bytes :
         {"\xC0\x80", "\xC3", "\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE0\x80\xAF",
          "M\xFC"
          "cke"})
        EXPECT_EQ(faultOf(note, bytes), ofCell(ErrorCode::TextNotUtf8, core::shown(bytes)));
    EXPECT_EQ(read(note, "Mücke 😀 \u007E\uFFFF"), "Mücke 😀 \u007E\uFFFF");
}

TEST(CsvCell, charactersThatAreNotSeenAreRefusedInEveryColumn) {
    using namespace std::string_literals;
    for (const std::string& text : {"a\0b"s, "\x01"s, "a\x1F"s, "\x7F"s, "\u202E"s, "a\u009B"s})
        for (const core::Column* column : {&note, &boatTag, &steps})
            EXPECT_EQ(faultOf(*column, text), ofCell(ErrorCode::TextUnseen, core::shown(text)));
    EXPECT_EQ(read(note, "a\tb\r\nc"), "a b c");
}

TEST(CsvCell, textsAreComposedAndHaveAnEnd) {
    EXPECT_EQ(read(note, "Cafe\u0301"), "Caf\u00E9");
    EXPECT_EQ(read(note, std::string(2000, 'x')), std::string(2000, 'x'));
    EXPECT_EQ(faultOf(note, std::string(2001, 'x'))->code, ErrorCode::TextTooLong);
}

} // namespace
