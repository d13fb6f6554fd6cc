#pragma once

#include "core/record/facts.h"
#include "core/record/verification.h"
#include "core/store/database.h"

#include <cstdint>
#include <set>
#include <string>
#include <vector>

namespace core {

/// Walks the chains of all machines, fact by fact in their order, and tells what is not as it was written:
/// numbers, hashes, signatures, bodies, private cells, photographs.
class ChainWalk {
public:
    ChainWalk(Database& database, Verification& into)
        : m_database(database)
        , m_into(into) {}

    /// The walk goes on behind that fact, of a machine with that key (empty: unknown); what is before it was
    /// looked through elsewhere.
    void goOnAfter(const Fact& fact, const std::string& publicKey);
    void visit(const Fact& fact);
    void end(); ///< after the last

    struct Beginning {
        std::string machine, continues;
    };
    const std::vector<Beginning>& beginnings() const {
        return m_beginnings;
    } ///< of the machines that were met

private:
    void begin(const Fact& fact);
    void lookAtSignature(const Fact& fact);
    void lookAtTexts(const Fact& fact);
    void lookAtRow(const Fact& fact);
    void lookAtPrivateCells(const Fact& fact, const FactBody& body);
    void lookAtPin(const Fact& fact);
    void lookAtPhoto(const Fact& fact);
    void report(ErrorCode code, const Fact& fact, const std::vector<std::string>& more = {});

    Database& m_database;
    Verification& m_into;
    std::vector<Beginning> m_beginnings;
    std::set<std::string> m_photos; ///< hashes that facts tell
    std::string m_atUtc;            ///< of the fact before
    std::string m_publicKey;        ///< of the machine whose chain is walked; empty: unknown
    std::int64_t m_seq = 0;
    std::string m_hash;
};

} // namespace core
