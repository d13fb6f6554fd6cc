#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/record/fact.h"
#include "core/register/operation.h"
#include "core/register/sheets.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace core {

// What a fact says: one struct a kind of fact. `check` is a check's id, `at` the instant that the person
// gave. How they stand in JSON is said in facts.cpp alone.

/// The first fact of a machine's chain.
struct MachineBegun {
    static constexpr std::string_view kind = "machine-begun";
    std::string publicKey; ///< see machine_key.h
    std::string name;      ///< the computer's
    std::string continues; ///< hash of the newest fact that stood there; empty: the club begins with it
};

struct ClubNamed {
    static constexpr std::string_view kind = "club-named";
    std::string name;
};

struct CheckOpened {
    static constexpr std::string_view kind = "check-opened";
    std::string check;
    std::string boat; ///< or the place of a stocktake
    Phase phase = Phase::Launch;
    Instant at = Instant::fromMillis(0);
    std::optional<std::string> event; ///< today's event, where one held
};

/// Who is on board, instead of whoever was named before.
struct NamesGiven {
    static constexpr std::string_view kind = "names-given";
    std::string check;
    std::vector<std::string> people;
    Instant at = Instant::fromMillis(0);
};

struct TagSeen {
    static constexpr std::string_view kind = "tag-seen";
    std::string check;
    std::string code;
    Instant at = Instant::fromMillis(0);
    std::string seenBy;               ///< "camera", "picture", "scanner", "typed"
    std::optional<double> print = {}; ///< what is left of its print, 4 to 0; of a camera or picture
};

/// Something that was done in a check is taken back: a sighting, names, a value, a trip, an event or damage;
/// or that an item was written off. It stays in the record and holds no more.
struct ActTakenBack {
    static constexpr std::string_view kind = "act-taken-back";
    std::string check;  ///< in which it was taken back; empty for a writing off
    std::string act;    ///< id of the fact that told of it
    std::string reason; ///< of a writing off: why the item is reinstated, in words
    Instant at = Instant::fromMillis(0);
};

/// A service record was made in error. What told of it, and the state that it gave the item, stay in the
/// record and hold no more.
struct RecordWithdrawn {
    static constexpr std::string_view kind = "record-withdrawn";
    std::string code; ///< the item's own
    std::string part;
    std::string rule;
    std::string day;               ///< as the record has it
    std::vector<std::string> acts; ///< ids of the facts that hold no more
    std::string reason;            ///< in words
    Instant at = Instant::fromMillis(0);
};

struct PointRecorded {
    static constexpr std::string_view kind = "point-recorded";
    std::string check;
    std::string point;
    double value = 0; ///< in the point's unit or seconds; of a look 1, when it is done
    Instant at = Instant::fromMillis(0);
};

struct CheckSigned {
    static constexpr std::string_view kind = "check-signed";
    std::string check;
    std::string boat; ///< or the place of a stocktake
    Phase phase = Phase::Launch;
    Instant at = Instant::fromMillis(0);
    std::vector<std::string> people;
    std::string urgent; ///< the reason; empty: not urgent
    CheckAnswer answer;
};

/// A check is let go without a signature.
struct CheckClosed {
    static constexpr std::string_view kind = "check-closed";
    std::string check;
    std::string reason; ///< empty: nothing stood recorded in it
    Instant at = Instant::fromMillis(0);
};

/// The boat of an urgent launch was whole again: the reason stands on the board no more.
struct UrgentEnded {
    static constexpr std::string_view kind = "urgent-ended";
    std::string check;
};

/// The event that a check is filed under.
struct EventGiven {
    static constexpr std::string_view kind = "event-given";
    std::string check;
    std::string event;
    Instant at = Instant::fromMillis(0);
};

/// From `at` to `until` an event holds, under which the checks are filed that are opened meanwhile. Without a
/// name: what held is over.
struct EventHeld {
    static constexpr std::string_view kind = "event-held";
    std::string event;
    Instant at = Instant::fromMillis(0);
    Instant until = Instant::fromMillis(0);
};

/// What a crew wrote about its trip, at the check of its return.
struct OperationLogged {
    static constexpr std::string_view kind = "operation-logged";
    std::string check;
    std::string boat;
    Operation operation;
    Instant at = Instant::fromMillis(0);
};

/// A new tag of an item.
struct TagFixed {
    static constexpr std::string_view kind = "tag-fixed";
    std::string code; ///< the item's own
    std::string tag;
    Instant at = Instant::fromMillis(0);
};

/// A photograph of an item, or of what a log entry tells. It stands beside the fact, found by its hash.
struct PhotoAdded {
    static constexpr std::string_view kind = "photo-added";
    std::string code;       ///< the item's own; of a log entry: of the entry, and may be empty
    bool isOfEntry = false; ///< the next three say of which
    std::string boat;
    std::string day;
    std::string text;
    std::string sha256; ///< of its bytes
    int bytes = 0;      ///< how many
    Instant at = Instant::fromMillis(0);
};

