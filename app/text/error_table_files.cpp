#include "app/text/error_table.h"

#include <QtGlobal>

namespace app {
namespace {

constexpr ErrorSentence ofFiles[] = {
    // core/tag
    {QT_TRANSLATE_NOOP("Errors", "'%1' has %2 characters where a tag code has %3")},
    {QT_TRANSLATE_NOOP("Errors", "'%1' does not begin with K, B, P, C or S")},
    {QT_TRANSLATE_NOOP("Errors", "'%1' holds a character that no tag code has")},
    {QT_TRANSLATE_NOOP("Errors", "'%1' fails its check character")},
    {QT_TRANSLATE_NOOP("Errors", "type the ten characters under the tag")},
    {QT_TRANSLATE_NOOP("Errors", "two neighbouring characters may be exchanged: is it %1?")},
    {QT_TRANSLATE_NOOP("Errors",
                       "one character is probably wrong: compare it with the ten characters under the tag")},

    {QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {QT_TRANSLATE_NOOP("Errors", "the label holds no element")},
    {QT_TRANSLATE_NOOP("Errors", "'%1' begins no element that is known here")},
    {QT_TRANSLATE_NOOP("Errors", "a bracket of the label is not closed")},
    {QT_TRANSLATE_NOOP("Errors", "'(%1)' is no element that is known here")},
    {QT_TRANSLATE_NOOP("Errors", "the label says two things for element (%1)")},
    {QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its %2 is wrong in '%3'"), 2},
    {QT_TRANSLATE_NOOP("Errors", "length")},
    {QT_TRANSLATE_NOOP("Errors", "character")},
    {QT_TRANSLATE_NOOP("Errors", "check digit")},
    {QT_TRANSLATE_NOOP("Errors", "month")},
    {QT_TRANSLATE_NOOP("Errors", "day")},
    {QT_TRANSLATE_NOOP("Errors", "first digit")},

    // core/store, core/exchange, and papers that are saved
    {QT_TRANSLATE_NOOP("Errors", "the file exists")},
    {QT_TRANSLATE_NOOP("Errors", "choose another name, or move the old file away")},
    {QT_TRANSLATE_NOOP("Errors", "the file cannot be made: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "see that the folder is there and writable")},
    {QT_TRANSLATE_NOOP("Errors", "there is no such file")},
    {QT_TRANSLATE_NOOP("Errors", "give the path of a club file, or create one")},
    {QT_TRANSLATE_NOOP("Errors", "this is not a file")},
    {QT_TRANSLATE_NOOP("Errors", "this is not a club file")},
    {QT_TRANSLATE_NOOP("Errors", "give the path of a club file")},
    {QT_TRANSLATE_NOOP("Errors", "the making of this club file was cut short and nothing is in it")},
    {QT_TRANSLATE_NOOP("Errors", "remove it and create it again")},
    {QT_TRANSLATE_NOOP("Errors", "the club file has format %1, this program knows %2")},
    {QT_TRANSLATE_NOOP("Errors", "use a newer Tholepin; the file was not touched")},
    {QT_TRANSLATE_NOOP("Errors", "close the other program that has the club file open and try again")},
    {QT_TRANSLATE_NOOP("Errors", "restore the newest backup, and keep the damaged file for inspection")},
    {QT_TRANSLATE_NOOP("Errors", "see that the disk is there, writable and not full")},
    {QT_TRANSLATE_NOOP("Errors", "the club file holds something that cannot be read: %1")},
    {QT_TRANSLATE_NOOP("Errors", "look it over with verify, and restore a backup")},
    {QT_TRANSLATE_NOOP("Errors", "the record of the manifests cannot be read: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "'%1' is no time")},
    {QT_TRANSLATE_NOOP("Errors", "it is not as this program writes it")},
    {QT_TRANSLATE_NOOP("Errors", "the record is damaged: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "take an older backup, or look at it with `verify`")},
    {QT_TRANSLATE_NOOP("Errors", "this machine gives no random numbers")},

    {QT_TRANSLATE_NOOP("Errors", "the folder cannot be made")},
    {QT_TRANSLATE_NOOP("Errors", "something that is no file stands in the way")},
    {QT_TRANSLATE_NOOP("Errors", "the file cannot be written: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "the sheet cannot be written: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "the file cannot be replaced: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "check the folder, its permissions and the free space")},
    {QT_TRANSLATE_NOOP("Errors", "choose another place, or make room")},
    {QT_TRANSLATE_NOOP("Errors", "no person %1")},
    {QT_TRANSLATE_NOOP("Errors", "correct the name")},
    {QT_TRANSLATE_NOOP("Errors", "the folder cannot be read: %1"), 1},
    {QT_TRANSLATE_NOOP("Errors", "the folder holds no CSV file")},
    {QT_TRANSLATE_NOOP("Errors", "name a folder that holds the register's CSV files")},

    {QT_TRANSLATE_NOOP("Errors", "fact %1 of machine %2")},
    {QT_TRANSLATE_NOOP("Errors", "table %1")},
    {QT_TRANSLATE_NOOP("Errors", "facts")},
    {QT_TRANSLATE_NOOP("Errors", "file")},
    {QT_TRANSLATE_NOOP("Errors", "facts %1 to %2 are not there")},
    {QT_TRANSLATE_NOOP("Errors", "it does not follow the fact before it")},
    {QT_TRANSLATE_NOOP("Errors", "its body is not as it was written")},
    {QT_TRANSLATE_NOOP("Errors", "it was changed after it was written")},
    {QT_TRANSLATE_NOOP("Errors", "differs from what the facts say, first at %1")},
    {QT_TRANSLATE_NOOP("Errors", "cannot be applied: %1")},
    {QT_TRANSLATE_NOOP("Errors", "%1 is '%2'")},

    // SQLite (sqlite3_errstr) and the system (strerror)
    {QT_TRANSLATE_NOOP("Errors", "database is locked")},
    {QT_TRANSLATE_NOOP("Errors", "file is not a database")},
    {QT_TRANSLATE_NOOP("Errors", "database disk image is malformed")},
    {QT_TRANSLATE_NOOP("Errors", "attempt to write a readonly database")},
    {QT_TRANSLATE_NOOP("Errors", "unable to open database file")},
    {QT_TRANSLATE_NOOP("Errors", "disk I/O error")},
    {QT_TRANSLATE_NOOP("Errors", "database or disk is full")},
    {QT_TRANSLATE_NOOP("Errors", "Permission denied")},
    {QT_TRANSLATE_NOOP("Errors", "No such file or directory")},
    {QT_TRANSLATE_NOOP("Errors", "Not a directory")},
    {QT_TRANSLATE_NOOP("Errors", "Is a directory")},
    {QT_TRANSLATE_NOOP("Errors", "Read-only file system")},
    {QT_TRANSLATE_NOOP("Errors", "No space left on device")},
};

} // namespace

std::span<const ErrorSentence> fileErrors() {
    return ofFiles;
}

} // namespace app
