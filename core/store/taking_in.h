#pragma once

#include "core/store/other_record.h"

namespace core {

/// Writes what was looked through in another record, and what follows from it, in the caller's write
/// transaction. Needs isStillNew.
class TakingIn {
public:
    /// Both live as long.
    TakingIn(Database& own, const OtherFacts& news);

    void all();

private:
    void put(const Fact& fact);
    void putBeside(const Fact& fact);
    void putPrivateCells(const Fact& fact);

    Database& m_own;
    const OtherFacts& m_news;
    bool m_isMadeAnew; ///< the tables, at the end
};

} // namespace core
