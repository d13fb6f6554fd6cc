#pragma once

#include <cstdint>

namespace core {

/// What failed, or what cannot be taken as it is. The comment beside a code says its arguments in their
/// order; what is said of it to a person stands in app/text/error_texts_*.cpp, at the same place of the same
/// order.
enum class ErrorCode : std::uint16_t {
    // Files, folders and the disk
    FileExists,  ///< refused to write over it
    FileNotMade, ///< what the system says
    NoSuchFile,
    NotAFile, ///< a folder, a device
    NotAClubFile,
    FileUnfinished,  ///< its creation was cut short
    FileNewer,       ///< its format; the newest known here
    FileOlder,       ///< its format, which no released program wrote
    FileHasTwoNames, ///< by hard links
    FileAltered,     ///< what of its schema differs
    FormatUnknown,   ///< its format, which no Tholepin ever wrote
    FileCutShort,    ///< a write was cut short, and cannot be put right by who only reads
    FileReplaced,    ///< moved, deleted or replaced while it was open
    DatabaseLocked,  ///< what SQLite says
    DatabaseForeign, ///< what SQLite says: it is no database
    DatabaseDamaged, ///< what SQLite says
    DatabaseFailed,  ///< what SQLite says: full, read-only, I/O error
    NoRandomNumbers,
    MemoryShort,
    ContentUnreadable, ///< what the reader of the file says
    FolderNotMade,
    NoFileInTheWay,   ///< a folder or device stands where a file is to be written
    FileNotWritten,   ///< what the system says
    FileNotReplaced,  ///< what the system says
    FolderUnreadable, ///< what the system says
    FolderWithoutCsv,

    // The record. `verify` lists those whose first arguments say where they stand in it
    RecordDamaged,          ///< because of the first problem
    FactFieldMissing,       ///< number of the fact; its machine; kind and field
    FactUnreadable,         ///< number of the fact; its machine; kind and field; what stands there
    CellUnreadable,         ///< file of the sheet, or table; the row; column; what stands there
    ManifestFieldMissing,   ///< as FactFieldMissing, of a fact that manifests are read from
    ManifestFactUnreadable, ///< as FactUnreadable, or the column instead of the field
    FactsMissing,       ///< number of the fact behind; its machine; first and last number that are not there
    FactOutOfChain,     ///< number of the fact; its machine
    FactBodyChanged,    ///< number of the fact; its machine
    FactChanged,        ///< number of the fact; its machine
    FactNotSigned,      ///< number of the fact; its machine
    MachineUnknown,     ///< number of the first fact of its chain; the machine
    PrivateCellChanged, ///< number of the fact; its machine; column
    PrivateCellMissing, ///< the same
    ErasedNotYetInLog,
    FactImpossible,   ///< number of the fact; its machine; column or field
    FactsCutOff,      ///< number of the first fact of its chain; the machine
    PrivateCellStray, ///< id of a fact, and column
    PhotoChanged,     ///< number of the fact; its machine
    PhotoMissing,     ///< the same
    PhotoStray,       ///< its hash
    SchemaDiffers,    ///< "table item", "trigger …": what of the file's schema
    TableDiffers,     ///< table; the first row that differs
    FileUnsound,      ///< what SQLite's integrity check says
    OtherClub,
    OtherRecordDamaged, ///< because of the first problem
    RecordForked,       ///< machine; number of the first fact that differs; the ids of the two
    ForkTakenIn,
    NamesFused, ///< the two names; the one that both would have

    // The hub of a district
    HubUrlUnreadable,
    HubUrlWithPassword,
    HubNotReached, ///< what libpq or the server says
    HubNotPrepared,
    HubNotAllowed, ///< what the server says
    HubRefused,    ///< what the server says
    HubAhead,
    HubNotJoined,
    HubPlaceNotKept,
    HubRoleUnknown,    ///< role of the database
    HubNoSuchRole,     ///< role of the database
    HubRoleTaken,      ///< role of the database; name of its club
    HubRoleOfDistrict, ///< role of the database
    HubNoSuchClub,     ///< name; the clubs that the role may read
    HubClubEmpty,      ///< name
    HubOtherClub,      ///< the name of the role's club
    HubOtherName,      ///< the name of the role's club; the file's
    HubForked,         ///< machine; number of the first fact that differs; the ids of the two
    HubFactRefused,    ///< number of the fact; its machine
    HubRecordDamaged,  ///< because of the first problem

