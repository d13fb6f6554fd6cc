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

    void visit(const Fact& fact);
    void end(); ///< after the last

private:
    void begin(const Fact& fact);
    void lookAtSignature(const Fact& fact);
    void lookAtTexts(const Fact& fact);
    void lookAtRow(const Fact& fact);
    void lookAtPrivateCells(const Fact& fact, const RowWritten& row);
    void lookAtPhoto(const Fact& fact);
    void report(ErrorCode code, const Fact& fact, const std::vector<std::string>& more = {});

    Database& m_database;
    Verification& m_into;
    struct Beginning {
        std::string machine, continues;
    };
    std::vector<Beginning> m_beginnings;
    std::set<std::string> m_photos; ///< hashes that facts tell
    std::string m_atUtc;            ///< of the fact before
    std::string m_publicKey;        ///< of the machine whose chain is walked; empty: unknown
    std::int64_t m_seq = 0;
    std::string m_hash;
};

} // namespace core
