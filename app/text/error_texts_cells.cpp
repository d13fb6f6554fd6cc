#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Texts that are given, single cells of an import, and cells that do not agree with others. Each says how to
// mend it, too.
constexpr ErrorText textsOfCells[] = {
    {ErrorCode::TextUnseen,
     QT_TRANSLATE_NOOP(
         "Errors", "'%1' holds a character that is not seen, such as a control character, a line break or "
                   "a change of the writing direction: take it out")},
    {ErrorCode::TextNotUtf8, QT_TRANSLATE_NOOP("Errors", "'%1' is not UTF-8: give it as UTF-8")},
    {ErrorCode::TextTooLong, QT_TRANSLATE_NOOP("Errors", "'%1' is too long: write at most %2 characters")},
    {ErrorCode::CellNumberWithComma,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no number: write it with a full stop, without a comma")},
    {ErrorCode::CellNotANumber,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no number: write digits, with a full stop where needed")},
    {ErrorCode::CellNegative, QT_TRANSLATE_NOOP("Errors", "'%1' is negative: write 0 or more")},
    {ErrorCode::CellNotWhole, QT_TRANSLATE_NOOP("Errors", "'%1' is not whole: write a whole number")},
    {ErrorCode::CellTooLarge, QT_TRANSLATE_NOOP("Errors", "'%1' is too large: write at most %2")},
    {ErrorCode::CellNotADay,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no day: write 2026-03-14, 2026-03 or 2026")},
    {ErrorCode::CellNotInCalendar,
     QT_TRANSLATE_NOOP("Errors", "'%1' is not in the calendar: write 2026-03-14, 2026-03 or 2026")},
    {ErrorCode::CellNotAChoice, QT_TRANSLATE_NOOP("Errors", "'%1' is not possible: write %2")},
    {ErrorCode::CellNotAKitTag,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tag code of kit: write one that begins with K")},
    {ErrorCode::CellNotABoatTag,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tag code of a boat: write one that begins with B")},
    {ErrorCode::CellNotAPersonTag,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tag code of a person: write one that begins with P")},
    {ErrorCode::CellNotAShelfTag,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tag code of a place: write one that begins with S")},
    {ErrorCode::CellNotAGtin,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no GTIN: write its 8, 12, 13 or 14 digits")},
    {ErrorCode::CellGtinCheckDigit,
     QT_TRANSLATE_NOOP("Errors", "'%1' fails its check digit: compare it with the label")},
    {ErrorCode::CellNotSteps,
     QT_TRANSLATE_NOOP(
         "Errors",
         "'%1' are no steps: write 108:12, several by rising age with ; between them and n above 0")},
    {ErrorCode::CellNotATolerance,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tolerance: write none, end_of_month or days such as 14d")},
    {ErrorCode::CellMissing, QT_TRANSLATE_NOOP("Errors", "the %1 is missing: fill it in")},
    {ErrorCode::RangeReversed, QT_TRANSLATE_NOOP("Errors", "%1 %2 is above %3 %4: exchange or correct them")},
    {ErrorCode::PackOfNothing, QT_TRANSLATE_NOOP("Errors", "a pack of 0 holds nothing: write 1 or more")},
    {ErrorCode::CheckedEveryNoDays,
     QT_TRANSLATE_NOOP("Errors", "a check every 0 days cannot be: write 1 or more, or leave the cell empty")},
    {ErrorCode::LineWouldDisagree,
     QT_TRANSLATE_NOOP("Errors", "a manifest line for '%1' has substitutes that would no longer agree in %2: "
                                 "change the line's substitutes first")},
    {ErrorCode::SubstituteDisagrees,
     QT_TRANSLATE_NOOP("Errors", "'%1' and '%2' do not agree in %3: a substitute must, so choose another")},
    {ErrorCode::LineTooLarge, QT_TRANSLATE_NOOP("Errors", "%1 is too large: write at most %2")},
    {ErrorCode::EventMissing,
     QT_TRANSLATE_NOOP("Errors", "a rule of kind after_event waits for an event: name it")},
    {ErrorCode::EventNotWaitedFor,
     QT_TRANSLATE_NOOP("Errors", "only a rule of kind after_event waits for an event: leave the cell empty")},
    {ErrorCode::RuleCountsNothing,
     QT_TRANSLATE_NOOP("Errors", "a rule of kind %1 counts nothing: leave the cell empty")},
    {ErrorCode::RuleNeedsNumber, QT_TRANSLATE_NOOP("Errors", "a rule of kind %1 needs a number above 0")},
    {ErrorCode::RuleNeedsWholeNumber,
     QT_TRANSLATE_NOOP("Errors", "%1 is not whole: a rule of kind %2 needs a whole number")},
    {ErrorCode::RuleNumberTooLarge, QT_TRANSLATE_NOOP("Errors", "%1 is too large: write at most 12000")},
    {ErrorCode::RuleWithoutSteps,
     QT_TRANSLATE_NOOP(
         "Errors",
         "a rule of kind %1 does not count from a record, so it has no steps: leave the cell empty")},
    {ErrorCode::StepsNotWhole,
     QT_TRANSLATE_NOOP("Errors", "steps of kind %1 need whole numbers, at most 12000")},
    {ErrorCode::ItemWithTwoHomes,
     QT_TRANSLATE_NOOP(
         "Errors",
         "the item has both a home boat, '%1', and a home place, '%2': keep one and write - in the other")},
    {ErrorCode::TagTaken, QT_TRANSLATE_NOOP("Errors", "'%1' has the tag '%2' already: correct one of them")},
    {ErrorCode::SerialTaken,
     QT_TRANSLATE_NOOP("Errors", "'%1' has this gtin and the serial '%2' already: correct one of them")},
    {ErrorCode::ReferredItemMissing,
     QT_TRANSLATE_NOOP("Errors", "no item '%1' in %2 or in the club file: correct it or add it there")},
    {ErrorCode::ReferredRowMissing,
     QT_TRANSLATE_NOOP("Errors", "no %1 '%2' in %3 or in the club file: correct it or add it there")},
    {ErrorCode::ReferredSizeMissing,
     QT_TRANSLATE_NOOP(
         "Errors",
         "no size '%1' of kit_type '%2' in sizes.csv or in the club file: correct it or add it there")},
    {ErrorCode::ReferredRuleMissing,
     QT_TRANSLATE_NOOP("Errors", "no life rule '%1' without a part of kit_type '%2' in life_rules.csv or in "
                                 "the club file: correct it or add it there")},
    {ErrorCode::ReferredPartRuleMissing,
     QT_TRANSLATE_NOOP("Errors", "no life rule '%1' for the part '%2' of kit_type '%3' in life_rules.csv or "
                                 "in the club file: correct it or add it there")},
};

static_assert(isWhole(textsOfCells, ErrorCode::TextUnseen, ErrorCode::ClassWithoutBoat),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> cellTexts() {
    return textsOfCells;
}

} // namespace app