    // Names and codes that are looked up in the register
    NoBoats,         ///< name; the club has no boat at all
    NoSuchBoat,      ///< name; the club's boats
    NoSuchBoatClass, ///< name
    NoPlaces,        ///< name; the club has no place at all
    NoSuchPlace,     ///< name; the club's places
    NoSuchHomePlace, ///< name
    NoSuchPerson,    ///< name
    NoSuchKeeper,    ///< name of the person whose kit it is to be
    NoSuchMeasured,  ///< name of the person whose measures are asked for
    NoSuchKitType,   ///< name
    NoSuchSize,      ///< kit type; size
    NoSuchRule,      ///< name
    NoSuchItem,      ///< tag code
    NothingHasTag,   ///< tag code
    NoSuchSubject,   ///< what was asked for: a tag code, a boat or a person
    NothingSoCalled, ///< what was asked for: a tag code, or the name of a boat, person or place
    NameOfSeveral,   ///< name; what is called so, each with its tag
    NoLongerHere,    ///< boat, person or place; its last day
    KitStillThere,   ///< boat, person or place; how many things of kit; the first few
    BoatsStillThere, ///< place; the boats that are kept there, with commas between them

    // Rows of the register, and names that are given anew
    NoSuchRow,      ///< sheet ("people"); the row's name
    RowLikeOthers,  ///< the same; rows that are one slip away
    RowAmbiguous,   ///< the row's name; the rows that it may mean
    RowThere,       ///< the row's name
    RowEmpty,       ///< sheet
    RowChanged,     ///< the row's name
    KeyCellFixed,   ///< column; the row's name
    NothingSoNamed, ///< column that names such rows ("boat"); name
    NameMissing,
    NameTaken, ///< name of the other one
    NameOfOld, ///< name; what had it is called so now

    // Items that are registered, written off, released, or given a new tag
    KitDayUnreadable,      ///< the text
    MadeInFuture,          ///< day
    FirstUseInFuture,      ///< day
    UsedBeforeMade,        ///< day of the first use; day it was made
    SerialTwice,           ///< serial
    MoreSerialsThanThings, ///< serials; things; kit type
    TwoHomes,
    ItemCountOutOfRange,
    LabelWithoutSerial, ///< label
    SerialRegistered,   ///< serial; code of its item
    TagForWrittenOff,   ///< kit type; tag
    NotAReason,         ///< the text
    WrittenOffAlready,
    NotUnserviceable,
    NotWrittenOff,
    NoRuleWaits,            ///< event; kit type: none of its rules waits for any event
    NoRuleWaitsFor,         ///< event; kit type; the events that its rules wait for
    RuleWithRecords,        ///< the rule; its kit type; how many service records it has
    RowHasItems,            ///< the kit type or size; how many items are of it
    KitTypeInManifests,     ///< the kit type; the lines that name it
    KitTypeHasRows,         ///< the kit type; its sizes and life rules
    KitTypeMeant,           ///< the kit type; words of the club's own that mean it
    HappeningInFuture,      ///< its day; today
    NoSuchServiceRecord,    ///< rule; day; tag
    NoServiceRecordOfPart,  ///< rule; part; day; tag
    RecordWithdrawnAlready, ///< rule; day

    // Checks and stocktakes
    NoSuchCheck, ///< id
    CheckSigned,
    CheckClosedUnsigned,
    NothingToTakeBack,
    NoUnfinishedCheck,      ///< boat or place
    NotSeen,                ///< tag
    NoSuchPointAtLaunch,    ///< point; boat
    NoSuchPointAtReturn,    ///< point; boat
    NoSuchPointAtStocktake, ///< point; place
    PointNotMeasured,       ///< point
    NoSuchItemInCheck,      ///< tag code
    KitIncomplete,
    NothingOfClubRead,
    ReasonIsTag,    ///< the text
    ReasonTooShort, ///< the text

    // Trips, events and the log
    HoursOutOfRange,
    LaunchesOutOfRange,
    BackBeforeLeft,
    EventWithoutName,
    NoSuchEvent, ///< name
    NoEventHolds,
    EventOverBefore, ///< the instant until which it was to hold; now
    LogEntryEmpty,
    NoSuchLogSubject, ///< the text: neither a boat nor an item
    LogEntryClosed,   ///< day
    NoSuchLogEntry,   ///< id
    PhotoNotJpeg,
    PhotoTooHeavy, ///< how many kB it has; how many it may have
    NoSuchPhoto,   ///< hash

