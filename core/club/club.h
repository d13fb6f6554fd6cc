#pragma once

#include "core/answers/missing_list.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club_types.h"
#include "core/exchange/csv_import.h"

#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace core {

class ManifestRecord;
struct Evidence;
struct EventTally;
struct KitEntry;
struct KitLife;
struct MakeReadyPlan;
struct MakeReadyQuestion;
struct ManifestOwner;
struct NewKit;
struct Operation;
struct PhasePoint;
struct ReplacementPlan;
struct ReplacementQuestion;
struct ServiceOrder;
struct ServiceRound;

/// A club file and everything a person does with it: one function for each thing, each durable when it
/// returns.
///
/// Not for sharing between threads: each thread opens its own. Names given are found without regard to case
/// and outer blanks; codes may be typed forgivingly. A function that fails changes nothing. `Moment` says
/// when something is done; rules never look at a clock.
class Club {
public:
    /// Refuses an existing file (FileExists). The file is whole and durable when this returns.
    static Result<Club> create(const std::filesystem::path& file, const std::string& name);
    /// Migrates an older file after backing it up; refuses a newer one. ReadOnly never writes, not even that.
    enum class Access { ReadWrite, ReadOnly };
    static Result<Club> open(const std::filesystem::path& file, Access access = Access::ReadWrite);

    Club(Club&&) noexcept;
    Club& operator=(Club&&) noexcept;
    ~Club();

    std::string name() const;

    // The register
    // -----------------------------------------------------------------------------------------------
    /// All or nothing. With rejected rows nothing is imported and the plan says which. A dry run only plans.
    Result<ImportPlan> importRegister(const std::filesystem::path& folder, CalendarDay today, bool dryRun,
                                      const std::function<void(int done, int of)>& progress = {});
    Outcome exportRegister(const std::filesystem::path& folder,
                           const std::vector<std::string>& measuresOf) const;
    std::vector<Boat> boats() const;    ///< by name
    std::vector<Person> people() const; ///< by name
    Result<Boat> boat(const std::string& name) const;
    /// The boat's points of that phase, in the manifest's order.
    Result<std::vector<BoatPoint>> pointsOf(const std::string& boat, Phase phase) const;
    std::optional<Boat> boatOfTag(const std::string& code) const;
    std::optional<Item> item(const std::string& code) const;
    /// The same, with all that its dates depend on (core/upkeep/due_date.h reckons them).
    std::optional<ItemRecord> itemRecord(const std::string& code) const;
    /// What a scan means: the item whose tag or maker's label it is. Empty for a tag that was replaced.
    std::optional<Item> itemOfScan(const std::string& text, CalendarDay today) const;
    std::vector<KitEntry> kit() const;       ///< every item, by code (core/register/kit_entry.h)
    std::vector<KitType> kitTypes() const;   ///< with sizes and rules, by name
    std::vector<std::string> places() const; ///< by name
    /// Registered tags with the words that go beneath: all items and boats and people when `codes` is empty.
    Result<std::vector<TagLabel>> tagLabels(const std::vector<std::string>& codes) const;
    /// Item and the tag that names it now, for items whose first tag was replaced.
    std::map<std::string, std::string> replacedTags() const;
    /// What is aboard the boat as the register has it: its home items, in the manifest's order, then by code.
    Result<std::vector<TagLabel>> kitOf(const std::string& boat) const;
    std::vector<std::string> mintCodes(int count) const; ///< unused kit codes
    /// What is asked of each boat and class, now and in every version (core/register/manifest_record.h).
    /// FileDamaged when a fact of it cannot be read.
    Result<ManifestRecord> manifests() const;
    /// Writes that line into the manifest of a class or as a boat's own difference: new, changed, or taken
    /// away with quantity 0. Refused as an import refuses it, with nothing written; no fact when it stands so
    /// already. A boat whose own line is like the class's differs no more, yet keeps it when the class
    /// changes. `seen`, when given, is what was asked when it was looked at: NotAllowed, with nothing
    /// written, when something else is asked by now. A line that comes anew, without `seen`, keeps the
    /// substitutes it had.
    Outcome changeManifest(const ManifestOwner& owner, const ManifestLine& line, const std::string& by,
                           Moment moment, const ManifestLine* seen = nullptr);
    /// Takes the boat's own line away: its class's holds again, and is followed when it changes. `seen` as
    /// above. NotFound: the boat has no line of its own for that kit type.
    Outcome dropOwnLine(const std::string& boat, const ManifestLine& seen, const std::string& by,
                        Moment moment);
    /// The same for points. Without `seen` it is a new one; with another name or phase than `seen` the point
    /// is renamed in its place. BadInput: a point of that name is asked already. NotAllowed: a boat cannot
    /// rename its class's point, nor a class one that a boat of it has as its own.
    Outcome changePoint(const ManifestOwner& owner, const PhasePoint& point, const std::string& by,
                        Moment moment, const PhasePoint* seen = nullptr);
    /// Takes the owner's own point away; where it was a boat's difference, the class's holds again. NotFound:
    /// it is the class's, and a boat cannot leave that out.
    Outcome dropPoint(const ManifestOwner& owner, const PhasePoint& seen, const std::string& by,
                      Moment moment);

