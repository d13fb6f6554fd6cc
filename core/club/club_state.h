#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/held_check.h"
#include "core/club/pin_lock.h"
#include "core/exchange/csv_import.h"
#include "core/record/facts.h"
#include "core/store/check_store.h"
#include "core/store/database.h"
#include "core/store/ledger.h"
#include "core/store/register_store.h"
#include "core/tag/tag_code.h"

#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace core {

class Pin;

Error unknownPerson(const std::string& name);

/// What stands behind a Club: one connection, its ledger and its readers.
struct ClubState {
    explicit ClubState(std::unique_ptr<Database> opened)
        : database(std::move(opened))
        , registerStore(*database)
        , checkStore(*database)
        , heldCheck(*database, checkStore)
        , pinLock(*database, registerStore)
        , m_ledger(*database) {}

    std::unique_ptr<Database> database;
    RegisterStore registerStore;
    CheckStore checkStore;
    HeldCheck heldCheck;
    PinLock pinLock;

    /// The one way to write: begins a write transaction, then `work` looks, decides and appends to the
    /// ledger, and it is committed. So nobody else writes between what is asked and what is recorded. When
    /// `work` gives an error, or throws, nothing was done. `right`: who may do this; PinNeeded when it is a
    /// gear officer's and nobody has unlocked it. `work`: gives an Outcome or a Result. Not to be nested.
    template <class Work>
    auto write(Right right, Work work) -> decltype(work(std::declval<Ledger&>()));

    /// The same of what anybody may do, proven by that person's own PIN. As ClubPins::unlock.
    template <class Work>
    auto writeAs(const std::string& person, const Pin& pin, Work work)
        -> decltype(work(std::declval<Ledger&>()));

    /// For an act of that right which does not write in the file: whether it may be done. The ten minutes of
    /// whoever unlocked it begin anew, as with `write`. PinNeeded.
    Outcome mayDo(Right right);

    /// Does `work` as `write` would, to see what comes of it, and takes it all back.
    template <class Work>
    auto tried(Work work) -> decltype(work(std::declval<Ledger&>()));

    std::string machineToGoOn() const { return m_ledger.machineToGoOn(); } ///< see Ledger

    /// The unfinished check of that boat or place and phase, or a new one. The caller has looked the name up.
    OpenCheck openOrResume(Ledger& ledger, const std::string& where, Phase phase, Moment moment);

    /// What is asked by points in that check; none at a place, nor of a boat that left the register.
    std::vector<BoatPoint> pointsOf(const CheckRun& run) const;

    /// Whether anything stands of the check besides its opening.
    bool isTouched(const std::string& check) const;

    /// The check's row, NotFound if there is none, NotAllowed if it is signed or was closed.
    Result<CheckRun> openRun(const std::string& check) const;
    Result<CheckRun> anyRun(const std::string& check) const;
    /// Signed or not, but not closed unsigned: what may be told of it afterwards belongs to it.
    Result<CheckRun> heldRun(const std::string& check) const;

    /// Writes of each boat that went out urgently and is whole now that it is: the reason of that launch then
    /// stands no more, whatever happens to the boat's kit later. Last in each act that may make a boat whole,
    /// in its transaction.
    void endUrgentOfWhole(Ledger& ledger, CalendarDay today);

    /// The club's own tags, of kit, boats, people and places, that are one slip away from what was typed; as
    /// they are printed, at most three. Reads all tags, so only for what is no tag.
    std::vector<std::string> tagsLike(const std::string& typed) const;

    /// Whether that person may be named in a check of that phase there, or sign it: who is here, and at a
    /// return who went out with the boat. NoLongerHere.
    Outcome mayTakePart(const Person& person, const Location& where, Phase phase, CalendarDay today) const;

    /// The words of a new log entry about that boat or item: as given, with a number behind them where an
    /// entry of that day has the same words, so that no entry is written over.
    std::string newLogText(const std::string& boat, const std::string& code, CalendarDay day,
                           const std::string& text) const;

    /// The PIN of that person. NoPinSet; PinNotAsSet where what is kept of it is not what was set.
    Result<pinTables::PinNow> pinOf(const Person& person) const;
    /// The same of a gear officer who is here. NoSuchPerson; NotGearOfficer.
    Result<pinTables::PinNow> officersPin(const std::string& person) const;
    /// Whether it is that PIN; wrong ones are counted, also those of a program that is killed meanwhile. Not
    /// within a write. PinWrong; PinWait; MemoryShort.
    Outcome tryPin(const pinTables::PinNow& set, const Pin& pin);
    /// Whether that person cannot sign such a check without a PIN. Not at a launch while that PIN must wait.
    bool isPinAsked(const Person& signer, Phase phase) const;

