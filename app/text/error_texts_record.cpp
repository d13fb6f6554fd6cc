#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// The record: what a damaged one cannot give, and what `verify` finds in it.
constexpr ErrorText textsOfRecord[] = {
    {ErrorCode::RecordDamaged, QT_TRANSLATE_NOOP("Errors", "the record is damaged: %1"),
     QT_TRANSLATE_NOOP("Errors", "take an older backup, or look at it with `verify`")},
    {ErrorCode::FactFieldMissing,
     QT_TRANSLATE_NOOP("Errors", "the club file holds something that cannot be read: %3 is not there"),
     QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup"),
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactUnreadable,
     QT_TRANSLATE_NOOP("Errors", "the club file holds something that cannot be read: %3 is '%4'"),
     QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup"),
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::CellUnreadable,
     QT_TRANSLATE_NOOP("Errors", "the club file holds something that cannot be read: in %1 %2, %3 is '%4'"),
     QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup")},
    {ErrorCode::ManifestFieldMissing,
     QT_TRANSLATE_NOOP("Errors", "the record of the manifests cannot be read: %3 is not there"),
     QT_TRANSLATE_NOOP("Errors", "take an older backup, or look at it with `verify`"),
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::ManifestFactUnreadable,
     QT_TRANSLATE_NOOP("Errors", "the record of the manifests cannot be read: %3 is '%4'"),
     QT_TRANSLATE_NOOP("Errors", "take an older backup, or look at it with `verify`"),
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactsMissing, QT_TRANSLATE_NOOP("Errors", "facts %3 to %4 are not there"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactOutOfChain, QT_TRANSLATE_NOOP("Errors", "it does not follow the fact before it"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactBodyChanged, QT_TRANSLATE_NOOP("Errors", "its body is not as it was written"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactChanged, QT_TRANSLATE_NOOP("Errors", "it was changed after it was written"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactNotSigned, QT_TRANSLATE_NOOP("Errors", "it is not signed by that machine"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::MachineUnknown,
     QT_TRANSLATE_NOOP("Errors", "its chain does not begin with the key that its facts are signed with"),
     nullptr, QT_TRANSLATE_NOOP("Errors", "machine %2")},
    {ErrorCode::PrivateCellChanged, QT_TRANSLATE_NOOP("Errors", "%3 is not what was written"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::PrivateCellMissing, QT_TRANSLATE_NOOP("Errors", "%3 is not there, and was not erased"),
     nullptr, QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::ErasedNotYetInLog,
     QT_TRANSLATE_NOOP("Errors",
                       "erased, but another program that reads the club file still holds what was there"),
     QT_TRANSLATE_NOOP("Errors", "close the other program, and give the command again")},
    {ErrorCode::FactImpossible, QT_TRANSLATE_NOOP("Errors", "%3 is nothing that a program writes"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::FactsCutOff,
     QT_TRANSLATE_NOOP("Errors", "what it went on from is not there: facts were cut off"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "machine %2")},
    {ErrorCode::PrivateCellStray, QT_TRANSLATE_NOOP("Errors", "no fact tells of it"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "private cell %1")},
    {ErrorCode::PhotoChanged, QT_TRANSLATE_NOOP("Errors", "its photograph is not the one that was recorded"),
     nullptr, QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::PhotoMissing, QT_TRANSLATE_NOOP("Errors", "its photograph is not there"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {ErrorCode::PhotoStray, QT_TRANSLATE_NOOP("Errors", "no fact tells of it"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "photograph %1")},
    {ErrorCode::SchemaDiffers, QT_TRANSLATE_NOOP("Errors", "it is not as this program makes it"), nullptr,
     QT_TRANSLATE_NOOP("Errors", "schema, %1")},
    {ErrorCode::TableDiffers, QT_TRANSLATE_NOOP("Errors", "differs from what the facts say, first at %2"),
     nullptr, QT_TRANSLATE_NOOP("Errors", "table %1")},
    {ErrorCode::FileUnsound, "%1", nullptr, QT_TRANSLATE_NOOP("Errors", "file")},
    {ErrorCode::OtherClub, QT_TRANSLATE_NOOP("Errors", "this file is of another club"),
     QT_TRANSLATE_NOOP("Errors", "choose a file that was begun as a copy of this one")},
    {ErrorCode::OtherRecordDamaged,
     QT_TRANSLATE_NOOP("Errors", "the record of this file is damaged, so nothing of it was taken in: %1"),
     QT_TRANSLATE_NOOP("Errors", "look at it with `verify`, and take an undamaged copy")},
    {ErrorCode::RecordForked,
     QT_TRANSLATE_NOOP("Errors", "machine %1 wrote two different records from its fact %2 on (%3 here, %4 "
                                 "there), which no program does by itself: one may have been rewritten"),
     QT_TRANSLATE_NOOP("Errors", "keep the file that you trust, or take the other record in as that of a "
                                 "machine of its own: --as-new-machine")},
    {ErrorCode::ForkTakenIn,
     QT_TRANSLATE_NOOP("Errors",
                       "this file has taken in, as that of another machine, what was recorded here"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "it holds all of both: go on with a copy of it, and put the one that you merge into away")},
    {ErrorCode::NamesFused,
     QT_TRANSLATE_NOOP("Errors",
                       "%1 and %2 are two things, and both are called %3 on one machine or the other: "
                       "merged, they would be one for good"),
     QT_TRANSLATE_NOOP("Errors",
                       "nothing was merged, and to rename one of them now does not part them: do on one "
                       "machine what the other one did since, and go on with copies of that one's file")},
};

static_assert(isWhole(textsOfRecord, ErrorCode::RecordDamaged, ErrorCode::HubUrlUnreadable),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> recordTexts() {
    return textsOfRecord;
}

} // namespace app
