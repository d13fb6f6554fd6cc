#include "core/store/ledger.h"

#include "core/record/row_of_facts.h"
#include "core/store/check_acts.h"
#include "core/store/check_tables.h"
#include "core/store/fact_table.h"
#include "core/store/machine_names.h"
#include "core/store/named_rows.h"
#include "core/store/names_now.h"
#include "core/store/photo_table.h"
#include "core/store/pin_tables.h"
#include "core/store/private_table.h"
#include "core/store/register_store.h"
#include "core/store/row_table.h"
#include "core/store/sign_off_tables.h"
#include "core/store/tag_tables.h"
#include "core/store/told_words.h"
#include "core/store/trip_tables.h"

#include <algorithm>

namespace core {
namespace {

/// Whether the facts come with the newest last, as in a rebuild, or as they arrive from several machines.
enum class Order { ByStamp, Any };

/// What is left of a fact of the register that was taken back: all but the state that it gave an item.
void leaveOutState(RowWritten& written) {
    if (written.sheet != SheetId::Items) return written.set.clear();
    const Sheet& items = sheet(SheetId::Items);
    std::erase_if(written.set, [&](const auto& cell) {
        return cell.first == items.indexOf("state") || cell.first == items.indexOf("since") ||
               cell.first == items.indexOf("why");
    });
}

/// The row as all its facts in `facts` leave it, but what was taken back. Empty: nothing of it is left.
std::optional<StoredRow> rowFromAllFacts(Database& facts, Database& tables, const Sheet& sheet,
                                         const std::string& key) {
    std::optional<StoredRow> row;
    for (const Fact& fact : factTable::ofRow(facts, std::string(sheet.table), key)) {
        RowWritten written = factTable::rowOf(fact);
        privateTable::open(facts, fact.id, written);
        written = namesNow::row(tables, std::move(written));
        if (checkActs::isTakenBack(tables, fact.id)) {
            leaveOutState(written);
            if (written.set.empty()) continue;
        }
        if (!row) row.emplace();
        overlay(written, fact.stamp(), *row);
    }
    return row;
}

const std::string* setCell(const RowWritten& written, std::string_view column) {
    const int wanted = sheet(written.sheet).indexOf(column);
    const auto found = std::find_if(written.set.begin(), written.set.end(),
                                    [&](const auto& each) { return each.first == wanted; });
    return found == written.set.end() ? nullptr : &found->second;
}

std::string textOrEmpty(const std::string* text) {
    return text == nullptr ? std::string() : *text;
}

/// Writes to the tables what one fact says.
class Applier {
public:
    /// `facts`: where the other facts are read, when a row has to be made anew.
    Applier(Database& facts, Database& database, const Fact& fact, Order order)
        : m_facts(facts)
        , m_database(database)
        , m_fact(fact)
        , m_stamp(fact.stamp())
        , m_order(order) {}

