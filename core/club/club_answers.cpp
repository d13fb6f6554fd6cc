#include "core/club/club_answers.h"

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/missing_list.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/store/check_acts.h"
#include "core/store/item_states.h"
#include "core/store/sign_off_tables.h"

#include <algorithm>
#include <set>

namespace core {
namespace {

/// Gathers what the record holds of a boat; its kit, which is most of the work, only where the board asks for
/// it.
class BoatReader {
public:
    BoatReader(const ClubState& state, CalendarDay today)
        : m_state(state)
        , m_today(today) {}

    BoatOnRecord read(const Boat& boat) const {
        BoatOnRecord record{
            .boat = boat.name, .boatClass = boat.boatClass, .checkEveryDays = boat.checkEveryDays};
        const auto last = signOffTables::newestSignOff(*m_state.database, boat.name);
        if (!last) return record;
        record.last = m_state.signedCheck(*last);
        record.checkedDaysAgo = daysBetween(record.last->answer.today, m_today);
        const auto launch = signOffTables::newestSignOff(*m_state.database, boat.name, Phase::Launch);
        if (launch && !signOffTables::isUrgentEnded(*m_state.database, launch->check))
            record.urgent = launch->urgent;
        for (const Finding& finding : record.last->answer.findings)
            if (finding.kind == FindingKind::LogOpen && !isOpenStill(finding, boat.name))
                record.logClosed.insert(finding.entry);
        addSeenOfMissed(*last, record);
        if (!dependsOnKit(record)) return record;
        record.kit = readKit(*last, launch);
        for (const SeenItem& seen : record.kit->asForLaunch.seen)
            addSeenSince(seen.record.item.id, last->stamp, record);
        return record;
    }

private:
    /// The entry may be known by another boat's name since, so it is not looked for by its id.
    bool isOpenStill(const Finding& finding, const std::string& boat) const {
        const RegisterStore& store = m_state.registerStore;
        const auto open =
            openOnly(finding.item.id.empty() ? store.logOfBoat(boat) : store.logOfItem(finding.item.id));
        return std::ranges::any_of(open, [&](const LogEntry& entry) {
            return entry.day == finding.since && entry.text == finding.text;
        });
    }

    /// Another boat may have brought it in before this one came back.
    void addSeenOfMissed(const SignOff& last, BoatOnRecord& record) const {
        const auto launch =
            signOffTables::newestLaunchSignedBefore(*m_state.database, record.boat, last.stamp);
        for (const Finding& finding : record.last->answer.findings)
            if (finding.kind == FindingKind::NotReturned)
                addSeenSince(finding.item.id, launch ? launch->stamp : last.stamp, record);
    }

    void addSeenSince(const std::string& code, const std::string& stamp, BoatOnRecord& record) const {
        if (auto seen = checkTables::lastSeen(*m_state.database, code, stamp))
            record.seenSince.emplace(code, std::move(seen->location));
    }

    KitThatCameBack readKit(const SignOff& last, const std::optional<SignOff>& launch) const {
        const CheckRun asLaunch{last.check, last.stamp, last.location, Phase::Launch, last.at};
        KitThatCameBack kit{m_state.checkStore.inputOf(asLaunch, m_today), {}};
        if (kit.asForLaunch.people.empty() && launch)
            kit.launchPeople = m_state.checkStore.peopleOf(launch->check);
        return kit;
    }

    const ClubState& m_state;
    CalendarDay m_today;
};

/// Of an item that is missing now: what happened before it was marked.
MissingOnRecord readMissing(Database& database, Item item, const StateNow& now) {
    MissingOnRecord missing{.item = std::move(item)};
    const std::string& code = missing.item.id;
    missing.launch = signOffTables::newestLaunchOf(database, code, now.missingStamp);
    if (missing.launch) missing.launchPeople = checkActs::names(database, missing.launch->check);
    missing.sighting = checkTables::newestSighting(database, code, {}, now.missingStamp);
    if (missing.sighting) {
        if (const auto run = checkTables::run(database, missing.sighting->check))
            missing.seenAt = run->location;
        missing.seenPeople = checkActs::names(database, missing.sighting->check);
    }
    missing.missedBy = signOffTables::signOff(database, now.missingCheck);
    return missing;
}

} // namespace

void ClubState::endUrgentOfWhole(Ledger& ledger, CalendarDay today) {
    const BoatReader reader(*this, today);
    for (const SignOff& launch : signOffTables::standingUrgent(*database)) {
        const auto boat = registerStore.boat(launch.location.name);
        if (boat && conditionOf(reader.read(*boat)).kind == BoatCondition::Kind::KitReady)
            ledger.append(UrgentEnded{launch.check}, {});
    }
}

std::vector<BoatCondition> ClubAnswers::boatConditions(CalendarDay today) const {
    const ReadSnapshot asOfNow(*m_state->database);
    const BoatReader reader(*m_state, today);
    std::vector<BoatOnRecord> boats;
    for (const Boat& boat : ClubRegister(*m_state).boats())
        if (isHere(boat.until, today) || m_state->checkStore.outOn(boat.name))
            boats.push_back(reader.read(boat));
    return boardOf(boats);
}

std::vector<MissingItem> ClubAnswers::missingItems() const {
    const ReadSnapshot asOfNow(*m_state->database);
    const RegisterStore& store = m_state->registerStore;
    std::vector<MissingOnRecord> missing;
    for (const std::string& code : itemStates::codesEverMissing(*m_state->database)) {
        auto item = store.item(code);
        const StateNow now = itemStates::now(*m_state->database, code, {});
        if (item && now.state == ItemState::Missing)
            missing.push_back(readMissing(*m_state->database, std::move(*item), now));
    }
    return missingListOf(missing);
}

std::vector<ItemDue> ClubAnswers::kitWithNextDue(CalendarDay today) const {
    const ReadSnapshot asOfNow(*m_state->database);
    const RegisterStore& store = m_state->registerStore;
    return nextDuesOf(store.allRecords(), store.allKitTypes(), today);
}

Result<std::vector<Item>> ClubAnswers::kitToCount(const std::string& place, CalendarDay today) const {
    const ReadSnapshot asOfNow(*m_state->database);
    const auto name = placeHere(*m_state, place, today);
    if (!name) return name.error();
    const CheckRun notBegun{.location = Location::place(*name), .phase = Phase::Stocktake};
    const BoatCheckInput input = m_state->checkStore.inputOf(notBegun, today);
    std::set<std::string> asked;
    for (const Finding& finding : judge(input).findings)
        if (finding.kind == FindingKind::Missing) asked.insert(finding.item.id);
    std::vector<Item> kit;
    for (const ItemRecord& record : input.expectedBack)
        if (asked.contains(record.item.id)) kit.push_back(record.item);
    return kit;
}

std::vector<DueRow> ClubAnswers::dueList(CalendarDay today, int days) const {
    const ReadSnapshot asOfNow(*m_state->database);
    const RegisterStore& store = m_state->registerStore;
    return dueListOf(store.allRecords(), store.allKitTypes(), today, days);
}

} // namespace core