    // PINs, and who may do what
    PinNeeded, ///< the gear officers who have one
    PinWrong,  ///< person
    PinWait,   ///< seconds; person
    PinLength,
    PinUnseen,
    NoPinSet,           ///< person
    PinNotAsSet,        ///< person
    NotGearOfficer,     ///< person
    PinSetAlready,      ///< person
    OtherOfficerHasPin, ///< the other gear officer; person whose PIN was to be reset
    NotFileOwner,
    SignatureNeedsPin, ///< person

    // Manifests
    QuantityNegative,
    LineChanged,         ///< kit type
    PointChanged,        ///< point
    ManifestRowRejected, ///< because of what an import would say of the row
    NoOwnLine,           ///< boat; kit type
    PointTakenAtLaunch,  ///< point
    PointTakenAtReturn,  ///< point
    PointOfClass,        ///< point
    BoatHasOwnPoint,     ///< boat; point
    NoOwnPoint,          ///< boat or class; point

    // Plans and service rounds
    ServiceInFuture,      ///< its day; today
    HorizonOutOfRange,    ///< months
    ConfidenceOutOfRange, ///< the number
    CoverOutOfRange,      ///< months
    MarginOutOfRange,     ///< days
    PriorOutOfRange,

    // Tag codes and makers' labels
    TagLength,         ///< what was typed; how many characters it has
    TagClassUnknown,   ///< what was typed
    TagCharacter,      ///< what was typed
    TagCheckCharacter, ///< what was typed
    TagLikeOthers,     ///< what was typed; the club's own tags that are one slip away
    LabelEmpty,
    LabelElementUnknown, ///< the characters where one should begin
    LabelBracketOpen,
    LabelIdentifierUnknown, ///< what stands in the brackets
    LabelContradiction,     ///< identifier
    LabelLength,            ///< identifier; value
    LabelCharacter,         ///< identifier; value
    LabelCheckDigit,        ///< identifier; value
    LabelMonth,             ///< identifier; value
    LabelDay,               ///< identifier; value
    LabelFirstDigit,        ///< identifier; value

    // Import: a file as a whole, its header and the shape of its rows
    ImportNotAFile,
    ImportFileTooLarge,
    ImportFileUnreadable,
    ImportFileUnknown, ///< the files of the register
    ImportFileTwice,
    ImportUtf16,
    ImportWithoutHeader,
    ImportNotByCommas,
    CsvQuoteInCell,
    CsvQuoteOpen,
    ColumnWithoutName, ///< its number, from 1
    ColumnUnknown,     ///< its name; the file; the file's columns
    ColumnTwice,       ///< its name
    KeyColumnMissing,  ///< its name
    RowLength,         ///< its cells; those of the header
    KeyCellMissing,    ///< column
    BothGiven,         ///< the two columns of which one is given
    NeitherGiven,      ///< the two columns of which one is given
    NoFreeTagCode,
    KeyTwice, ///< the other row

    // Any text that is given to be kept, and one cell of an import. The first argument is the text, unless
    // something else is said
    TextUnseen, ///< holds a character that is not seen (plain_text.h)
    TextNotUtf8,
    TextTooLong, ///< the text; how many characters it may have
    CellNumberWithComma,
    CellNotANumber,
    CellNegative,
    CellNotWhole,
    CellTooLarge, ///< the text; the largest that may be
    CellNotADay,
    CellNotInCalendar,
    CellNotAChoice, ///< the text; the choices
    CellNotAKitTag,
    CellNotABoatTag,
    CellNotAPersonTag,
    CellNotAShelfTag,
    CellNotAGtin,
    CellGtinCheckDigit,
    CellNotSteps,
    CellNotATolerance,