    void operator()(const MachineBegun&) const {} // verify reads it in the chain
    void operator()(const MachineNamed& fact) const {
        machineNames::put(m_database, m_fact.machine, m_stamp, fact.name);
    }
    void operator()(const ClubNamed& fact) const { rowTable::putClubName(m_database, m_stamp, fact.name); }
    void operator()(const CheckOpened& fact) const {
        checkTables::putRun(m_database,
                            {fact.check, m_stamp, location(fact.phase, fact.boat), fact.phase, fact.at});
        if (fact.event) checkActs::putEvent(m_database, place(fact.check), *fact.event, false);
    }
    void operator()(const NamesGiven& fact) const {
        checkActs::putNames(m_database, place(fact.check),
                            namesNow::of(m_database, Named::Person, fact.people));
    }
    void operator()(const TagSeen& fact) const {
        checkTables::putSighting(
            m_database, {m_fact.id, m_stamp, fact.check, fact.code, fact.at, fact.seenBy,
                         fact.print ? std::optional(std::clamp(*fact.print, 0.0, 4.0)) : std::nullopt});
    }
    void operator()(const ActTakenBack& fact) const { takeBack(fact.act); }
    void operator()(const RecordWithdrawn& fact) const {
        for (const std::string& act : fact.acts)
            takeBack(act);
    }
    void operator()(const PointRecorded& fact) const {
        checkActs::putPoint(m_database, place(fact.check), fact.point, fact.value);
    }
    void operator()(const CheckClosed& fact) const {
        checkActs::putClosed(m_database, fact.check, m_stamp, fact.reason);
    }
    void operator()(const CheckSigned& fact) const {
        signOffTables::putSignOff(m_database,
                                  {fact.check, m_stamp, location(fact.phase, fact.boat), fact.phase, writer(),
                                   fact.at, fact.urgent},
                                  nameOf(fact.answer.outcome), fieldText(m_fact, "answer"));
    }
    void operator()(const UrgentEnded& fact) const {
        signOffTables::putUrgentEnded(m_database, fact.check, m_stamp);
    }
    void operator()(const EventGiven& fact) const {
        checkActs::putEvent(m_database, place(fact.check), fact.event, true);
    }
    void operator()(const EventHeld& fact) const {
        tripTables::putHeld(m_database, {m_fact.id, m_stamp, fact.event, fact.at, fact.until, writer()});
    }
    void operator()(const OperationLogged& fact) const {
        checkActs::putOperation(m_database, place(fact.check),
                                namesNow::of(m_database, Named::Boat, fact.boat),
                                fieldText(m_fact, "operation"));
    }
    void operator()(const PhotoAdded& fact) const { photoTable::put(m_database, m_stamp, photoOf(fact)); }
    void operator()(const TagFixed& fact) const { tagTables::put(m_database, fact.tag, m_stamp, fact.code); }
    void operator()(const PrivateErased& fact) const {
        for (const std::string& id : fact.facts) {
            privateTable::erase(m_database, id, m_stamp);
            const auto erased = factTable::byId(m_facts, id);
            if (!erased || sheetOfTable(erased->kind) == nullptr) continue;
            const RowWritten written = namesNow::row(m_database, factTable::rowOf(*erased));
            remakeRow(sheet(written.sheet), written.key);
        }
    }
    void operator()(const WordTold& fact) const { toldWords::put(m_database, m_stamp, fact); }
    void operator()(const WordForgotten& fact) const { toldWords::put(m_database, m_stamp, fact); }
    void operator()(const PinSet& fact) const { changePin(fact.person, pinTables::Change::Set); }
    void operator()(const PinCleared& fact) const {
        changePin(fact.person, fact.isReset ? pinTables::Change::Reset : pinTables::Change::Cleared);
    }
    void operator()(const SignaturesProven& fact) const {
        pinTables::putSignaturesProven(m_database, m_stamp, fact.isAsked);
    }
    /// All that the tables hold under the old name stands under the new one: they are made anew. In a rebuild
    /// the names were settled before everything else.
    void operator()(const Renamed&) const {
        if (m_order == Order::Any) rebuildTables(m_facts, m_database);
    }
    void operator()(const RowWritten& sealed) const {
        RowWritten fact = sealed;
        privateTable::open(m_facts, m_fact.id, fact);
        fact = namesNow::row(m_database, std::move(fact));
        factTable::putRowOf(m_database, m_fact.id, m_fact.kind, fact.key);
        const Sheet& sheet = core::sheet(fact.sheet);
        StoredRow row = rowTable::find(m_database, sheet, fact.key).value_or(StoredRow{});
        const bool isLeftOut = isTakenBack(fact);
        if (isNewest(row, sheet) && !isLeftOut) {
            overlay(fact, m_stamp, row);
            putRow(sheet, fact.key, row);
        } else {
            remakeRow(sheet, fact.key);
        }
        if (fact.at && !isLeftOut) rowTable::putInstant(m_database, sheet, fact.key, fact.at->iso());
        if (sheet.id == SheetId::Items) putState(fact);
    }

private:
    checkActs::ActPlace place(const std::string& check) const { return {m_fact.id, m_stamp, check}; }

