#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Import: files, their headers and the shape of rows. Each says how to mend it, too.
constexpr ErrorText textsOfImports[] = {
    {ErrorCode::ImportNotAFile,
     QT_TRANSLATE_NOOP("Errors", "it is no file that can be read: replace it or take it out of the folder")},
    {ErrorCode::ImportFileTooLarge,
     QT_TRANSLATE_NOOP("Errors", "the file is larger than 256 MB: it cannot be a register")},
    {ErrorCode::ImportFileUnreadable,
     QT_TRANSLATE_NOOP("Errors", "the file cannot be read: check its permissions")},
    {ErrorCode::ImportFileUnknown,
     QT_TRANSLATE_NOOP("Errors", "unknown file: rename it or take it out; the register's files are %1")},
    {ErrorCode::ImportFileTwice,
     QT_TRANSLATE_NOOP("Errors", "the file is there twice, with small and capital letters: keep one")},
    {ErrorCode::ImportUtf16, QT_TRANSLATE_NOOP("Errors", "the file is UTF-16: save it as UTF-8")},
    {ErrorCode::ImportWithoutHeader,
     QT_TRANSLATE_NOOP("Errors", "the file has no header row: write the names of the columns in row 1")},
    {ErrorCode::ImportNotByCommas,
     QT_TRANSLATE_NOOP("Errors",
                       "the cells are not separated by commas: save the file with commas between them")},
    {ErrorCode::CsvQuoteInCell,
     QT_TRANSLATE_NOOP("Errors", "a quote mark stands in the middle of a cell: put the whole cell in quotes "
                                 "and double each quote mark inside it")},
    {ErrorCode::CsvQuoteOpen,
     QT_TRANSLATE_NOOP("Errors", "a cell begins with a quote mark and never ends: close the quotes")},
    {ErrorCode::ColumnWithoutName,
     QT_TRANSLATE_NOOP("Errors", "column %1 has no name: name it or take it out")},
    {ErrorCode::ColumnUnknown, QT_TRANSLATE_NOOP("Errors", "unknown column '%1': %2 has %3")},
    {ErrorCode::ColumnTwice, QT_TRANSLATE_NOOP("Errors", "the column '%1' is there twice: take one out")},
    {ErrorCode::KeyColumnMissing,
     QT_TRANSLATE_NOOP("Errors", "the column %1 is missing: it names the row, so add it")},
    {ErrorCode::RowLength,
     QT_TRANSLATE_NOOP("Errors",
                       "the number of cells in the row is %1, in the header %2: is a comma missing, or a "
                       "cell with a comma not in quotes?")},
    {ErrorCode::KeyCellMissing,
     QT_TRANSLATE_NOOP("Errors", "the %1 is missing: it names the row, so fill it in")},
    {ErrorCode::BothGiven,
     QT_TRANSLATE_NOOP("Errors", "each of %1 and %2 is given: fill in exactly one of them")},
    {ErrorCode::NeitherGiven,
     QT_TRANSLATE_NOOP("Errors", "none of %1 and %2 is given: fill in exactly one of them")},
    {ErrorCode::NoFreeTagCode,
     QT_TRANSLATE_NOOP("Errors", "no unused tag code could be found: fill in a code")},
    {ErrorCode::KeyTwice, QT_TRANSLATE_NOOP("Errors", "row %1 has the same key: keep one of them")},
};

static_assert(isWhole(textsOfImports, ErrorCode::ImportNotAFile, ErrorCode::TextUnseen),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> importTexts() {
    return textsOfImports;
}

} // namespace app
