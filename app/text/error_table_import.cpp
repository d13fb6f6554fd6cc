#include "app/text/error_table.h"

#include <QtGlobal>

namespace app {
namespace {

constexpr ErrorSentence ofImports[] = {
    {QT_TRANSLATE_NOOP("Errors", "it is no file that can be read: replace it or take it out of the folder")},
    {QT_TRANSLATE_NOOP("Errors", "the file is larger than 256 MB: it cannot be a register")},
    {QT_TRANSLATE_NOOP("Errors", "the file cannot be read: check its permissions")},
    {QT_TRANSLATE_NOOP("Errors", "unknown file: rename it or take it out; the register's files are %1")},
    {QT_TRANSLATE_NOOP("Errors", "the file is there twice, with small and capital letters: keep one")},
    {QT_TRANSLATE_NOOP("Errors", "the file is UTF-16: save it as UTF-8")},
    {QT_TRANSLATE_NOOP("Errors", "the file has no header row: write the names of the columns in row 1")},
    {QT_TRANSLATE_NOOP("Errors",
                       "the cells are not separated by commas: save the file with commas between them")},
    {QT_TRANSLATE_NOOP("Errors", "a quote mark stands in the middle of a cell: put the whole cell in quotes "
                                 "and double each quote mark inside it")},
    {QT_TRANSLATE_NOOP("Errors", "a cell begins with a quote mark and never ends: close the quotes")},
    {QT_TRANSLATE_NOOP("Errors", "column %1 has no name: name it or take it out")},
    {QT_TRANSLATE_NOOP("Errors", "unknown column %1: %2 has %3")},
    {QT_TRANSLATE_NOOP("Errors", "the column %1 is there twice: take one out")},
    {QT_TRANSLATE_NOOP("Errors", "the column %1 is missing: it names the row, so add it")},
    {QT_TRANSLATE_NOOP("Errors", "the row has %1 cells where the header has %2: is a comma missing, or a "
                                 "cell with a comma not in quotes?")},
    {QT_TRANSLATE_NOOP("Errors", "the %1 is missing: it names the row, so fill it in")},
    {QT_TRANSLATE_NOOP("Errors", "each of %1 and %2 is given: fill in exactly one of them")},
    {QT_TRANSLATE_NOOP("Errors", "none of %1 and %2 is given: fill in exactly one of them")},
    {QT_TRANSLATE_NOOP("Errors", "no unused tag code could be found: fill in a code")},
    {QT_TRANSLATE_NOOP("Errors", "row %1 has the same key: keep one of them")},

    {QT_TRANSLATE_NOOP("Errors", "%1 holds a control character: take it out")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is not UTF-8: save the file as UTF-8")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no number: write it with a full stop, without a comma")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no number: write digits, with a full stop where needed")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is negative: write 0 or more")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is not whole: write a whole number")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is too large: write at most %2")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no day: write 2026-03-14, 2026-03 or 2026")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is not in the calendar: write 2026-03-14, 2026-03 or 2026")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is none of the choices: write %2")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no tag code of kit: write one that begins with %2")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no tag code of a boat: write one that begins with %2")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no tag code of a person: write one that begins with %2")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no GTIN: write its 8, 12, 13 or 14 digits")},
    {QT_TRANSLATE_NOOP("Errors", "%1 fails its check digit: compare it with the label")},
    {QT_TRANSLATE_NOOP(
        "Errors", "%1 are no steps: write 108:12, several by rising age with ; between them and n above 0")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is no tolerance: write none, end_of_month or days such as 14d")},

    {QT_TRANSLATE_NOOP("Errors", "the %1 is missing: fill it in")},
    {QT_TRANSLATE_NOOP("Errors", "%1 %2 is above %3 %4: exchange or correct them")},
    {QT_TRANSLATE_NOOP("Errors", "a pack of 0 holds nothing: write 1 or more")},
    {QT_TRANSLATE_NOOP("Errors", "a manifest line for %1 has substitutes that would no longer agree in %2: "
                                 "change the line's substitutes first")},
    {QT_TRANSLATE_NOOP("Errors", "%1 and %2 do not agree in %3: a substitute must, so choose another")},
    {QT_TRANSLATE_NOOP("Errors", "a rule of kind after_event waits for an event: name it")},
    {QT_TRANSLATE_NOOP("Errors", "only a rule of kind after_event waits for an event: leave the cell empty")},
    {QT_TRANSLATE_NOOP("Errors", "a rule of kind %1 counts nothing: leave the cell empty")},
    {QT_TRANSLATE_NOOP("Errors", "a rule of kind %1 needs a number above 0")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is not whole: a rule of kind %2 needs a whole number")},
    {QT_TRANSLATE_NOOP(
        "Errors",
        "a rule of kind %1 does not count from a record, so it has no steps: leave the cell empty")},
    {QT_TRANSLATE_NOOP("Errors", "steps of kind %1 need whole numbers, at most 12000")},
    {QT_TRANSLATE_NOOP(
        "Errors",
        "the item has both a home boat, %1, and a home place, %2: keep one and write - in the other")},
    {QT_TRANSLATE_NOOP("Errors", "%1 has the tag %2 already: correct one of them")},
    {QT_TRANSLATE_NOOP("Errors", "%1 has this gtin and the serial %2 already: correct one of them")},
    {QT_TRANSLATE_NOOP(
        "Errors", "no size %1 of kit_type %2 in sizes.csv or in the club file: correct it or add it there")},
    {QT_TRANSLATE_NOOP("Errors", "no life rule %1 without a part of kit_type %2 in life_rules.csv or in the "
                                 "club file: correct it or add it there")},
    {QT_TRANSLATE_NOOP("Errors", "no life rule %1 for the part %2 of kit_type %3 in life_rules.csv or in the "
                                 "club file: correct it or add it there")},
    {QT_TRANSLATE_NOOP("Errors", "no item %1 in %2 or in the club file: correct it or add it there")},
    {QT_TRANSLATE_NOOP("Errors", "no %1 %2 in %3 or in the club file: correct it or add it there")},
};

} // namespace

std::span<const ErrorSentence> importErrors() {
    return ofImports;
}

} // namespace app