    /// As whoever wrote the fact is called now.
    std::string writer() const { return namesNow::of(m_database, Named::Person, m_fact.by); }

    void changePin(const std::string& person, pinTables::Change change) const {
        pinTables::put(m_database, {m_fact.id, m_stamp, namesNow::of(m_database, Named::Person, person),
                                    change, factTable::recordedAt(m_fact), writer()});
        // Two machines may each have set one: what is kept of the older one goes.
        for (const auto& [fact, stamp] :
             pinTables::superseded(m_database, namesNow::of(m_database, Named::Person, person)))
            privateTable::erase(m_database, fact, stamp);
    }

    Photo photoOf(const PhotoAdded& fact) const {
        const std::string boat = namesNow::of(m_database, Named::Boat, fact.boat);
        return {.id = m_fact.id,
                .item = fact.code,
                .boat = boat,
                .entry = fact.isOfEntry ? logEntryId({boat, fact.code, fact.day, fact.text}) : std::string(),
                .sha256 = fact.sha256,
                .size = fact.bytes,
                .at = fact.at,
                .by = writer()};
    }

    Location location(Phase phase, const std::string& name) const {
        const Named named = phase == Phase::Stocktake ? Named::Place : Named::Boat;
        return locationOf(phase, namesNow::of(m_database, named, name));
    }

    void putRow(const Sheet& sheet, const std::string& key, StoredRow row) const {
        const bool mayStay = sheet.staysWhileNamed && !row.cells.empty();
        if (row.isGone && mayStay && namedRows::isNamed(m_database, {sheet.id, key})) row.isGone = false;
        if (!row.isGone) namesNow::settleSize(m_database, sheet, row.cells);
        const auto named = row.isGone ? std::vector<namedRows::Key>() : namedRows::in(sheet, row.cells);
        const auto before = namedBefore(sheet, key);
        if (row.isGone)
            rowTable::remove(m_database, sheet, key);
        else
            rowTable::put(m_database, sheet, key, row);
        for (const namedRows::Key& each : named)
            if (!rowTable::find(m_database, core::sheet(each.sheet), each.key)) remakeNamed(each);
        for (const namedRows::Key& each : before)
            if (std::find(named.begin(), named.end(), each) == named.end()) remakeNamed(each);
    }

    std::vector<namedRows::Key> namedBefore(const Sheet& sheet, const std::string& key) const {
        if (!namedRows::mayName(sheet)) return {};
        const auto row = rowTable::find(m_database, sheet, key);
        return row ? namedRows::in(sheet, row->cells) : std::vector<namedRows::Key>();
    }

    /// A kit type or size that was taken away is there as long as something names it.
    void remakeNamed(const namedRows::Key& row) const { remakeRow(core::sheet(row.sheet), row.key); }

    void remakeRow(const Sheet& sheet, const std::string& key) const {
        putRow(sheet, key,
               rowFromAllFacts(m_facts, m_database, sheet, key).value_or(StoredRow{.isGone = true}));
    }

    /// Damage, a writing off or a service record wrote a row of the register, which is to be what it was.
    void takeBack(const std::string& id) const {
        checkActs::putTakenBack(m_database, id, m_stamp);
        const auto act = factTable::byId(m_facts, id);
        if (!act || sheetOfTable(act->kind) == nullptr) return;
        const RowWritten written = namesNow::row(m_database, factTable::rowOf(*act));
        const Sheet& sheet = core::sheet(written.sheet);
        remakeRow(sheet, written.key);
        remakeInstant(sheet, written.key);
    }

