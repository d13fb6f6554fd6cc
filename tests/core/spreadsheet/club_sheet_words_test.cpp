// Headings, days and words one by one. What people call things: common practice of clubs' lists, no source.

#include "core/base/error_code.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/exchange/club_sheet/written_day.h"

#include <gtest/gtest.h>

namespace core {
namespace {

std::string meaningOfHeading(std::string_view heading, SheetId id = SheetId::Items) {
    const auto meanings = meaningsOf(heading, sheet(id));
    return meanings.empty() ? "" : std::string(meanings.front().meaning);
}

TEST(HeadingWords, areKnownHoweverTheyAreWritten) {
    for (const char* heading :
         {"serial", "SERIAL NO.", " Serial-Number: ", "Serial\nno", "S/N", "Seriennummer", "Serien-Nr."})
        EXPECT_EQ(meaningOfHeading(heading), "serial") << heading;
    for (const char* heading : {"Größe", "GRÖSSE", "Groesse", "Größe (EU)"})
        EXPECT_EQ(meaningOfHeading(heading), "size") << heading;
    for (const char* heading : {"", "#", "Colour", "Serial of the engine"})
        EXPECT_EQ(meaningOfHeading(heading), "") << heading;
}

TEST(HeadingWords, meanWhatTheSheetHas) {
    EXPECT_EQ(meaningOfHeading("Name", SheetId::People), "person");
    EXPECT_EQ(meaningOfHeading("Name", SheetId::Boats), "boat");
    EXPECT_EQ(meaningOfHeading("Type", SheetId::Items), "kit_type");
    EXPECT_EQ(meaningOfHeading("Type", SheetId::Boats), "boat_class");
    EXPECT_EQ(meaningOfHeading("Location", SheetId::Items), "home");
    EXPECT_EQ(meaningOfHeading("Location", SheetId::Boats), "place");
    EXPECT_EQ(meaningOfHeading("Austritt am", SheetId::People), "until");
    EXPECT_EQ(meaningOfHeading("Sold", SheetId::Boats), "until");
    EXPECT_EQ(meaningOfHeading("bis", SheetId::Points), "high");
    EXPECT_EQ(meaningOfHeading("Date", SheetId::Services), "day");
    EXPECT_EQ(meaningOfHeading("Date", SheetId::Items), "");
}

TEST(HeadingWords, includeEveryColumnByItsOwnName) {
    for (const Sheet& each : allSheets())
        for (const Column& column : each.columns) {
            const auto meanings = meaningsOf(column.name, each);
            ASSERT_FALSE(meanings.empty()) << each.file << ' ' << column.name;
            EXPECT_EQ(meanings.front().meaning, column.name) << each.file;
        }
}

std::string day(std::string_view text, std::optional<DayOrder> order = {}) {
    const WrittenDay written = dayAsWritten(text, order);
    return written.isAmbiguous ? "?" : written.text;
}

TEST(WrittenDay, isAskedForOnlyWhereItMayBeTwo) {
    EXPECT_EQ(day("03/04/2024"), "?");
    EXPECT_EQ(day("3-4-24"), "?");
    EXPECT_EQ(day("03/04/2024", DayOrder::DayFirst), "2024-04-03");
    EXPECT_EQ(day("03/04/2024", DayOrder::MonthFirst), "2024-03-04");
    EXPECT_EQ(day("3.4.2024"), "2024-04-03"); // DIN 5008: day, month, year between full stops
    EXPECT_EQ(day("3.4.2024", DayOrder::MonthFirst), "2024-03-04");
    EXPECT_EQ(day("04/04/2024"), "2024-04-04");
    EXPECT_EQ(day("13/04/2024"), "2024-04-13");
    EXPECT_EQ(day("04/13/2024"), "2024-04-13");
    EXPECT_EQ(day("2024-03-04"), "2024-03-04"); // ISO 8601
}

TEST(WrittenDay, keepsToTheChosenOrder) {
    EXPECT_EQ(day("13/04/2024", DayOrder::MonthFirst), "");
    EXPECT_EQ(day("04/13/2024", DayOrder::DayFirst), "");
    EXPECT_EQ(day("04/13/2024", DayOrder::MonthFirst), "2024-04-13");
}

TEST(WrittenDay, isOneOfTheCalendar) {
    EXPECT_EQ(day("29.2.2024"), "2024-02-29");
    EXPECT_EQ(day("29.2.2023"), "");
    EXPECT_EQ(day("31 June 2024"), "");
    EXPECT_EQ(day("30 June 2024"), "2024-06-30");
    EXPECT_EQ(day("13.2027"), "");
    EXPECT_EQ(day("12.2027"), "2027-12");
}

/// POSIX.1-2017, strptime, %y: 69 to 99 refer to 1969 to 1999, 00 to 68 to 2000 to 2068.
TEST(WrittenDay, takesYearsOfTwoDigits) {
    EXPECT_EQ(day("1.5.69"), "1969-05-01");
    EXPECT_EQ(day("1.5.68"), "2068-05-01");
    EXPECT_EQ(day("May 27"), "2027-05");
}

TEST(WrittenDay, isNotMadeOfOtherTexts) {
    for (const char* text :
         {"", "-", "soon", "2", "123", "12345", "1/2", "03/12", "1.2.3.4", "08:30", "2027?4?x", "March",
          "14 Martch 2026", "-2027", "1850", "2027 A", "KMA9XW2Q1F", "99999999", "14. März Mai 2026"})
        EXPECT_EQ(day(text), "") << text;
}

TEST(WrittenDay, ofANumberIsMonthAndYear) {
    EXPECT_EQ(monthOfNumber("3.2027"), "2027-03");
    EXPECT_EQ(monthOfNumber("12.203"), "2030-12");
    for (const char* number : {"2027", "13.2027", "3.20271", "0.2027", "100.2027", "3.1"})
        EXPECT_FALSE(monthOfNumber(number)) << number;
}

std::string cell(std::string_view column, const std::string& text, SheetId id = SheetId::Items) {
    const Sheet& sheet = core::sheet(id);
    const Column& described = sheet.columns[static_cast<std::size_t>(sheet.indexOf(column))];
    return meaningOf({SheetCell::Kind::Text, text}, described, {}).text;
}

TEST(CellWords, areOursOrStayAsTheyAre) {
    EXPECT_EQ(cell("state", "I.O."), "serviceable");
    EXPECT_EQ(cell("state", "Written-off"), "written off");
    EXPECT_EQ(cell("state", "wobbly"), "wobbly");
    EXPECT_EQ(cell("role", "Boots-Führer", SheetId::People), "Boots-Führer");
    EXPECT_EQ(cell("role", "Bootsfuehrer", SheetId::People), "driver");
    EXPECT_EQ(cell("worn", "Ja", SheetId::KitTypes), "yes");
    EXPECT_EQ(cell("worn", "nein", SheetId::KitTypes), "no");
    EXPECT_EQ(cell("worn", "perhaps", SheetId::KitTypes), "perhaps");
}

TEST(CellWords, sayNothingAsADash) {
    for (const char* text : {"-", "–", "—", "?", " ", "\u00A0"}) {
        EXPECT_EQ(cell("maker", text), "") << text;
        EXPECT_EQ(cell("made", text), "") << text;
    }
    EXPECT_EQ(cell("made", "n/a"), "");
    EXPECT_EQ(cell("maker", "n/a"), "n/a");
}

TEST(CellWords, areNumbersWithACommaOrAUnit) {
    const auto mass = [](const std::string& text) { return cell("mass_kg", text, SheetId::People); };
    EXPECT_EQ(mass("75,5"), "75.5");
    EXPECT_EQ(mass("75.5 kg"), "75.5");
    EXPECT_EQ(mass("1,500"), "1,500"); // a thousand and a half, or one and a half
    EXPECT_EQ(mass("75 stone"), "75 stone");
    EXPECT_EQ(cell("price", "€ 12,50", SheetId::KitTypes), "12.50");
    EXPECT_EQ(cell("price", "12,50 €", SheetId::KitTypes), "12.50");
}

std::string number(const std::string& text, SheetId id, std::string_view column) {
    const Sheet& of = sheet(id);
    const Column& cell = of.columns[static_cast<std::size_t>(of.indexOf(column))];
    return meaningOf({.text = text}, cell, {}).text;
}

TEST(CellWords, takeAUnitOnlyWhereTheColumnHasIt) {
    EXPECT_EQ(number("75,5 kg", SheetId::People, "mass_kg"), "75.5");
    EXPECT_EQ(number("101 cm", SheetId::People, "chest_cm"), "101");
    EXPECT_EQ(number("12 Tage", SheetId::KitTypes, "order_lead_days"), "12");
    EXPECT_EQ(number("4 Stk.", SheetId::KitTypes, "spares"), "4");
    EXPECT_EQ(number("€ 12,50", SheetId::KitTypes, "price"), "12.50");
    for (const char* text : {"1.01 m", "101 kg", "101 mm"})
        EXPECT_EQ(number(text, SheetId::People, "chest_cm"), text) << "and is refused as it stands";
    EXPECT_EQ(number("90 m", SheetId::Use, "hours"), "90 m");
}

} // namespace
} // namespace core