/// A row of a sheet of the register, written for the first time or again, or taken away. The kind of the fact
/// is the sheet's table.
struct RowWritten {
    SheetId sheet = SheetId::Places;
    std::string key;                                 ///< see keyOf
    Cells keyCells;                                  ///< as they are spelled
    std::vector<std::pair<int, std::string>> set;    ///< by column: the cells that change
    std::vector<std::pair<int, std::string>> sealed; ///< by column: digests of private cells that change
    std::optional<int> order;  ///< its place among the rows, where the sheet keeps an order
    std::optional<Instant> at; ///< of a row made in the program; an import knows only days
    std::string check;   ///< of an item's state, or a log entry: the check in which it was given or written
    std::string rule;    ///< of an item's state: the rule whose record withdrew or released it
    bool isGone = false; ///< the row is taken away
};

/// Private cells of the facts with these ids are taken out of the file: nobody may know them any more.
struct PrivateErased {
    static constexpr std::string_view kind = "private-erased";
    std::vector<std::string> facts;
};

/// Something has another name from now on: facts of the old name, whenever they arrive, are about what has
/// the new one.
struct Renamed {
    static constexpr std::string_view kind = "renamed";
    Named named = Named::Boat;
    std::string of; ///< of a size: its kit type
    std::string from;
    std::string to;
};

/// What a word of the club's own says in a column of its spreadsheets, from now on.
struct WordTold {
    static constexpr std::string_view kind = "word-told";
    std::string sheet; ///< of which its rows are, without .csv
    std::string column;
    std::string word;
    std::string means; ///< as the register's CSV would have it; empty: nothing
};

/// What such a word says is not known any more, from now on.
struct WordForgotten {
    static constexpr std::string_view kind = "word-forgotten";
    std::string sheet; ///< as in WordTold
    std::string column;
    std::string word;
};

/// A person has a PIN from now on, instead of any before. It stands beside the fact, which holds its digest.
struct PinSet {
    static constexpr std::string_view kind = "pin-set";
    std::string person;
    std::string pin{};    ///< see Pin::sealed; never in the fact
    std::string sealed{}; ///< its digest
};

/// A person has no PIN any more.
struct PinCleared {
    static constexpr std::string_view kind = "pin-cleared";
    std::string person;
    bool isReset = false; ///< by the owner of the file, and not by a gear officer or that person
};

/// Whether a signature is to be proven by the signer's PIN, from now on.
struct SignaturesProven {
    static constexpr std::string_view kind = "signatures-proven";
    bool isAsked = false;
};

/// What the machine that writes it is called from now on.
struct MachineNamed {
    static constexpr std::string_view kind = "machine-named";
    std::string name;
};

using FactBody =
    std::variant<MachineBegun, ClubNamed, CheckOpened, NamesGiven, TagSeen, ActTakenBack, RecordWithdrawn,
                 PointRecorded, CheckSigned, CheckClosed, UrgentEnded, EventGiven, EventHeld, OperationLogged,
                 TagFixed, PhotoAdded, PrivateErased, Renamed, WordTold, WordForgotten, PinSet, PinCleared,
                 SignaturesProven, MachineNamed, RowWritten>;

std::string kindOf(const FactBody& body); ///< "tag-seen"; of a row the sheet's table, "item"
/// Canonical JSON, see fact.h. `proven`: by whose PIN it is written, which stands in it, too; empty:
/// nobody's.
std::string textOf(const FactBody& body, const std::string& proven = {});

/// Reads a fact. A field that this program does not know is left alone and a kind that it does not know gives
/// nothing: both are of a later program, which finds them in the fact. FileDamaged, naming the fact and the
/// field, when a field is missing or holds what no program writes.
Result<std::optional<FactBody>> bodyOf(const Fact& fact);

/// The instant that the person gave, of a fact of any kind, also one that cannot be read otherwise. Empty:
/// none.
std::optional<Instant> givenInstant(const Fact& fact);

/// By whose PIN the fact was written, of a fact of any kind. Empty: nobody's.
std::string provenBy(const Fact& fact);

/// A field of a fact as it stands in it, canonical JSON, with all that a later program put there. Of a fact
/// that bodyOf reads.
std::string fieldText(const Fact& fact, const char* field);

RowWritten rowWritten(const RowChange& change);
RowWritten rowWritten(SheetId sheet, const CellTexts& key, const CellTexts& set);

/// A state given to an item. `check`: see RowWritten.
RowWritten stateGiven(const std::string& code, const std::string& state, CalendarDay since,
                      const std::string& why, const std::string& check = {});

} // namespace core