    // Checks
    // ------------------------------------------------------------------------------------------------------
    /// The unfinished check of that boat (or place) and phase, or a new one. `resumed` tells which.
    Result<OpenCheck> openCheck(const std::string& boat, Phase phase, Moment moment);
    std::vector<OpenCheck> unfinishedChecks() const; ///< newest first
    /// Replaces the names. Driver first, then crew, as they are to be served in that order. Unknown:
    /// NotFound.
    Outcome giveNames(const std::string& check, const std::vector<std::string>& people, Moment moment);
    std::vector<std::string> namesOf(const std::string& check) const;
    /// One scan, as a camera or a hand-held scanner gives it. A new sighting is on disk when this returns.
    Result<Scanned> scan(const std::string& check, const std::string& text, SeenBy seenBy, Moment moment);
    /// Takes the newest standing sighting back; it stays in the record as undone. NotFound when there is
    /// none.
    Result<Scanned> undoSighting(const std::string& check, Moment moment);
    /// Takes back that item's sighting in this check.
    Outcome undoSightingOf(const std::string& check, const std::string& code, Moment moment);
    /// A look: 1 done, 0 taken back. NotFound for an unknown point; BadInput for a look with another value.
    Outcome recordPoint(const std::string& check, const std::string& point, double value, Moment moment);
    /// Withdraws the item (unserviceable) with an open log entry of severity stop.
    Outcome withdraw(const std::string& check, const std::string& code, const std::string& text,
                     Moment moment);
    /// How the check stands now. Its cost does not grow with the club's history.
    Result<CheckAnswer> answer(const std::string& check, CalendarDay today) const;
    /// Signs. A launch that is incomplete needs `urgent`, a reason, else NotAllowed; urgent is dropped when
    /// it is complete. A return marks what was not returned as missing. Afterwards nothing of the check
    /// changes.
    Result<SignedCheck> sign(const std::string& check, const std::string& by, const std::string& urgent,
                             Moment moment);

    // Places, rounds and events
    // ---------------------------------------------------------------------------------------
    /// The unfinished stocktake of that place, or a new one: a check like the others, of what the register
    /// has there. Signing it marks what was not seen as missing.
    Result<OpenCheck> openStocktake(const std::string& place, Moment moment);
    /// One record for each item that the rule fits, all in one transaction.
    Result<ServiceRound> recordService(const ServiceOrder& order, Moment moment);
    /// Files a check under an event: a patrol, training day or carnival.
    Outcome giveEvent(const std::string& check, const std::string& event, Moment moment);
    /// What went out and came back, over all boats. An event is a name that checks were filed under, or a
    /// day. NotFound without any check.
    Result<EventTally> eventTally(const std::string& event) const;
    std::vector<std::string> events() const; ///< names that checks were filed under, newest first
    /// What a crew writes about its trip, once its return check is signed or before; the newest holds. Hours
    /// and launches are counted to all kit that went out, once.
    Outcome recordOperation(const std::string& check, const Operation& operation, Moment moment);
    std::optional<Operation> operationOf(const std::string& check) const;
    /// What was aboard a boat at an instant, by its signed checks.
    Result<Evidence> evidence(const std::string& boat, Instant on) const;

    // Kit and tags
    // ---------------------------------------------------------------------------------------------------------
    /// Registers kit and mints its tags, all or nothing; in the order of the labels.
    Result<std::vector<Item>> registerKit(const NewKit& kit, const std::string& by, Moment moment);
    /// Gives an item a new tag, which is returned; the old one names nothing any more. Its history stays.
    Result<std::string> replaceTag(const std::string& code, const std::string& by, Moment moment);
    /// Written off: it counts nowhere from then on. `why`: lost, damaged, worn or expired.
    Outcome writeOff(const std::string& code, const std::string& why, const std::string& by, Moment moment);
    /// Back in use: an unserviceable item that was put right. NotAllowed for another state.
    Outcome release(const std::string& code, const std::string& by, Moment moment);

    // Answers
    // -----------------------------------------------------------------------------------------------------
    std::vector<BoatCondition>
    boatConditions(CalendarDay today) const;       ///< not ready, out, ready; then by name
    std::vector<MissingItem> missingItems() const; ///< missing longest first
    /// Rows due within `days` of today, passed, undated or due without a day; worst first.
    std::vector<DueRow> dueList(CalendarDay today, int days) const;
    Result<std::vector<LogEntry>>
    logEntries(const std::string& boat = {}) const; ///< open first, then newest first
    /// About a boat or an item (by name or code).
    Result<LogEntry> addLogEntry(const std::string& about, const std::string& text, Severity severity,
                                 const std::string& by, Moment moment);
    Outcome closeLogEntry(const std::string& entry, const std::string& closing, const std::string& by,
                          Moment moment);
    /// Everything recorded about a code, boat or person, oldest first.
    Result<std::vector<HistoryLine>> history(const std::string& subject) const;

    // Plans
    // ---------------------------------------------------------------------------------------------------------
    /// Which boats can be made complete with the kit on hand, and by which moves (core/plan/make_ready.h).
    Result<MakeReadyPlan> makeReady(const MakeReadyQuestion& question, CalendarDay today) const;
    /// What runs short when, and what to order by when (core/plan/replacement_plan.h).
    Result<ReplacementPlan> replacementPlan(const ReplacementQuestion& question, CalendarDay today) const;
    /// How long kit of each type really lasted here, by kit type (core/plan/kit_life.h).
    std::vector<KitLife> kitLives(CalendarDay today) const;

    // The record
    // --------------------------------------------------------------------------------------------------
    /// Hash chain, tables against facts, SQLite's own integrity check. `rebuild` makes the tables anew from
    /// the facts.
    Result<Verification> verify(bool rebuild);

    struct State; ///< of core's own sources

private:
    explicit Club(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

} // namespace core
