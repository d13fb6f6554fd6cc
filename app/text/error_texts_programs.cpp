#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// What a program was given, reads beside the club file, or writes for people.
constexpr ErrorText textsOfPrograms[] = {
    {ErrorCode::DayUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' is no day"),
     QT_TRANSLATE_NOOP("Errors", "write it like 2026-03-14")},
    {ErrorCode::InstantUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' is no instant"),
     QT_TRANSLATE_NOOP("Errors", "write it like 2026-03-14T06:40:00Z")},
    {ErrorCode::InstantNotPast, QT_TRANSLATE_NOOP("Errors", "'%1' is before 1970 or still to come"),
     QT_TRANSLATE_NOOP("Errors", "say when it happened")},
    {ErrorCode::NumberUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' is no number"),
     QT_TRANSLATE_NOOP("Errors", "write it like 2 or, for hours, 1.5")},
    {ErrorCode::NobodyOfThatName, QT_TRANSLATE_NOOP("Errors", "the club knows nobody named '%1'"),
     QT_TRANSLATE_NOOP("Errors", "write the name as people.csv has it")},
    {ErrorCode::PinOfNobody, QT_TRANSLATE_NOOP("Errors", "it is not said whose PIN this is"),
     QT_TRANSLATE_NOOP("Errors",
                       "name the person, too: --by for a gear officer's act, --sign for a signature")},
    {ErrorCode::PinFileUnreadable, QT_TRANSLATE_NOOP("Errors", "the file of the PIN cannot be read: %1"),
     QT_TRANSLATE_NOOP("Errors", "look at the path"), nullptr, 1},
    {ErrorCode::PinFileOpenToOthers,
     QT_TRANSLATE_NOOP("Errors", "others can read this file: a PIN in it is no secret, and it is not used"),
     QT_TRANSLATE_NOOP("Errors", "make it yours alone with chmod 600, and think of a new PIN")},
    {ErrorCode::PinFileNotOneLine, QT_TRANSLATE_NOOP("Errors", "a file of a PIN has one line"),
     QT_TRANSLATE_NOOP("Errors", "write the PIN there and nothing else")},
    {ErrorCode::PinFileWithCodes,
     QT_TRANSLATE_NOOP("Errors", "standard input cannot give the PIN and something else, too"),
     QT_TRANSLATE_NOOP("Errors", "give one of them in a file")},
    {ErrorCode::TripNotAtReturn, QT_TRANSLATE_NOOP("Errors", "a trip is told when the boat is back"),
     QT_TRANSLATE_NOOP("Errors", "give times, hours and fuel with the return check")},
    {ErrorCode::CodesUnreadable, QT_TRANSLATE_NOOP("Errors", "the codes cannot be read"),
     QT_TRANSLATE_NOOP("Errors", "look at the path")},
    {ErrorCode::CodesCutOff,
     QT_TRANSLATE_NOOP("Errors", "the codes cannot be read further; what came before is recorded"),
     QT_TRANSLATE_NOOP("Errors", "go on with the codes that are left")},
    {ErrorCode::PointsFileUnreadable, QT_TRANSLATE_NOOP("Errors", "the points file cannot be read"),
     QT_TRANSLATE_NOOP("Errors", "look at the path")},
    {ErrorCode::PointsFileHeader, QT_TRANSLATE_NOOP("Errors", "the header is not point,value"),
     QT_TRANSLATE_NOOP("Errors", "write that as the first row")},
    {ErrorCode::PointsFileRow, QT_TRANSLATE_NOOP("Errors", "the row has not two cells"),
     QT_TRANSLATE_NOOP("Errors", "write a point and its value")},
    {ErrorCode::PointsFilePoint, QT_TRANSLATE_NOOP("Errors", "'%1' is no point of this boat in this phase"),
     QT_TRANSLATE_NOOP("Errors", "write it as the manifest does")},
    {ErrorCode::PointNotLookedAt, QT_TRANSLATE_NOOP("Errors", "'%1' is no value for this point"),
     QT_TRANSLATE_NOOP("Errors",
                       "write done for a point that is looked at, and leave the row out while it is not")},
    {ErrorCode::PointNotANumber, QT_TRANSLATE_NOOP("Errors", "'%1' is no value for this point"),
     QT_TRANSLATE_NOOP("Errors", "write the number that was measured, with a full stop")},
    {ErrorCode::PointNotSeconds, QT_TRANSLATE_NOOP("Errors", "'%1' is no value for this point"),
     QT_TRANSLATE_NOOP("Errors", "write the seconds that it ran")},
    {ErrorCode::NoSuchPicture, QT_TRANSLATE_NOOP("Errors", "there is no such picture, video or folder"),
     QT_TRANSLATE_NOOP("Errors", "look at the path")},
    {ErrorCode::PictureUnreadable, QT_TRANSLATE_NOOP("Errors", "the file may not be opened"),
     QT_TRANSLATE_NOOP("Errors", "look at who may read it")},
    {ErrorCode::NoPictureInFolder, QT_TRANSLATE_NOOP("Errors", "it holds no picture and no video"),
     QT_TRANSLATE_NOOP("Errors", "put the pictures there first")},
    {ErrorCode::NotAPicture,
     QT_TRANSLATE_NOOP("Errors", "it is neither a picture nor a video that can be read here"),
     QT_TRANSLATE_NOOP("Errors", "take the picture again, as JPEG or PNG")},
    {ErrorCode::PictureDamaged, QT_TRANSLATE_NOOP("Errors", "the picture or video is damaged"),
     QT_TRANSLATE_NOOP("Errors", "take the picture again, as JPEG or PNG")},
    {ErrorCode::PictureTooBig,
     QT_TRANSLATE_NOOP("Errors", "the picture is larger than 64 million pixels, or takes too much memory or "
                                 "time to read"),
     QT_TRANSLATE_NOOP("Errors", "save it smaller")},
    {ErrorCode::OutputIsClub,
     QT_TRANSLATE_NOOP("Errors", "this is a club file, or part of one: nothing is written over it"),
     QT_TRANSLATE_NOOP("Errors", "choose another name")},
    {ErrorCode::OutputNotAFile,
     QT_TRANSLATE_NOOP("Errors", "this is a folder or a device: nothing is written over it"),
     QT_TRANSLATE_NOOP("Errors", "choose another name")},
    {ErrorCode::FileNotSaved, QT_TRANSLATE_NOOP("Errors", "the file cannot be written: %1"),
     QT_TRANSLATE_NOOP("Errors", "choose another place, or make room"), nullptr, 1},
    {ErrorCode::SheetNotSaved, QT_TRANSLATE_NOOP("Errors", "the sheet cannot be written: %1"),
     QT_TRANSLATE_NOOP("Errors", "choose another place, or make room"), nullptr, 1},
    {ErrorCode::PictureNotSaved, QT_TRANSLATE_NOOP("Errors", "the picture cannot be written: %1"),
     QT_TRANSLATE_NOOP("Errors", "choose another place, or make room"), nullptr, 1},
    {ErrorCode::PictureFolderNotMade, QT_TRANSLATE_NOOP("Errors", "the folder cannot be made: %1"),
     QT_TRANSLATE_NOOP("Errors", "choose another place"), nullptr, 1},
    {ErrorCode::AnswerNotWritten, QT_TRANSLATE_NOOP("Errors", "the answer could not be written"),
     QT_TRANSLATE_NOOP("Errors", "make room where it goes")},
    {ErrorCode::RecordedAnswerNotWritten,
     QT_TRANSLATE_NOOP("Errors", "what was asked is recorded, but the answer could not be written"),
     QT_TRANSLATE_NOOP("Errors",
                       "do not give the command again: `history`, `tags` and `log` show what was recorded")},
    {ErrorCode::MadeAnswerNotWritten,
     QT_TRANSLATE_NOOP("Errors", "the file was made, but the answer could not be written"),
     QT_TRANSLATE_NOOP("Errors", "do not give the command again: `verify` tells what is in the file")},
    {ErrorCode::RecordedWithoutSheet,
     QT_TRANSLATE_NOOP("Errors", "the tags are recorded, but their sheet could not be made: %2"),
     QT_TRANSLATE_NOOP("Errors", "the record stands, so do not record them again: "
                                 "'tholepinctl tags %1 --items … --out …' makes the sheet")},
};

static_assert(isWhole(textsOfPrograms, ErrorCode::DayUnreadable, ErrorCode::EndOfCodes),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> programTexts() {
    return textsOfPrograms;
}

} // namespace app
