#pragma once

#include <cstdint>

namespace core {

class Database;

/// While it lives, what these databases do is broken off (StoreFailure) as soon as another connection of this
/// program waits for a lock on the first one's file. A write transaction is then rolled back by SQLite, so
/// what is written within it is written whole or not at all ("Set The Progress Callback", sqlite3_interrupt).
/// Between two statements of its owner nothing is looked at: it is for work of many short ones.
class GivingWay {
public:
    /// `gaveWay` becomes true when something was broken off.
    GivingWay(Database& own, Database& other, bool& gaveWay);
    ~GivingWay();
    GivingWay(const GivingWay&) = delete;
    GivingWay& operator=(const GivingWay&) = delete;

private:
    static int isWaitedFor(void* self);

    Database& m_own;
    Database& m_other;
    bool& m_gaveWay;
    std::uint64_t m_before;
};

} // namespace core