    // Import: cells that do not agree with others
    CellMissing,   ///< column
    RangeReversed, ///< column and number of the low end; column and number of the high end
    PackOfNothing,
    CheckedEveryNoDays,
    LineWouldDisagree, ///< kit type of the line; column of the kit types in which its substitutes must agree
    SubstituteDisagrees, ///< the substitute; the kit type; column in which they do not agree
    LineTooLarge,        ///< quantity; the largest that may be
    EventMissing,
    EventNotWaitedFor,
    RuleCountsNothing,       ///< kind of rule
    RuleNeedsNumber,         ///< kind of rule
    RuleNeedsWholeNumber,    ///< the number; kind of rule
    RuleNumberTooLarge,      ///< the number
    RuleWithoutSteps,        ///< kind of rule
    StepsNotWhole,           ///< kind of rule
    ItemWithTwoHomes,        ///< boat; place
    TagTaken,                ///< who or what has it; tag code
    SerialTaken,             ///< code of the item that has it; serial
    ReferredItemMissing,     ///< code; the file it should stand in
    ReferredRowMissing,      ///< column that names such rows; name; the file it should stand in
    ReferredSizeMissing,     ///< size; kit type
    ReferredRuleMissing,     ///< rule; kit type: a rule of the whole item
    ReferredPartRuleMissing, ///< rule; part; kit type

    // Import: rows that are taken and may not mean what was meant
    ClassWithoutBoat,    ///< boat class
    BoatWithoutManifest, ///< boat; its class
    ClassLikeAnother,    ///< boat class; the other
    KitTypeLikeAnother,  ///< kit type; the other
    TypeWithoutItem,     ///< kit type
    RuleWithoutSource,   ///< rule; kit type
    JacketNotWorn,       ///< kit type
    KitOfEnded,          ///< boat, person or place; its last day; how many things of kit

    // Somebody's own spreadsheet: the file, its sheets and headings, and what stands in its cells
    SpreadsheetMissing,
    SpreadsheetUnreadable,
    SpreadsheetOtherKind,
    SpreadsheetOldKind,   ///< .xls
    SpreadsheetProtected, ///< by a password
    SpreadsheetEmpty,
    SpreadsheetTooLarge,     ///< how many MB it may have
    SpreadsheetTooManyCells, ///< how many there may be
    SpreadsheetTooLong,      ///< sheet; how many rows it may have
    SpreadsheetTooWide,      ///< sheet; how many columns it may have
    NoSuchTable,             ///< name; the names of the sheets
    TableWithoutHeadings,    ///< sheet; the columns that would be known
    TableWithoutColumn,      ///< column that no heading means; the headings
    NoSuchHeading,           ///< heading; the headings
    NoSuchMeaning,           ///< column; the columns
    MeaningTwice,            ///< column; the two headings
    ColumnsUnreadable,       ///< the text
    WordsUnreadable,         ///< the text
    WordNotTold,             ///< the word
    MakeUnknown,             ///< the text
    DayAmbiguous,            ///< the text
    CellOfFault,             ///< the text
    CellUnsaved,
    QuantityUnreadable, ///< the text; the most that may be
    QuantityOfOne,      ///< the number
    SerialTwiceInTable, ///< serial; the other row
    SerialUnknown,      ///< serial
    SerialOfSeveral,    ///< serial
    NameToBeMade,       ///< column that names such rows; name; file without .csv
    NameNotInClub,      ///< column that names such rows; name
    HomeUnknown,        ///< name
    TooManyThings,      ///< how many there may be

    // What a program was given, reads beside the club file, or writes for people
    DayUnreadable,     ///< the text
    InstantUnreadable, ///< the text
    InstantNotPast,    ///< the text; before 1970, or still to come
    NumberUnreadable,  ///< the text
    NobodyOfThatName,  ///< name
    PinOfNobody,
    PinFileUnreadable, ///< what the system says
    PinFileOpenToOthers,
    PinFileNotOneLine,
    PinFileWithCodes,
    TripNotAtReturn,
    CodesUnreadable,
    CodesCutOff, ///< after some of them were recorded
    PointsFileUnreadable,
    PointsFileHeader,
    PointsFileRow,
    PointsFilePoint,  ///< the text
    PointNotLookedAt, ///< the text
    PointNotANumber,  ///< the text
    PointNotSeconds,  ///< the text
    NoSuchPicture,
    PictureUnreadable,
    NoPictureInFolder,
    NotAPicture,
    PictureDamaged,
    PictureTooBig,
    OutputIsClub,
    OutputNotAFile,
    FileNotSaved,         ///< what the system says
    SheetNotSaved,        ///< what the system says
    PictureNotSaved,      ///< what the system says
    PictureFolderNotMade, ///< what the system says
    AnswerNotWritten,
    RecordedAnswerNotWritten,
    MadeAnswerNotWritten,
    RecordedWithoutSheet, ///< the club file; because of what kept the sheet

    EndOfCodes ///< no code: how many there are
};

} // namespace core