    /// When the row was made, by those of its facts that hold.
    void remakeInstant(const Sheet& sheet, const std::string& key) const {
        rowTable::removeInstant(m_database, sheet, key);
        for (const Fact& fact : factTable::ofRow(m_facts, std::string(sheet.table), key))
            if (const auto at = factTable::rowOf(fact).at; at && !checkActs::isTakenBack(m_database, fact.id))
                rowTable::putInstant(m_database, sheet, key, at->iso());
    }

    /// By a fact that came before it, for machines' clocks differ. Of an item only a state is ever taken
    /// back.
    bool isTakenBack(const RowWritten& fact) const {
        return (fact.sheet != SheetId::Items || setCell(fact, "state") != nullptr) &&
               checkActs::isTakenBack(m_database, m_fact.id);
    }

    /// A row that is not there may have been taken away by a fact that is newer than this one; or, where it
    /// comes back whole, by an older one.
    bool isNewest(const StoredRow& row, const Sheet& sheet) const {
        if (m_order == Order::ByStamp) return !sheet.staysWhileNamed || !row.stamp.empty();
        return row.stamp.empty() ? !sheet.losesRows : row.stamp < m_stamp;
    }

    void putState(const RowWritten& fact) const {
        if (const std::string* state = setCell(fact, "state"))
            rowTable::putState(m_database, {.code = fact.keyCells.front(),
                                            .stamp = m_stamp,
                                            .id = m_fact.id,
                                            .state = *state,
                                            .since = textOrEmpty(setCell(fact, "since")),
                                            .why = textOrEmpty(setCell(fact, "why")),
                                            .check = fact.check,
                                            .rule = fact.rule});
    }

    Database& m_facts;
    Database& m_database;
    const Fact& m_fact;
    std::string m_stamp;
    Order m_order;
};

void applyOne(Database& facts, Database& database, const Fact& fact, Order order) {
    // A kind that this program does not know is kept in the fact table for one that does.
    if (const auto body = factTable::bodyOf(fact)) std::visit(Applier(facts, database, fact, order), *body);
}

} // namespace

void apply(Database& database, const Fact& fact) {
    applyOne(database, database, fact, Order::Any);
}

void apply(Database& database, const Fact& fact, const FactBody& body) {
    std::visit(Applier(database, database, fact, Order::Any), body);
}

namespace {

/// First of all, for every other fact speaks in names.
void settleNames(Database& source, Database& target) {
    for (const Fact& fact : factTable::ofPlainKind(source, std::string(Renamed::kind)))
        namesNow::put(target, fact.id, fact.stamp(), std::get<Renamed>(*factTable::bodyOf(fact)));
    namesNow::settle(target);
}

/// By which the facts of a row are found.
void indexRows(Database& database) {
    factTable::forEachInChain(database, [&](const Fact& fact) {
        if (sheetOfTable(fact.kind) == nullptr) return;
        const RowWritten row = namesNow::row(database, factTable::rowOf(fact));
        factTable::putRowOf(database, fact.id, fact.kind, row.key);
    });
}

} // namespace

std::vector<std::string> derivedTables() {
    std::vector<std::string> all;
    for (const auto* tables :
         {&rowTable::tables(), &checkTables::tables(), &checkActs::tables(), &tagTables::tables(),
          &privateTable::tables(), &factTable::tables(), &namesNow::tables(), &tripTables::tables(),
          &photoTable::tables(), &pinTables::tables(), &machineNames::tables(), &toldWords::tables()})
        all.insert(all.end(), tables->begin(), tables->end());
    return all;
}

void rebuildTables(Database& source, Database& target) {
    for (const std::string& table : derivedTables())
        target.script("DELETE FROM " + table);
    settleNames(source, target);
    if (&source == &target) indexRows(target);
    factTable::forEachByStamp(source,
                              [&](const Fact& fact) { applyOne(source, target, fact, Order::ByStamp); });
}

} // namespace core
