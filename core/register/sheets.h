#pragma once

#include "core/base/plain_text.h" // foldName, by which rows are found

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core {

/// The kinds of rows that a club's register is made of; each is one CSV file, one table and one kind of fact.
enum class SheetId {
    Places,
    KitTypes,
    Sizes,
    LifeRules,
    Boats,
    ManifestLines,
    Points,
    People,
    Items,
    Parts,
    Services,
    Happenings,
    Use,
    Log,
};
inline constexpr int sheetCount = 14;

/// What a cell may hold. Cells are text, in one canonical spelling each, so that equal values are equal
/// texts.
enum class CellType {
    Text,
    YesNo,
    Count,    ///< Count: whole number, 0 or more
    Number,   ///< decimal with a full stop
    Amount,   ///< Number, 0 or more
    Day,      ///< to the day, month or year
    ExactDay, ///< YYYY-MM-DD
    Choice,   ///< one of `choices`
    Name,     ///< the key of another sheet, `refersTo`
    Names,    ///< a list of such, separated by ;
    Tag,      ///< a tag code of class `tagClass`
    Steps,
    Tolerance,
    Gtin,
};

struct Column {
    std::string_view name;
    CellType type = CellType::Text;
    std::optional<SheetId> refersTo{};
    std::string_view byDefault{}; ///< what an empty cell means, for readers; not stored
    std::span<const std::string_view> choices{};
    char tagClass = 0;
    bool isPrivate = false; ///< of a person: stands beside the record, not in it, and can be erased
    bool isLastDay =
        false; ///< of an ExactDay: a month or year that is given means its last day, else its first

    bool offers(std::string_view choice) const; ///< it is one of `choices`
};

/// One sheet: its file, its fact kind and its columns in the contract's order. The first `keyColumns` name
/// the row; a key column may be empty where the contract says "or" or "part".
struct Sheet {
    SheetId id;
    std::string_view file;  ///< "items.csv"
    std::string_view table; ///< "item": SQL table, and the kind of its facts
    int keyColumns = 1;
    std::span<const Column> columns;
    bool keepsOrder = false; ///< rows have a place in an order of their own (manifest lines, points)
    bool losesRows = false; ///< a fact may take a row away (all but boats, people, places, items and records)
    /// A row that was taken away is back, with all its cells, as long as another row names it (kit types and
    /// sizes).
    bool staysWhileNamed = false;

    /// "items": as a person calls it, its file without the ending.
    std::string_view name() const { return file.substr(0, file.find('.')); }
    int indexOf(std::string_view column) const;        ///< -1: no such column
    const Column& column(std::string_view name) const; ///< which must be there
};

const Sheet& sheet(SheetId id);
std::span<const Sheet> allSheets();
const Sheet* sheetOfFile(std::string_view file); ///< null: unknown file
const Sheet* sheetOfName(std::string_view name); ///< "items"; null: unknown
const Sheet* sheetOfTable(std::string_view table);

/// What has a name that can change.
enum class Named { Boat, Place, Person, KitType, Size, BoatClass };
inline constexpr int namedCount = 6;
std::string_view nameOf(Named named); ///< "boat", "kit_type", "boat_class": as its column is called
std::optional<Named> namedFrom(std::string_view); ///< the same back
std::optional<SheetId> sheetOf(Named named);      ///< whose rows have such names; a class has no sheet
/// What a cell of that column names; empty: nothing. Of a size its kit type stands in the same row.
std::optional<Named> namedIn(const Sheet& sheet, int column);

/// A row's cells, aligned with the sheet's columns; empty means unknown.
using Cells = std::vector<std::string>;

/// Cells by column name.
using CellTexts = std::vector<std::pair<std::string, std::string>>;

/// The row's key: its key cells folded and joined by 0x1F.
std::string keyOf(const Sheet& sheet, const Cells& cells);

/// What a reader of the register sees, as cells. Implemented by the store; tests may use a map.
class RegisterRows {
public:
    virtual ~RegisterRows() = default;
    virtual std::optional<Cells> find(SheetId id, const std::string& key) const = 0;
    /// In the sheet's own order (order column, else by key).
    virtual std::vector<Cells> all(SheetId id) const = 0;
    /// Items of this gtin and serial, and the like: rows whose `column` holds `value` exactly.
    virtual std::vector<Cells> where(SheetId id, std::string_view column, const std::string& value) const = 0;
    /// What something that had that name is called now; the same where nothing was renamed. `of`: of a size
    /// its kit type.
    virtual std::string nameNow(Named named, const std::string& name, const std::string& of = {}) const;
    /// The code of the item that has, or had, that tag; the same where it is nobody's, or the code itself.
    virtual std::string codeOfTag(const std::string& tag) const;
};

/// One row to be written: only the cells that change, as (column index, new text; empty clears).
struct RowChange {
    SheetId sheet;
    Cells keyCells; ///< the key columns' cells, canonical
    std::vector<std::pair<int, std::string>> set;
    std::optional<int> order; ///< new place in the sheet's order
    bool isNew = false;
};

} // namespace core
