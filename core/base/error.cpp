#include "core/base/error.h"

#include "core/base/error_code.h"

#include <algorithm>
#include <array>
#include <utility>

namespace core {
namespace {

using Code = ErrorCode;
using Kind = ErrorKind;

/// Codes that are something else than bad input.
constexpr std::array kinds{
    std::pair(Code::FileExists, Kind::FileExists),
    std::pair(Code::FileNotMade, Kind::DiskFailed),
    std::pair(Code::NoSuchFile, Kind::FileMissing),
    std::pair(Code::NotAFile, Kind::NotAClubFile),
    std::pair(Code::NotAClubFile, Kind::NotAClubFile),
    std::pair(Code::FileUnfinished, Kind::FileUnfinished),
    std::pair(Code::FileNewer, Kind::FileNewer),
    std::pair(Code::FileOlder, Kind::NotAClubFile),
    std::pair(Code::FileAltered, Kind::FileDamaged),
    std::pair(Code::FormatUnknown, Kind::FileDamaged),
    std::pair(Code::FileCutShort, Kind::DiskFailed),
    std::pair(Code::FileReplaced, Kind::DiskFailed),
    std::pair(Code::DatabaseLocked, Kind::FileLocked),
    std::pair(Code::DatabaseForeign, Kind::NotAClubFile),
    std::pair(Code::DatabaseDamaged, Kind::FileDamaged),
    std::pair(Code::DatabaseFailed, Kind::DiskFailed),
    std::pair(Code::NoRandomNumbers, Kind::DiskFailed),
    std::pair(Code::MemoryShort, Kind::DiskFailed),
    std::pair(Code::ContentUnreadable, Kind::FileDamaged),
    std::pair(Code::FolderNotMade, Kind::DiskFailed),
    std::pair(Code::NoFileInTheWay, Kind::DiskFailed),
    std::pair(Code::FileNotWritten, Kind::DiskFailed),
    std::pair(Code::FileNotReplaced, Kind::DiskFailed),
    std::pair(Code::FolderUnreadable, Kind::FileMissing),
    std::pair(Code::FolderWithoutCsv, Kind::FileMissing),

    std::pair(Code::RecordDamaged, Kind::FileDamaged),
    std::pair(Code::FactFieldMissing, Kind::FileDamaged),
    std::pair(Code::FactUnreadable, Kind::FileDamaged),
    std::pair(Code::CellUnreadable, Kind::FileDamaged),
    std::pair(Code::ManifestFieldMissing, Kind::FileDamaged),
    std::pair(Code::ManifestFactUnreadable, Kind::FileDamaged),
    std::pair(Code::FactsMissing, Kind::FileDamaged),
    std::pair(Code::FactOutOfChain, Kind::FileDamaged),
    std::pair(Code::FactBodyChanged, Kind::FileDamaged),
    std::pair(Code::FactChanged, Kind::FileDamaged),
    std::pair(Code::FactNotSigned, Kind::FileDamaged),
    std::pair(Code::MachineUnknown, Kind::FileDamaged),
    std::pair(Code::PrivateCellChanged, Kind::FileDamaged),
    std::pair(Code::PrivateCellMissing, Kind::FileDamaged),
    std::pair(Code::ErasedNotYetInLog, Kind::FileLocked),
    std::pair(Code::OtherRecordDamaged, Kind::FileDamaged),
    std::pair(Code::FactImpossible, Kind::FileDamaged),
    std::pair(Code::FactsCutOff, Kind::FileDamaged),
    std::pair(Code::PrivateCellStray, Kind::FileDamaged),
    std::pair(Code::PhotoChanged, Kind::FileDamaged),
    std::pair(Code::PhotoMissing, Kind::FileDamaged),
    std::pair(Code::PhotoStray, Kind::FileDamaged),
    std::pair(Code::SchemaDiffers, Kind::FileDamaged),
    std::pair(Code::TableDiffers, Kind::FileDamaged),
    std::pair(Code::FileUnsound, Kind::FileDamaged),

    std::pair(Code::NoBoats, Kind::NotFound),
    std::pair(Code::NoSuchBoat, Kind::NotFound),
    std::pair(Code::NoSuchBoatClass, Kind::NotFound),
    std::pair(Code::NoPlaces, Kind::NotFound),
    std::pair(Code::NoSuchPlace, Kind::NotFound),
    std::pair(Code::NoSuchHomePlace, Kind::NotFound),
    std::pair(Code::NoSuchPerson, Kind::NotFound),
    std::pair(Code::NoSuchKeeper, Kind::NotFound),
    std::pair(Code::NoSuchMeasured, Kind::NotFound),
    std::pair(Code::NoSuchKitType, Kind::NotFound),
    std::pair(Code::NoSuchSize, Kind::NotFound),
    std::pair(Code::NoSuchRule, Kind::NotFound),
    std::pair(Code::NoSuchItem, Kind::NotFound),
    std::pair(Code::TagLikeOthers, Kind::NotFound),
    std::pair(Code::NothingHasTag, Kind::NotFound),
    std::pair(Code::NoSuchSubject, Kind::NotFound),
    std::pair(Code::NoSuchRow, Kind::NotFound),
    std::pair(Code::RowLikeOthers, Kind::NotFound),
    std::pair(Code::RowThere, Kind::NotAllowed),
    std::pair(Code::RowChanged, Kind::NotAllowed),
    std::pair(Code::NothingSoCalled, Kind::NotFound),
    std::pair(Code::NoLongerHere, Kind::NotFound),
    std::pair(Code::KitStillThere, Kind::NotAllowed),
    std::pair(Code::BoatsStillThere, Kind::NotAllowed),
    std::pair(Code::NothingSoNamed, Kind::NotFound),
    std::pair(Code::TagForWrittenOff, Kind::NotAllowed),
    std::pair(Code::WrittenOffAlready, Kind::NotAllowed),
    std::pair(Code::NotUnserviceable, Kind::NotAllowed),
    std::pair(Code::NotWrittenOff, Kind::NotAllowed),
    std::pair(Code::NoSuchServiceRecord, Kind::NotFound),
    std::pair(Code::NoServiceRecordOfPart, Kind::NotFound),
    std::pair(Code::RecordWithdrawnAlready, Kind::NotAllowed),

    std::pair(Code::NoSuchCheck, Kind::NotFound),
    std::pair(Code::CheckSigned, Kind::NotAllowed),
    std::pair(Code::CheckClosedUnsigned, Kind::NotAllowed),
    std::pair(Code::NothingToTakeBack, Kind::NotFound),
    std::pair(Code::NoUnfinishedCheck, Kind::NotFound),
    std::pair(Code::NotSeen, Kind::NotFound),
    std::pair(Code::NoSuchPointAtLaunch, Kind::NotFound),
    std::pair(Code::NoSuchPointAtReturn, Kind::NotFound),
    std::pair(Code::NoSuchPointAtStocktake, Kind::NotFound),
    std::pair(Code::NoSuchItemInCheck, Kind::NotFound),
    std::pair(Code::KitIncomplete, Kind::NotAllowed),
    std::pair(Code::NothingOfClubRead, Kind::NotAllowed),

    std::pair(Code::NoSuchEvent, Kind::NotFound),
    std::pair(Code::NoEventHolds, Kind::NotFound),
    std::pair(Code::NoSuchLogSubject, Kind::NotFound),
    std::pair(Code::LogEntryClosed, Kind::NotAllowed),
    std::pair(Code::NoSuchLogEntry, Kind::NotFound),
    std::pair(Code::NoSuchPhoto, Kind::NotFound),
    std::pair(Code::LineChanged, Kind::NotAllowed),
    std::pair(Code::PointChanged, Kind::NotAllowed),
    std::pair(Code::NoOwnLine, Kind::NotFound),
    std::pair(Code::PointOfClass, Kind::NotAllowed),
    std::pair(Code::BoatHasOwnPoint, Kind::NotAllowed),
    std::pair(Code::NoOwnPoint, Kind::NotFound),

    std::pair(Code::SpreadsheetMissing, Kind::FileMissing),

    std::pair(Code::NobodyOfThatName, Kind::NotFound),
    std::pair(Code::CodesUnreadable, Kind::FileMissing),
    std::pair(Code::CodesCutOff, Kind::DiskFailed),
    std::pair(Code::PointsFileUnreadable, Kind::FileMissing),
    std::pair(Code::FileNotSaved, Kind::DiskFailed),
    std::pair(Code::SheetNotSaved, Kind::DiskFailed),
    std::pair(Code::PictureNotSaved, Kind::DiskFailed),
    std::pair(Code::PictureFolderNotMade, Kind::DiskFailed),
    std::pair(Code::AnswerNotWritten, Kind::DiskFailed),
    std::pair(Code::RecordedAnswerNotWritten, Kind::DiskFailed),
    std::pair(Code::MadeAnswerNotWritten, Kind::DiskFailed),
    std::pair(Code::RecordedWithoutSheet, Kind::DiskFailed),
};

} // namespace

ErrorKind kindOf(ErrorCode code) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [code](const auto& each) { return each.first == code; });
    return found == kinds.end() ? ErrorKind::BadInput : found->second;
}

} // namespace core
