#include "core/club/hub_exchange.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/club_state.h"
#include "core/club/taken_in.h"
#include "core/hub/hub_connection.h"
#include "core/store/check_tables.h"
#include "core/store/fact_table.h"
#include "core/store/giving_way.h"
#include "core/store/kept_keys.h"
#include "core/store/ledger.h"
#include "core/store/other_record.h"
#include "core/store/private_table.h"
#include "core/store/row_table.h"
#include "core/store/taking_in.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

namespace core {
namespace {

std::vector<hubFacts::Head> headsOf(Database& database) {
    std::vector<hubFacts::Head> heads;
    for (const std::string& machine : factTable::machines(database)) {
        const auto newest = factTable::newestOf(database, machine);
        heads.push_back({machine, newest->seq, newest->hash});
    }
    return heads;
}

constexpr std::int64_t aMomentsWork = 1000; ///< facts, of some 50 µs each

/// Somebody wrote on this machine within the last minutes, and a check is not signed yet.
bool isCheckBeingDone(Database& database) {
    constexpr std::int64_t some = 3 * 60 * std::int64_t{1000};
    const std::int64_t now = Instant::now().millis();
    // Where the clock of another machine is ahead, so is this one's record: that tells nothing then.
    const auto isRecent = [&](const OwnMachine& machine) {
        const auto newest = factTable::newestOf(database, machine.key.machine());
        return newest && std::llabs(now - factTable::recordedAt(*newest).millis()) < some;
    };
    const auto own = KeptKeys(clubOf(database)).all();
    return std::any_of(own.begin(), own.end(), isRecent) && !checkTables::allUnfinished(database).empty();
}

bool isRenaming(const Fact& fact) {
    return fact.kind == Renamed::kind;
}

} // namespace

Error asOfHub(Error error, const std::string& url) {
    if (error.code == ErrorCode::OtherRecordDamaged) error.code = ErrorCode::HubRecordDamaged;
    if (error.code == ErrorCode::FactsCutOff || error.code == ErrorCode::ForkTakenIn)
        error = {ErrorCode::HubRecordDamaged, {}, {}, {error}};
    if (error.where.empty()) error.where = url;
    return error;
}

HubExchange::HubExchange(ClubState& state, HubConnection& hub, HubPlace place, TakingIn manner)
    : m_state(state)
    , m_hub(hub)
    , m_place(std::move(place))
    , m_manner(manner)
    , m_founder(clubOf(*state.database)) {}

std::int64_t HubExchange::ownNewest(const std::string& machine) const {
    const auto found = std::find_if(m_heads.begin(), m_heads.end(),
                                    [&](const auto& head) { return head.machine == machine; });
    return found == m_heads.end() ? 0 : found->number;
}

void HubExchange::meet(const hubFacts::BoardDigest& board) {
    {
        const ReadSnapshot asOfNow(*m_state.database);
        m_heads = headsOf(*m_state.database);
    }
    m_meeting = hubFacts::meet(m_hub, m_founder, m_heads, board);
    const std::string own = rowTable::clubName(*m_state.database);
    // Whose facts come first, that club's the place there is for good.
    if (!m_meeting.isFounded && foldName(own) != foldName(m_meeting.name))
        throw StoreFailure({ErrorCode::HubOtherName, {m_meeting.name, own}});
    for (const hubFacts::Difference& each : m_meeting.differences)
        requireOneChain(each);
}

void HubExchange::requireOneChain(const hubFacts::Difference& difference) {
    Database& database = *m_state.database;
    const std::string& machine = difference.machine;
    const auto hashHere = [&](std::int64_t number) {
        const auto fact = factTable::inChain(database, machine, number);
        return fact ? fact->hash : std::string();
    };
    if (difference.met == 0 || hashHere(difference.met) == difference.hash) return;
    const auto there = [&](std::int64_t number) {
        return hubFacts::inChain(m_hub, m_meeting.club, machine, number).value_or(Fact());
    };
    const std::int64_t number =
        firstDifference(difference.met, [&](std::int64_t seq) { return hashHere(seq) == there(seq).hash; });
    const auto here = factTable::inChain(database, machine, number);
    throw StoreFailure(
        {ErrorCode::HubForked, {machine, std::to_string(number), here ? here->id : "", there(number).id}});
}

/// As the file stands now: it may have been written to since the hub was met.
bool HubExchange::isRenamedHereAlone() const {
    bool isRenamed = false;
    for (const std::string& machine : factTable::machines(*m_state.database))
        factTable::forEachAfter(*m_state.database, machine, hubsNewest(machine),
                                [&](const Fact& fact) { isRenamed = isRenamed || isRenaming(fact); });
    return isRenamed;
}

std::int64_t HubExchange::hubsNewest(const std::string& machine) const {
    for (const hubFacts::Difference& each : m_meeting.differences)
        if (each.machine == machine) return each.newest;
    return ownNewest(machine); // no difference
}

Outcome HubExchange::takeIn(Exchanged& into) {
    Database& database = *m_state.database;
    std::vector<hubFacts::Part> parts;
    for (const hubFacts::Difference& each : m_meeting.differences)
        if (const std::int64_t own = ownNewest(each.machine); each.newest > own)
            parts.push_back({each.machine, own, each.newest});
    if (parts.empty()) return Done{};
    std::int64_t there = 0;
    for (const hubFacts::Part& part : parts)
        there += part.upTo - part.after;
    if (mustWait(there)) {
        into.waiting = there;
        return Done{};
    }
    IncomingFacts incoming;
    incoming.pull(m_hub, m_meeting.club, parts, m_place.sendsPrivate, &database);
    if (const auto notHere = privateTable::notHere(database); m_place.sendsPrivate && !notHere.empty())
        incoming.pullCellsOf(m_hub, m_meeting.club, notHere);
    for (Taken taken = Taken::LookAgain; taken == Taken::LookAgain;) {
        const auto done = guarded([&] { return takeInNews(incoming, into); });
        if (!done) return asOfHub(done.error(), m_place.url);
        taken = *done;
        if (taken == Taken::Waits) into.waiting = there;
    }
    m_state.heldCheck.forget();
    return Done{};
}

bool HubExchange::mustWait(std::int64_t facts) const {
    return m_manner == TakingIn::GivesWay && facts > aMomentsWork && isCheckBeingDone(*m_state.database);
}

/// Signatures are looked at without a lock, which is most of the work; what depends on what stands here, and
/// the writing, is under one.
Result<HubExchange::Taken> HubExchange::takeInNews(IncomingFacts& incoming, Exchanged& into) {
    Database& database = *m_state.database;
    OtherFacts news;
    {
        const ReadSnapshot asOfNow(database);
        news = newFactsIn(database, incoming.database(), {});
    }
    Intake intake{std::move(into.cameIn), m_machines};
    bool gaveWay = false;
    auto taken = m_state.write(Right::Anybody, [&](Ledger&) -> Result<Taken> {
        return takeInAsOne(incoming, news, intake, gaveWay);
    });
    if (gaveWay) return Taken::Waits;
    into.cameIn = std::move(intake.cameIn);
    m_machines = std::move(intake.machines);
    return taken;
}

Result<HubExchange::Taken> HubExchange::takeInAsOne(IncomingFacts& incoming, const OtherFacts& news,
                                                    Intake& into, bool& gaveWay) {
    Database& database = *m_state.database;
    if (!isStillNew(database, news)) return Taken::LookAgain;
    std::optional<GivingWay> givingWay;
    const std::int64_t facts = factsToApply(database, news);
    if (mustWait(facts)) return Taken::Waits;
    if (m_manner == TakingIn::GivesWay && facts > aMomentsWork)
        givingWay.emplace(database, incoming.database(), gaveWay);
    std::vector<NamedThing> theirs;
    if (news.isRenamed() || isRenamedHereAlone())
        theirs = namedThings(RegisterStore(
            incoming.withTables(database, [&](const auto& machine) { return hubsNewest(machine); })));
    if (const Outcome taken = takeInLooked(m_state, news, theirs, m_place.url, into); !taken)
        return taken.error();
    return Taken::All;
}

Result<Exchanged> HubExchange::run() {
    constexpr int mostTries = 100; // each means that another machine got on
    Exchanged exchanged{.at = Instant::now()};
    for (int tries = 1;; ++tries) {
        if (const Outcome taken = takeIn(exchanged); !taken) return taken.error();
        // What is there may not go together with what would be sent.
        if (exchanged.waiting > 0 || send(exchanged)) break;
        if (tries == mostTries)
            throw StoreFailure({ErrorCode::HubNotReached, {"other machines keep it busy"}});
        meet({});
    }
    exchanged.at = Instant::now();
    return exchanged;
}

} // namespace core
