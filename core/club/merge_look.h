#pragma once

#include "core/base/slip_finder.h"
#include "core/club/club_exchange.h"
#include "core/club/club_state.h"
#include "core/store/other_record.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace core {

/// Finds what somebody must look at when these facts come in: it reads what stood there before they are
/// taken in, and what stands there after. Within the caller's write; may throw StoreFailure.
class MergeLook {
public:
    MergeLook(ClubState& state, const OtherFacts& news);
    /// After they were taken in; adds to `into`, each once.
    void lookAround(std::vector<LookAt>& into);

private:
    void forEachNew(bool withSightings, const std::function<void(const Fact&, const FactBody&)>& visit) const;
    void readBefore(const Fact& fact, const FactBody& body);
    void lookAt(const Fact& fact, const FactBody& body);
    bool isNew(const Fact& fact) const { return m_news.isAnyOf(fact.machine, fact.seq); }
    bool knewOfEachOther(const Fact& fact, const Fact& other) const;
    struct Seen {
        CheckRun run;
        Instant at;
    };
    void note(LookAt found);
    void lookAtSighting(const TagSeen& seen);
    void lookAtRow(const Fact& fact, const RowWritten& row);
    void lookAtSerial(const RowWritten& row);
    void lookAtName(const RowWritten& row);
    void lookAtSignature(const Fact& fact, const CheckSigned& signature);
    void lookAtLaunches(const std::string& boat);
    void lookAtPins();
    void lookAtRemoved(const RowWritten& row);
    void lookAtRenaming(const Fact& fact, const Renamed& renamed);
    bool areOfSame(const Renamed& a, const Renamed& b) const;

    ClubState& m_state;
    Database& m_database;
    const OtherFacts& m_news;
    std::set<std::string> m_tags;          ///< of which sightings come in
    std::map<std::string, Seen> m_seen;    ///< by tag, of those that come in: the newest sighting before
    std::set<std::string> m_wasSigned;     ///< checks signed before
    std::set<std::string> m_wasThere;      ///< "table key" of the named rows that stood there before
    std::map<SheetId, SlipFinder> m_named; ///< names of rows, as they are afterwards
    std::set<std::string> m_boats;         ///< of which a launch comes in
    std::set<std::string> m_noted;         ///< what was found
    std::set<std::pair<SheetId, std::string>> m_asked; ///< rows of which it was asked whether they came back
    std::map<std::string, std::string> m_pins;    ///< gear officers before, by the fact that set their PIN
    std::optional<std::vector<Fact>> m_renamings; ///< of all machines, once one comes in
    std::vector<LookAt>* m_into = nullptr;
};

} // namespace core
