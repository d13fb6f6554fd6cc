#pragma once

#include "core/store/other_record.h"

#include <chrono>
#include <map>
#include <string>

namespace core {

/// Writes what was looked through in another record, and what follows from it, in the caller's write
/// transactions: all in one, or a part in each, for nobody else can write to the file meanwhile.
class TakingIn {
public:
    /// Both live as long.
    TakingIn(Database& own, const OtherFacts& news);

    /// It cannot be parted: something was renamed, or cells come to facts that stand here.
    bool isOnePiece() const;
    /// Needs isStillNew.
    void all();
    /// For about that long; what is there then may stay so, for no fact comes before one that it knows of.
    /// What another program took in meanwhile stays. False: that was the last part. RecordForked: what it
    /// took in of a chain is another one.
    bool part(std::chrono::milliseconds longest);

private:
    bool putNext();
    bool isThere(const Fact& fact) const;
    void putBeside(const Fact& fact);
    void putPrivateCells(const Fact& fact);

    Database& m_own;
    const OtherFacts& m_news;
    FactsByStamp m_facts;
    bool m_isMadeAnew;                           ///< the tables, at the end
    std::map<std::string, std::int64_t> m_heads; ///< of chains, as they stood here when this part began
};

} // namespace core
