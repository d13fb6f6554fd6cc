#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Somebody's own spreadsheet: files, headings and cells that are refused, each with how to mend it.
constexpr ErrorText textsOfSpreadsheets[] = {
    {ErrorCode::SpreadsheetMissing, QT_TRANSLATE_NOOP("Errors", "there is no such file"),
     QT_TRANSLATE_NOOP("Errors", "give the path of a spreadsheet")},
    {ErrorCode::SpreadsheetUnreadable,
     QT_TRANSLATE_NOOP("Errors", "this spreadsheet cannot be read, it may be damaged"),
     QT_TRANSLATE_NOOP("Errors",
                       "open it in your spreadsheet program, save it as CSV (UTF-8) and import that")},
    {ErrorCode::SpreadsheetOtherKind,
     QT_TRANSLATE_NOOP("Errors", "this is not a spreadsheet that can be read"),
     QT_TRANSLATE_NOOP("Errors", "save it as .xlsx, .ods or CSV (UTF-8) and import that")},
    {ErrorCode::SpreadsheetOldKind, QT_TRANSLATE_NOOP("Errors", "this is a workbook of the old kind, .xls"),
     QT_TRANSLATE_NOOP(
         "Errors", "open it in your spreadsheet program, save it as .xlsx or CSV (UTF-8) and import that")},
    {ErrorCode::SpreadsheetProtected,
     QT_TRANSLATE_NOOP("Errors", "this spreadsheet is protected by a password"),
     QT_TRANSLATE_NOOP("Errors", "open it in your spreadsheet program, save it without a password or as CSV "
                                 "(UTF-8) and import that")},
    {ErrorCode::SpreadsheetEmpty,
     QT_TRANSLATE_NOOP("Errors", "nothing stands in the cells of this spreadsheet"),
     QT_TRANSLATE_NOOP("Errors",
                       "if you see something there in your spreadsheet program, save it as CSV (UTF-8) "
                       "and import that")},
    {ErrorCode::SpreadsheetTooLarge, QT_TRANSLATE_NOOP("Errors", "this spreadsheet is larger than %1 MB"),
     QT_TRANSLATE_NOOP("Errors", "save the one sheet that is meant as CSV (UTF-8) and import that")},
    {ErrorCode::SpreadsheetTooManyCells,
     QT_TRANSLATE_NOOP("Errors", "more stands in this spreadsheet than can be read: at most %1 cells"),
     QT_TRANSLATE_NOOP("Errors", "save the one sheet that is meant as CSV (UTF-8) and import that")},
    {ErrorCode::SpreadsheetTooLong, QT_TRANSLATE_NOOP("Errors", "the sheet '%1' has more than %2 rows"),
     QT_TRANSLATE_NOOP("Errors", "delete what stands below the list, or split the list")},
    {ErrorCode::SpreadsheetTooWide, QT_TRANSLATE_NOOP("Errors", "the sheet '%1' has more than %2 columns"),
     QT_TRANSLATE_NOOP("Errors", "delete what stands beside the list")},
    {ErrorCode::NoSuchTable, QT_TRANSLATE_NOOP("Errors", "there is no sheet '%1' in this spreadsheet"),
     QT_TRANSLATE_NOOP("Errors", "its sheets are: %2")},
    {ErrorCode::TableWithoutHeadings,
     QT_TRANSLATE_NOOP("Errors", "no row of the sheet '%1' has headings that are known"),
     QT_TRANSLATE_NOOP("Errors", "say what a column means, as \"Heading=column\"; the columns are %2")},
    {ErrorCode::TableWithoutColumn, QT_TRANSLATE_NOOP("Errors", "no column of the sheet is known as the %1"),
     QT_TRANSLATE_NOOP("Errors", "say which it is, as \"Heading=%1\"; the headings are %2")},
    {ErrorCode::NoSuchHeading, QT_TRANSLATE_NOOP("Errors", "the sheet has no heading '%1'"),
     QT_TRANSLATE_NOOP("Errors", "its headings are %2")},
    {ErrorCode::NoSuchMeaning, QT_TRANSLATE_NOOP("Errors", "there is no column '%1'"),
     QT_TRANSLATE_NOOP("Errors", "the columns are %2")},
    {ErrorCode::MeaningTwice,
     QT_TRANSLATE_NOOP("Errors", "two columns of the sheet are the %1: '%2' and '%3'"),
     QT_TRANSLATE_NOOP("Errors", "leave one out, as \"%3=\"")},
    {ErrorCode::ColumnsUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' does not say what columns mean"),
     QT_TRANSLATE_NOOP("Errors", "write \"Heading=column\", several with commas between them")},
    {ErrorCode::WordsUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' does not say what a word means"),
     QT_TRANSLATE_NOOP("Errors", "write \"column:word=meaning\", several with commas between them")},
    {ErrorCode::WordNotTold, QT_TRANSLATE_NOOP("Errors", "the club was never told what '%1' means"),
     QT_TRANSLATE_NOOP("Errors", "give a word as `words` lists it")},
    {ErrorCode::MakeUnknown, QT_TRANSLATE_NOOP("Errors", "'%1' cannot be made on the way"),
     QT_TRANSLATE_NOOP("Errors", "kit_types, sizes, places and people can")},
    {ErrorCode::DayAmbiguous, QT_TRANSLATE_NOOP("Errors", "'%1' may be two days: day first or month first"),
     QT_TRANSLATE_NOOP("Errors", "say which, with --days dmy or --days mdy")},
    {ErrorCode::CellOfFault, QT_TRANSLATE_NOOP("Errors", "the formula of this cell went wrong: %1"),
     QT_TRANSLATE_NOOP("Errors", "mend the formula, or write the value in its place")},
    {ErrorCode::CellUnsaved,
     QT_TRANSLATE_NOOP("Errors", "this cell holds a formula, and its value was not saved with it"),
     QT_TRANSLATE_NOOP("Errors", "open the file in your spreadsheet program and save it again")},
    {ErrorCode::QuantityUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' is no number of things"),
     QT_TRANSLATE_NOOP("Errors", "write a whole number from 0 to %2")},
    {ErrorCode::QuantityOfOne, QT_TRANSLATE_NOOP("Errors", "%1 things cannot have the same tag or serial"),
     QT_TRANSLATE_NOOP("Errors", "write one row for each")},
    {ErrorCode::SerialTwiceInTable,
     QT_TRANSLATE_NOOP("Errors", "the serial %1 of this kit type stands in row %2 already"),
     QT_TRANSLATE_NOOP("Errors", "correct one of them, or take one row out")},
    {ErrorCode::SerialUnknown, QT_TRANSLATE_NOOP("Errors", "no item has the serial '%1'"),
     QT_TRANSLATE_NOOP("Errors", "correct it, or name the item by its tag")},
    {ErrorCode::SerialOfSeveral, QT_TRANSLATE_NOOP("Errors", "more than one item has the serial '%1'"),
     QT_TRANSLATE_NOOP("Errors", "name the item by its tag")},
    {ErrorCode::NameToBeMade, QT_TRANSLATE_NOOP("Errors", "the club has no %1 '%2'"),
     QT_TRANSLATE_NOOP("Errors", "correct it, or let it be made on the way (--make %3)")},
    {ErrorCode::NameNotInClub, QT_TRANSLATE_NOOP("Errors", "the club has no %1 '%2'"),
     QT_TRANSLATE_NOOP("Errors", "correct it, or register it first")},
    {ErrorCode::HomeUnknown, QT_TRANSLATE_NOOP("Errors", "the club has no boat and no place '%1'"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "correct it, register the boat first, or let the place be made on the way (--make places)")},
    {ErrorCode::TooManyThings,
     QT_TRANSLATE_NOOP("Errors", "the quantities of the sheet make more than %1 things"),
     QT_TRANSLATE_NOOP("Errors", "correct the quantities, or split the list")},
};

static_assert(isWhole(textsOfSpreadsheets, ErrorCode::SpreadsheetMissing, ErrorCode::DayUnreadable),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> spreadsheetTexts() {
    return textsOfSpreadsheets;
}

} // namespace app
