#include "core/store/item_states.h"

#include "core/register/sheets.h"
#include "core/register/typed_rows.h"
#include "core/store/check_acts.h"
#include "core/store/database.h"
#include "core/store/fact_table.h"

#include <algorithm>
#include <array>

namespace core::itemStates {
namespace {

std::optional<CalendarDay> sinceFrom(const std::string& text, const std::string& code) {
    const auto since = CalendarDay::parse(text);
    if (!since && !text.empty()) throw StoreFailure(unreadableCell({"item_state", code, "since"}, {}, text));
    return since;
}

/// `code`: the item's, for the error.
ItemState stateFrom(const std::string& text, const std::string& code) {
    if (const auto state = itemStateFrom(text)) return *state;
    throw StoreFailure(unreadableCell({"item_state", code, "state"}, {}, text));
}

bool wasSeenBetween(Database& database, const std::string& code, const std::string& after,
                    const std::string& before) {
    Statement query =
        database
            .prepare(
                "SELECT 1 FROM sighting WHERE code = ? AND stamp > ? AND (?3 = '' OR stamp < ?3) AND NOT "
                "EXISTS (SELECT 1 FROM taken_back WHERE act = sighting.id) LIMIT 1")
            .with(code)
            .with(after)
            .with(before);
    const bool seen = query.step();
    query.reset();
    return seen;
}

bool saysHowItEnded(const Fact& fact) {
    static const int passed = sheet(SheetId::Services).indexOf("passed");
    return std::ranges::any_of(factTable::rowOf(fact).set,
                               [](const auto& cell) { return cell.first == passed; });
}

/// Whether somebody recorded a service of it: it lay on the bench. What came with an import says nothing of
/// where it is.
bool wasServicedBetween(Database& database, const std::string& code, const std::string& after,
                        const std::string& before) {
    const std::string services(sheet(SheetId::Services).table);
    return std::ranges::any_of(
        factTable::ofRowsUnder(database, services, foldName(code)), [&](const Fact& fact) {
            const std::string stamp = fact.stamp();
            return !fact.by.empty() && stamp > after && (before.empty() || stamp < before) &&
                   !checkActs::isTakenBack(database, fact.id) && saysHowItEnded(fact);
        });
}

} // namespace

StateNow now(Database& database, const std::string& code, const std::vector<ServiceRecord>& services,
             const std::string& before) {
    Statement query =
        database
            .prepare("SELECT stamp, state, since, why, check_id, rule FROM item_state WHERE code = ? AND "
                     "state <> '' AND (?2 = '' OR stamp < ?2) AND NOT EXISTS (SELECT 1 FROM taken_back WHERE "
                     "act = item_state.id) ORDER BY stamp DESC")
            .with(code)
            .with(before);
    StateNow found;
    std::string given; // the newest that is not "missing"
    bool isMissing = false;
    while (given.empty() && query.step()) {
        const std::string stamp = query.text(0);
        const std::string state = query.text(1);
        if (state != "missing") {
            given = state;
            found.apart = {stateFrom(state, code), sinceFrom(query.text(2), code), query.text(3),
                           state == nameOf(ItemState::Unserviceable) && !query.text(5).empty(),
                           query.text(5)};
            found.apartStamp = stamp;
            continue;
        }
        // Here again after it was marked missing: found, and back in the state before that.
        if (isMissing || wasSeenBetween(database, code, stamp, before) ||
            wasServicedBetween(database, code, stamp, before))
            continue;
        isMissing = true;
        found.given = state;
        found.since = sinceFrom(query.text(2), code);
        found.why = query.text(3);
        found.missingStamp = stamp;
        found.missingCheck = query.text(4);
    }
    query.reset();
    if (given.empty())
        if (const auto failed = failedRecord(services))
            found.apart = {ItemState::Unserviceable, failed->day, {}, true, failed->rule};
    if (isMissing) {
        found.state = ItemState::Missing;
        return found;
    }
    found.given = given;
    found.state = found.apart.state;
    found.since = found.apart.since;
    found.why = found.apart.why;
    return found;
}

std::vector<std::string> goneSince(Database& database, const std::string& code) {
    std::vector<std::string> acts;
    Statement query = database
                          .prepare("SELECT id, state FROM item_state WHERE code = ? AND state <> '' AND NOT "
                                   "EXISTS (SELECT 1 FROM taken_back WHERE act = item_state.id) ORDER BY "
                                   "stamp DESC")
                          .with(code);
    while (query.step() &&
           (query.text(1) == nameOf(ItemState::WrittenOff) || query.text(1) == nameOf(ItemState::Missing)))
        acts.push_back(query.text(0));
    query.reset();
    return acts;
}

std::vector<std::string> codesEverMissing(Database& database) {
    std::vector<std::string> codes;
    Statement query =
        database.prepare("SELECT DISTINCT code FROM item_state WHERE state = 'missing' ORDER BY code");
    while (query.step())
        codes.push_back(query.text(0));
    return codes;
}

std::string homeGivenAt(Database& database, const std::string& code) {
    const Sheet& items = sheet(SheetId::Items);
    const std::array columns{items.indexOf("boat"), items.indexOf("place")};
    std::string newest;
    for (const Fact& fact : factTable::ofRow(database, std::string(items.table), foldName(code)))
        for (const auto& [column, text] : factTable::rowOf(fact).set)
            if (std::find(columns.begin(), columns.end(), column) != columns.end())
                newest = std::max(newest, fact.stamp());
    return newest;
}

} // namespace core::itemStates
