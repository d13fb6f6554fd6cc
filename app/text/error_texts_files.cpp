#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Files, folders and the disk.
constexpr ErrorText textsOfFiles[] = {
    {ErrorCode::FileExists, QT_TRANSLATE_NOOP("Errors", "the file exists"),
     QT_TRANSLATE_NOOP("Errors", "choose another name, or move the old file away")},
    {ErrorCode::FileNotMade, QT_TRANSLATE_NOOP("Errors", "the file cannot be made: %1"),
     QT_TRANSLATE_NOOP("Errors", "see that the folder is there and writable"), nullptr, 1},
    {ErrorCode::NoSuchFile, QT_TRANSLATE_NOOP("Errors", "there is no such file"),
     QT_TRANSLATE_NOOP("Errors", "give the path of a club file, or create one")},
    {ErrorCode::NotAFile, QT_TRANSLATE_NOOP("Errors", "this is not a file"),
     QT_TRANSLATE_NOOP("Errors", "give the path of a club file")},
    {ErrorCode::NotAClubFile, QT_TRANSLATE_NOOP("Errors", "this is not a club file"),
     QT_TRANSLATE_NOOP("Errors", "give the path of a club file")},
    {ErrorCode::FileUnfinished,
     QT_TRANSLATE_NOOP("Errors", "the making of this club file was cut short and nothing is in it"),
     QT_TRANSLATE_NOOP("Errors", "remove it and create it again")},
    {ErrorCode::FileNewer, QT_TRANSLATE_NOOP("Errors", "the club file has format %1, this program knows %2"),
     QT_TRANSLATE_NOOP("Errors", "use a newer Tholepin; the file was not touched")},
    {ErrorCode::FileOlder,
     QT_TRANSLATE_NOOP("Errors", "the club file has format %1, which only unreleased programs wrote"),
     QT_TRANSLATE_NOOP("Errors", "export it with the program that wrote it, and import that here")},
    {ErrorCode::FileHasTwoNames,
     QT_TRANSLATE_NOOP("Errors", "the club file has more than one name (hard links), and is only read so"),
     QT_TRANSLATE_NOOP("Errors", "remove the other names, or copy the file with `backup`")},
    {ErrorCode::FileAltered,
     QT_TRANSLATE_NOOP("Errors",
                       "the club file was altered by another program: %1; nothing is written to it"),
     QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup")},
    {ErrorCode::FormatUnknown,
     QT_TRANSLATE_NOOP("Errors", "the club file says that it has format %1, which no Tholepin writes"),
     QT_TRANSLATE_NOOP("Errors", "restore the newest backup; the file was not touched")},
    {ErrorCode::FileCutShort,
     QT_TRANSLATE_NOOP("Errors", "a write to the club file was cut short, and cannot be put right from here"),
     QT_TRANSLATE_NOOP("Errors",
                       "open the club file where it can be written, with the files that stand beside it")},
    {ErrorCode::FileReplaced,
     QT_TRANSLATE_NOOP(
         "Errors", "the club file was moved, deleted or replaced while it was open; this was not recorded"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "what was recorded before is in the file that was moved: open the one that is to be used")},
    {ErrorCode::DatabaseLocked, "%1",
     QT_TRANSLATE_NOOP("Errors", "close the other program that has the club file open and try again"),
     nullptr, 1},
    {ErrorCode::DatabaseForeign, "%1", QT_TRANSLATE_NOOP("Errors", "give the path of a club file"), nullptr,
     1},
    {ErrorCode::DatabaseDamaged, "%1",
     QT_TRANSLATE_NOOP("Errors", "restore the newest backup, and keep the damaged file for inspection"),
     nullptr, 1},
    {ErrorCode::DatabaseFailed, "%1",
     QT_TRANSLATE_NOOP("Errors", "see that the disk is there, writable and not full"), nullptr, 1},
    {ErrorCode::NoRandomNumbers, QT_TRANSLATE_NOOP("Errors", "this machine gives no random numbers")},
    {ErrorCode::MemoryShort, QT_TRANSLATE_NOOP("Errors", "there is not enough memory"),
     QT_TRANSLATE_NOOP("Errors", "close other programs, or ask for less at once")},
    {ErrorCode::ContentUnreadable,
     QT_TRANSLATE_NOOP("Errors", "the club file holds something that cannot be read: %1"),
     QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup")},
    {ErrorCode::FolderNotMade, QT_TRANSLATE_NOOP("Errors", "the folder cannot be made"),
     QT_TRANSLATE_NOOP("Errors", "check the folder, its permissions and the free space")},
    {ErrorCode::NoFileInTheWay, QT_TRANSLATE_NOOP("Errors", "something that is no file stands in the way"),
     QT_TRANSLATE_NOOP("Errors", "check the folder, its permissions and the free space")},
    {ErrorCode::FileNotWritten, QT_TRANSLATE_NOOP("Errors", "the file cannot be written: %1"),
     QT_TRANSLATE_NOOP("Errors", "check the folder, its permissions and the free space"), nullptr, 1},
    {ErrorCode::FileNotReplaced, QT_TRANSLATE_NOOP("Errors", "the file cannot be replaced: %1"),
     QT_TRANSLATE_NOOP("Errors", "check the folder, its permissions and the free space"), nullptr, 1},
    {ErrorCode::FolderUnreadable, QT_TRANSLATE_NOOP("Errors", "the folder cannot be read: %1"),
     QT_TRANSLATE_NOOP("Errors", "name a folder that holds the register's CSV files"), nullptr, 1},
    {ErrorCode::FolderWithoutCsv, QT_TRANSLATE_NOOP("Errors", "the folder holds no CSV file"),
     QT_TRANSLATE_NOOP("Errors", "name a folder that holds the register's CSV files")},
};

static_assert(isWhole(textsOfFiles, ErrorCode{}, ErrorCode::RecordDamaged),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> fileTexts() {
    return textsOfFiles;
}

} // namespace app
