#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/exchange/csv_import.h"
#include "core/register/sheets.h"
#include "core/spreadsheet/workbook.h"
#include "core/tag/tag_code.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core {

// A club's own spreadsheet: which of its columns means which of the register's, and the import that follows.
// docs/register-csv.md, "A club's own spreadsheet", says the rules.

/// Order of day and month where a day is written in numbers alone.
enum class DayOrder { DayFirst, MonthFirst };

/// What a column means besides the columns of its sheet. Only for items.
inline constexpr std::string_view quantityMeaning = "quantity"; ///< so many things are on the row
inline constexpr std::string_view homeMeaning = "home";         ///< a boat or a place, whichever has the name

/// Of what is told of an item (services, happenings, use): its item's serial, in the place of a tag.
inline constexpr std::string_view serialMeaning = "serial";
/// Whether rows of that sheet may name their item by its serial.
bool isBySerial(const Sheet& sheet);

/// Column of the sheet, a word of the club's own in it, and what that says as the register's CSV would have
/// it: "role", "helm", "driver".
using WordMeanings = std::map<std::pair<std::string, std::string>, std::string>;

/// What a person says about their spreadsheet.
struct ClubSheetChoices {
    SheetId sheet = SheetId::Items; ///< what its rows are
    std::string table; ///< name of the workbook's sheet; empty: that with the most known headings
    /// Heading and the column that it means; an empty one is left out. Before all guesses.
    std::vector<std::pair<std::string, std::string>> columns;
    std::optional<DayOrder> days;
    /// Rows of these are made when they are missing: kit types, sizes, places, people.
    std::set<SheetId> make;
    /// Before the words that are known. Compared as headings are: without regard to case, punctuation and the
    /// way an umlaut is written.
    WordMeanings words;
};

/// One column of the table that is read.
struct TableColumn {
    int at = 0;          ///< from 0
    std::string heading; ///< no two alike: `Date (D)` for the second of two, `D` where there is none
    std::string meaning; ///< column of the sheet, quantity or home; empty: left out
};

/// How a workbook is read.
struct TableLayout {
    std::string table;
    int headingRow = 0;               ///< from 1
    std::vector<TableColumn> columns; ///< those with a heading or a meaning, from the left

    const TableColumn* meaning(std::string_view meaning) const; ///< null: no column means it
};

/// A word that was said to mean something, in rows of the table.
struct WordApplied {
    std::string column;
    std::string word; ///< as it was said
    std::string means;
    int rows = 0;
};

struct ClubSheetPlan {
    TableLayout layout;
    std::vector<WordApplied>
        words; ///< in the order of `ClubSheetChoices::words`; those in no row are left out
    /// As an import's; a refused row names the workbook's sheet as its file, the heading as its column and
    /// the cell.
    ImportPlan plan;
};

/// Which sheet, which row of headings and which meaning of each column: as chosen, else by the headings in
/// English and German, else by what stands below them. BadInput, with the sheet or file in `where`.
Result<TableLayout> layoutOf(const Workbook& workbook, const ClubSheetChoices& choices,
                             const RegisterRows& current);

/// The same for somebody who is to choose: whatever is still wrong with the meanings, and with the first
/// filled row as headings where no heading is known. NoSuchTable is the one error.
Result<TableLayout> layoutToChooseFrom(const Workbook& workbook, const ClubSheetChoices& choices,
                                       const RegisterRows& current);
/// The meanings that a column may have in that choice: columns of the sheet; of items quantity and home, of
/// what is told of an item its serial, too.
std::vector<std::string_view> meaningsToChooseFrom(SheetId sheet);

/// What an import of the workbook would do; nothing is written. An error when the workbook cannot be
/// understood as a whole, and for the first day that may be read in two ways while no order was chosen; else
/// as planImport.
Result<ClubSheetPlan> planClubSheet(const Workbook& workbook, const ClubSheetChoices& choices,
                                    const RegisterRows& current, CalendarDay today, const MintTag& mintTag,
                                    const std::function<void(int done, int of)>& progress = {});

/// `What=kit_type,Location=home,Price=`: a comma within a heading is one, as long as a `=` follows.
Result<std::vector<std::pair<std::string, std::string>>> columnsFrom(std::string_view text);
/// `role:helm=driver,state:tip top=serviceable`: a column of the sheet, a word of the club's own in it and
/// what that says. As ClubSheetChoices has them.
Result<WordMeanings> wordsFrom(const Sheet& sheet, std::string_view text);
/// `kit_types,sizes,places,people`.
Result<std::set<SheetId>> sheetsToMakeFrom(std::string_view text);

} // namespace core
