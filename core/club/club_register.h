#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/register_edit.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/csv_import.h"
#include "core/register/boat.h"
#include "core/register/kit_type.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace core {

struct ClubState;

/// A word of the club's own in a column of its spreadsheets whose rows are of that sheet, and what it was
/// said to mean: as the register's CSV would have it, with the names of now. Empty: nothing.
struct ToldWord {
    SheetId sheet = SheetId::Items;
    std::string column;
    std::string word;
    std::string means;
};

/// Which told words are meant. A word is compared as in ClubSheetChoices.
struct ToldWordWanted {
    std::string word;
    std::string column{};              ///< empty: in any
    std::optional<SheetId> sheet = {}; ///< none: in rows of any
};

/// The register: its sheets as CSV, and what they say of boats, people and places. See Club for what holds of
/// every function.
class ClubRegister {
public:
    explicit ClubRegister(ClubState& state)
        : m_state(&state) {}

    /// All or nothing. With rejected rows nothing is imported and the plan says which. A dry run only plans.
    Result<ImportPlan> importCsv(const std::filesystem::path& folder, CalendarDay today, bool dryRun,
                                 const std::function<void(int done, int of)>& progress = {});
    /// The same of a club's own spreadsheet. The layout says how it was read. What words mean is kept in the
    /// club file when it is imported, and holds from then on where `choices` does not say another thing.
    Result<ClubSheetPlan> importClubSheet(const Workbook& workbook, const ClubSheetChoices& choices,
                                          CalendarDay today, bool dryRun,
                                          const std::function<void(int done, int of)>& progress = {});
    /// What words of the club's own were said to mean, in rows of that sheet; the newest of each. A size that
    /// goes by several names by now is as it was told.
    WordMeanings toldWords(SheetId sheet) const;
    /// Of all, by sheet, column and word. A size has all names that it goes by now, with commas between them.
    std::vector<ToldWord> toldWords() const;
    /// What these words say is not known any more; gives those that were forgotten. WordNotTold, and nothing
    /// is forgotten, when there is none of one of them.
    Result<std::vector<ToldWord>> forgetWords(const std::vector<ToldWordWanted>& wanted,
                                              const std::string& by);
    /// How a spreadsheet is read; and how it would be, for somebody who is to choose what its columns mean.
    Result<TableLayout> layoutOf(const Workbook& workbook, const ClubSheetChoices& choices) const;
    Result<TableLayout> layoutToChooseFrom(const Workbook& workbook, const ClubSheetChoices& choices) const;
    /// `measuresOf`: the people whose mass and chest are written out, by name.
    Outcome exportCsv(const std::filesystem::path& folder, const std::vector<std::string>& measuresOf) const;

    /// Another name for a boat, place, person, kit type, size or class; all that is and will be recorded
    /// under the old one is about it. `of`: of a size its kit type. NotFound; BadInput when something else
    /// has or had the new name.
    Outcome rename(Named named, const std::string& from, const std::string& to, const std::string& of,
                   const std::string& by);

    /// What may not be meant so when something is called `to` instead of `from`: a class or kit type one slip
    /// away from another, a life jacket that is not marked as worn; as an import would warn of it.
    std::vector<Error> warningsOfName(Named named, const std::string& from, const std::string& to) const;

    /// What that edit would do, and what it changes for boats and days; writes nothing. BadInput: a column
    /// that the sheet does not have, or a key cell of a row that is there (names change by `rename`);
    /// NotFound: no such row; NotAllowed: a new row that is there, or a row that is not as it was seen.
    Result<EditPlan> plan(const RegisterEdit& edit, Moment moment) const;
    /// Writes it, as an import of these rows would; the same errors. Nothing is written with rejected cells.
    /// A service record withdraws or releases its item, as one of a round does.
    Result<EditPlan> write(const RegisterEdit& edit, const std::string& by, Moment moment);
    /// Takes away a row that was made in error (docs/rules.md, "Taken out of the register"). `seen`: the row
    /// as it was looked at. NoSuchRow; RowChanged when it is another by now. Of a life rule: RuleWithRecords.
    /// Of a kit type or size, while something stands by it: RowHasItems; KitTypeInManifests; KitTypeHasRows;
    /// KitTypeMeant.
    Outcome remove(SheetId sheet, const Cells& seen, const std::string& by, Moment moment);
    /// Kit types, sizes, life rules, manifest lines and points: boats, people and places have a last day.
    static bool mayRemove(SheetId sheet);
    /// The club's name from now on, on whatever is shown and printed; no file is told by it from another
    /// club's. NameMissing; BadInput as of other names.
    Outcome nameClub(const std::string& name, const std::string& by);
    /// The row of a sheet that a person means by a name: its key's cells with slashes between them, found
    /// without regard to case; an owner's line or point as "class/…" or "boat/…". NotFound, naming what is
    /// alike; BadInput when it may be two.
    Result<Cells> rowNamed(SheetId sheet, const std::string& name) const;
    /// The name of a row, by which rowNamed finds it.
    std::string nameOfRow(SheetId sheet, const Cells& row) const;
    std::vector<Cells> rows(SheetId sheet) const; ///< in the sheet's own order, with the states of now
    std::optional<Cells> row(SheetId sheet, const Cells& key) const;

    /// The last day of a boat, place or person, that day included: from then on it is gone from what is
    /// chosen, asked and planned, and stays in the record (docs/rules.md, "No longer here"). NotFound;
    /// KitStillThere while kit that is not written off has its home there or is that person's own;
    /// BoatsStillThere while a boat is kept there. Gives the name as the register spells it.
    Result<std::string> end(Named named, const std::string& name, CalendarDay day, const std::string& by,
                            Moment moment);

    std::vector<Boat> boats() const;    ///< by name, with those that are no longer here
    std::vector<Person> people() const; ///< likewise
    std::vector<Boat> boatsHere(CalendarDay today) const;
    std::vector<Person> peopleHere(CalendarDay today) const;
    Result<Boat> boat(const std::string& name) const;
    std::optional<Boat> boatOfTag(const std::string& code) const;
    /// The boat's points of that phase, in the manifest's order.
    Result<std::vector<BoatPoint>> pointsOf(const std::string& boat, Phase phase) const;
    std::vector<KitType> kitTypes() const;   ///< with sizes and rules, by name
    std::vector<std::string> places() const; ///< by name, with those that are no longer here
    std::vector<std::string> placesHere(CalendarDay today) const;

private:
    ClubState* m_state;
};

} // namespace core