    /// A signature with the answer that was signed.
    SignedCheck signedCheck(const SignOff& signOff) const;

private:
    Ledger m_ledger;
};

/// Runs `work` and turns a failing store, or a record that cannot be read, into its Error.
template <class Work>
auto guarded(Work work) -> decltype(work()) {
    try {
        return work();
    } catch (const std::exception& thrown) {
        return errorOf(thrown);
    }
}

template <class Work>
auto ClubState::write(Right right, Work work) -> decltype(work(std::declval<Ledger&>())) {
    return guarded([&]() -> decltype(work(m_ledger)) {
        Transaction transaction(*database);
        auto prover = pinLock.proverOf(right);
        if (!prover) return prover.error();
        try {
            m_ledger.prove(*prover);
            auto done = work(m_ledger);
            if (done) {
                m_ledger.committing();
                transaction.commit();
                m_ledger.committed();
                pinLock.renew(right);
            }
            m_ledger.undone();
            return done;
        } catch (...) {
            m_ledger.undone();
            heldCheck.forget(); // it may have kept up with what is not on disk now
            throw;
        }
    });
}

template <class Work>
auto ClubState::writeAs(const std::string& name, const Pin& pin, Work work)
    -> decltype(work(std::declval<Ledger&>())) {
    return guarded([&]() -> decltype(work(m_ledger)) {
        const auto person = registerStore.person(name);
        if (!person) return unknownPerson(name);
        const auto set = pinOf(*person);
        if (!set) return set.error();
        if (const Outcome right = tryPin(*set, pin); !right) return right.error();
        return write(Right::Anybody, [&](Ledger& ledger) {
            ledger.prove(person->name);
            return work(ledger);
        });
    });
}

template <class Work>
auto ClubState::tried(Work work) -> decltype(work(std::declval<Ledger&>())) {
    return guarded([&]() -> decltype(work(m_ledger)) {
        const Transaction neverCommitted(*database);
        struct Back {
            ClubState& state;
            ~Back() {
                state.m_ledger.undone();
                state.heldCheck.forget();
            }
        } back{*this};
        return work(m_ledger);
    });
}
/// The item of a tag that it has or had, as it was typed. NotFound, also for a tag that is one slip away from
/// others.
Result<Item> knownItem(ClubState& state, const std::string& typed);

/// `known`: the club's places, as a list for people; empty when it has none.
Error noSuchPlace(const std::string& name, const std::string& known);

/// The place as the register spells it. NotFound; NoLongerHere.
Result<std::string> placeHere(ClubState& state, const std::string& name, CalendarDay today);

/// Plans the import of a folder of CSV and, when no row is rejected, appends what changes, within the
/// caller's write.
Result<ImportPlan> importInto(Database& database, Ledger& ledger, const std::filesystem::path& folder,
                              CalendarDay today, const std::function<void(int done, int of)>& progress);

/// Where a new row of an ordered sheet goes: behind all rows of its boat class or boat, also where rows
/// before them were taken away.
int placeBehind(Database& database, const RowChange& change);

/// Appends rows that were planned, within the caller's write; rows of an ordered sheet go behind the others.
/// `moment`: of a person who writes them; a record of an earlier day has none, for it is of that day whenever
/// it is written. An import knows only days.
void appendRows(Database& database, Ledger& ledger, const std::vector<RowChange>& changes,
                const std::string& by, const std::optional<Moment>& moment);

/// Closes a log entry with those words, within the caller's write.
void closeEntry(Ledger& ledger, const LogEntry& entry, const std::string& closing, const std::string& by,
                CalendarDay today);

/// Gives tags that nothing in the file has, nor kit ever had. Valid as long as the file is open.
MintTag mintingFor(Database& database);

/// The last day of what has that name; empty: it is here for good, or not known.
std::optional<CalendarDay> untilOf(const ClubState& state, SheetId id, const std::string& name);
/// NoLongerHere where that last day is past.
Outcome stillHere(const std::string& name, const std::optional<CalendarDay>& until, CalendarDay today);

/// A boat, person or place: what has a name, and may have a tag.
struct TagHolder {
    Named named = Named::Boat;
    std::string name;
    std::string tag;   ///< empty: none
    std::string about; ///< class of a boat, role of a person
    std::optional<CalendarDay> until;
};

/// What that tag code or name means, if it is no tag of kit. Empty: nothing. NameOfSeveral.
Result<std::optional<TagHolder>> tagHolderOf(const ClubState& state, const std::string& asked);

/// Writes cells of one row of what has that name, as an import of that row would, within the caller's write.
/// Nothing is written when nothing changes.
Outcome writeNamedRow(ClubState& state, Ledger& ledger, Named named, const CellTexts& row,
                      const std::string& by, Moment moment);

} // namespace core
