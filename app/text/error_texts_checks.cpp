#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Checks, stocktakes, trips, events and the log.
constexpr ErrorText textsOfChecks[] = {
    {ErrorCode::NoSuchCheck, QT_TRANSLATE_NOOP("Errors", "there is no check %1"),
     QT_TRANSLATE_NOOP("Errors", "open a check of a boat first")},
    {ErrorCode::CheckSigned, QT_TRANSLATE_NOOP("Errors", "this check is signed"),
     QT_TRANSLATE_NOOP("Errors", "open a new check of the boat")},
    {ErrorCode::CheckClosedUnsigned, QT_TRANSLATE_NOOP("Errors", "this check was closed unsigned"),
     QT_TRANSLATE_NOOP("Errors", "open a new check of the boat")},
    {ErrorCode::NothingToTakeBack,
     QT_TRANSLATE_NOOP("Errors", "nothing stands in this check that could be taken back")},
    {ErrorCode::NoUnfinishedCheck, QT_TRANSLATE_NOOP("Errors", "%1 has no unfinished check of that phase"),
     QT_TRANSLATE_NOOP("Errors", "look at its history")},
    {ErrorCode::NotSeen, QT_TRANSLATE_NOOP("Errors", "%1 was not seen in this check")},
    {ErrorCode::NoSuchPointAtLaunch, QT_TRANSLATE_NOOP("Errors", "'%1' is no point of %2 at the launch"),
     QT_TRANSLATE_NOOP("Errors", "name a point as it stands in points.csv")},
    {ErrorCode::NoSuchPointAtReturn, QT_TRANSLATE_NOOP("Errors", "'%1' is no point of %2 at the return"),
     QT_TRANSLATE_NOOP("Errors", "name a point as it stands in points.csv")},
    {ErrorCode::NoSuchPointAtStocktake,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no point of %2 at the stocktake"),
     QT_TRANSLATE_NOOP("Errors", "name a point as it stands in points.csv")},
    {ErrorCode::PointNotMeasured, QT_TRANSLATE_NOOP("Errors", "'%1' is looked at, not measured"),
     QT_TRANSLATE_NOOP("Errors", "give `done`")},
    {ErrorCode::NoSuchItemInCheck, QT_TRANSLATE_NOOP("Errors", "no item of this club has the tag %1")},
    {ErrorCode::KitIncomplete, QT_TRANSLATE_NOOP("Errors", "the kit is incomplete"),
     QT_TRANSLATE_NOOP("Errors", "give the reason of an urgent launch")},
    {ErrorCode::NothingOfClubRead,
     QT_TRANSLATE_NOOP("Errors", "no tag of this club was read in this stocktake"),
     QT_TRANSLATE_NOOP("Errors", "look whether the scanner works, and scan what is there")},
    {ErrorCode::ReasonIsTag, QT_TRANSLATE_NOOP("Errors", "'%1' is a tag's code and no reason"),
     QT_TRANSLATE_NOOP("Errors", "say why in words")},
    {ErrorCode::ReasonTooShort, QT_TRANSLATE_NOOP("Errors", "'%1' says too little"),
     QT_TRANSLATE_NOOP("Errors", "say why in words, of three letters at least")},
    {ErrorCode::HoursOutOfRange, QT_TRANSLATE_NOOP("Errors", "hours run are from 0 to 10000"),
     QT_TRANSLATE_NOOP("Errors", "read the hour counter again")},
    {ErrorCode::LaunchesOutOfRange, QT_TRANSLATE_NOOP("Errors", "launches are from 1 to 1000"),
     QT_TRANSLATE_NOOP("Errors", "count them again")},
    {ErrorCode::BackBeforeLeft, QT_TRANSLATE_NOOP("Errors", "the boat was back before it left"),
     QT_TRANSLATE_NOOP("Errors", "look at the two times")},
    {ErrorCode::EventWithoutName, QT_TRANSLATE_NOOP("Errors", "an event has a name"),
     QT_TRANSLATE_NOOP("Errors", "name the patrol or training day")},
    {ErrorCode::NoSuchEvent, QT_TRANSLATE_NOOP("Errors", "no check was filed under '%1'"),
     QT_TRANSLATE_NOOP("Errors", "give the name that checks were filed under with --event, or a day")},
    {ErrorCode::NoEventHolds, QT_TRANSLATE_NOOP("Errors", "no event holds now"),
     QT_TRANSLATE_NOOP("Errors", "begin one by its name first")},
    {ErrorCode::EventOverBefore,
     QT_TRANSLATE_NOOP("Errors", "an event that begins at %2 cannot be over at %1"),
     QT_TRANSLATE_NOOP("Errors", "give an instant that is still to come")},
    {ErrorCode::LogEntryEmpty, QT_TRANSLATE_NOOP("Errors", "a log entry says nothing"),
     QT_TRANSLATE_NOOP("Errors", "write what was seen")},
    {ErrorCode::NoSuchLogSubject, QT_TRANSLATE_NOOP("Errors", "'%1' is no boat and no item of this club"),
     QT_TRANSLATE_NOOP("Errors", "give a boat's name or a tag code")},
    {ErrorCode::LogEntryClosed, QT_TRANSLATE_NOOP("Errors", "this log entry was closed on %1"),
     QT_TRANSLATE_NOOP("Errors", "write a new entry")},
    {ErrorCode::NoSuchLogEntry, QT_TRANSLATE_NOOP("Errors", "there is no log entry %1"),
     QT_TRANSLATE_NOOP("Errors", "give the id that `log` shows")},
    {ErrorCode::PhotoNotJpeg, QT_TRANSLATE_NOOP("Errors", "the photograph is no JPEG"),
     QT_TRANSLATE_NOOP("Errors", "take it again")},
    {ErrorCode::PhotoTooHeavy, QT_TRANSLATE_NOOP("Errors", "the photograph has %1 kB and may have %2"),
     QT_TRANSLATE_NOOP("Errors", "make it smaller")},
    {ErrorCode::NoSuchPhoto, QT_TRANSLATE_NOOP("Errors", "there is no photograph %1"),
     QT_TRANSLATE_NOOP("Errors", "give the hash that `history` shows")},
};

static_assert(isWhole(textsOfChecks, ErrorCode::NoSuchCheck, ErrorCode::PinNeeded),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> checkTexts() {
    return textsOfChecks;
}

} // namespace app
