#include "core/club/hub_exchange.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/club_state.h"
#include "core/club/taken_in.h"
#include "core/hub/hub_connection.h"
#include "core/store/fact_table.h"
#include "core/store/other_record.h"
#include "core/store/private_table.h"
#include "core/store/row_table.h"

#include <algorithm>

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

HubExchange::HubExchange(ClubState& state, HubConnection& hub, HubPlace place)
    : m_state(state)
    , m_hub(hub)
    , m_place(std::move(place))
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
    IncomingFacts incoming;
    incoming.pull(m_hub, m_meeting.club, parts, m_place.sendsPrivate, &database);
    if (const auto notHere = privateTable::notHere(database); m_place.sendsPrivate && !notHere.empty())
        incoming.pullCellsOf(m_hub, m_meeting.club, notHere);
    for (bool isDone = false; !isDone;) {
        const auto done = guarded([&] { return takeInNews(incoming, into); });
        if (!done) return asOfHub(done.error(), m_place.url);
        isDone = *done;
    }
    m_state.heldCheck.forget();
    return Done{};
}

/// Signatures are looked at without a lock, which is most of the work; what depends on what stands here, and
/// the writing, is under one.
Result<bool> HubExchange::takeInNews(IncomingFacts& incoming, Exchanged& into) {
    Database& database = *m_state.database;
    OtherFacts news;
    {
        const ReadSnapshot asOfNow(database);
        news = newFactsIn(database, incoming.database(), {});
    }
    Intake intake{std::move(into.cameIn), m_machines};
    bool isDone = true;
    const Outcome taken = m_state.write(Right::Anybody, [&](Ledger&) -> Outcome {
        isDone = isStillNew(database, news);
        if (!isDone) return Done{};
        std::vector<NamedThing> theirs;
        if (news.isRenamed || isRenamedHereAlone())
            theirs = namedThings(RegisterStore(
                incoming.withTables(database, [&](const auto& machine) { return hubsNewest(machine); })));
        return takeInLooked(m_state, news, theirs, m_place.url, intake);
    });
    into.cameIn = std::move(intake.cameIn);
    m_machines = std::move(intake.machines);
    return taken ? Result<bool>(isDone) : taken.error();
}

Result<Exchanged> HubExchange::run() {
    constexpr int mostTries = 100; // each means that another machine got on
    Exchanged exchanged{.at = Instant::now()};
    for (int tries = 1;; ++tries) {
        if (const Outcome taken = takeIn(exchanged); !taken) return taken.error();
        if (send(exchanged)) break;
        if (tries == mostTries)
            throw StoreFailure({ErrorCode::HubNotReached, {"other machines keep it busy"}});
        meet({});
    }
    exchanged.at = Instant::now();
    return exchanged;
}

} // namespace core
