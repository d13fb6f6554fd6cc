#pragma once

#include "core/club/club_hub.h"
#include "core/hub/hub_facts.h"
#include "core/store/database.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace core {

class FactsByStamp;
class HubConnection;
struct Intake;
struct OtherFacts;

/// What came in from a hub, in a database of its own that passes with it, for the look-through that every
/// record of another machine gets. Throws StoreFailure.
class IncomingFacts {
public:
    IncomingFacts();
    /// Of each part all facts, their photographs, and their private cells if they are wanted.
    /// `own`: the file that they are for; empty: a new one.
    void pull(HubConnection& hub, int club, const std::vector<hubFacts::Part>& parts, bool wantsPrivate,
              Database* own);
    /// Private cells of facts that stand in the file already, which came without them.
    void pullCellsOf(HubConnection& hub, int club, const std::vector<std::string>& facts);
    Database& database() { return m_database; }
    /// The number of a machine's newest fact on the hub, or 0.
    using HubsNewest = std::function<std::int64_t(const std::string& machine)>;
    /// The record as it stands on the hub, with its tables: what is there of `own`, and what came in. Once.
    Database& withTables(Database& own, const HubsNewest& hubsNewest);

private:
    void noteBeside(const Fact& fact);
    void pullBeside(HubConnection& hub, int club, bool wantsPrivate, Database* own);

    Database m_database;
    std::vector<std::string> m_sealing; ///< facts that seal private cells
    std::set<std::string> m_photos;     ///< hashes of photographs that facts tell of
};

/// What is said of a record that came from the hub at that URL; what is said of the file stays.
Error asOfHub(Error error, const std::string& url);

/// One exchange of a file over a line that stands. Throws StoreFailure. Nothing of the file is locked while
/// the hub is waited for.
class HubExchange {
public:
    HubExchange(ClubState& state, HubConnection& hub, HubPlace place, TakingIn manner = TakingIn::AtOnce);

    /// Asks the hub what differs, and that it is the hub of this club.
    void meet(const hubFacts::BoardDigest& board);
    /// Takes in what is new here, then sends what is new there, until there is neither, or the first waits.
    Result<Exchanged> run();
    /// Sends all private cells that the file has: of facts that were sent without them.
    void sendAllPrivate();

    const hubFacts::Meeting& meeting() const { return m_meeting; }

private:
    void requireOneChain(const hubFacts::Difference& difference);
    Outcome takeIn(Exchanged& into);
    enum class Taken { All, LookAgain, Waits };
    /// LookAgain: another program took some of it in meanwhile, and what is left is to be looked through
    /// anew.
    Result<Taken> takeInNews(IncomingFacts& incoming, Exchanged& into);
    /// As one write; the caller holds it.
    Result<Taken> takeInAsOne(IncomingFacts& incoming, const OtherFacts& news, Intake& into, bool& gaveWay);
    bool mustWait(std::int64_t facts) const; ///< so many, to be applied now
    bool isRenamedHereAlone() const;         ///< something was, of which the hub does not know
    std::int64_t hubsNewest(const std::string& machine) const;
    bool send(Exchanged& into); ///< false: others sent something meanwhile
    struct Outgoing;
    std::unique_ptr<Outgoing> nextBatch(FactsByStamp& from) const;
    void requireSigned(const Outgoing& batch) const;
    void sendBeside(const Outgoing& batch);
    std::int64_t ownNewest(const std::string& machine) const;

    ClubState& m_state;
    HubConnection& m_hub;
    HubPlace m_place;
    TakingIn m_manner;
    std::string m_founder;
    std::vector<hubFacts::Head> m_heads; ///< of the file, when the hub was met
    hubFacts::Meeting m_meeting;
    std::set<std::string> m_machines; ///< whose facts came in
};

} // namespace core
