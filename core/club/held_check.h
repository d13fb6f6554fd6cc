#pragma once

#include "core/base/calendar_day.h"
#include "core/check/boat_check.h"
#include "core/store/check_store.h"
#include "core/store/database.h"

#include <cstdint>
#include <optional>
#include <string>

namespace core {

/// What the check that was asked for last is judged on, kept in memory as long as nothing is written, so that
/// a scan reads no more than what was seen.
class HeldCheck {
public:
    HeldCheck(Database& database, const CheckStore& store)
        : m_database(database)
        , m_store(store) {}

    /// From memory, or read when something was written since. Throws StoreFailure.
    const BoatCheckInput& inputOf(const CheckRun& run, CalendarDay today);

    /// Whether that check is in memory as it stands in the file.
    bool isCurrent(const std::string& check) const;
    /// Keeps up with a sighting that was just recorded, before which `isCurrent` held; within the write that
    /// records it, which forgets it all when it fails. Does not throw: whatever fails only makes the next
    /// answer read everything.
    void add(const CheckRun& run, const std::string& code);
    /// The same with a sighting that was taken back.
    void drop(const CheckRun& run, const std::string& code);
    void forget() { m_held.reset(); }

private:
    struct Held {
        std::string check;
        std::int64_t changeMark; ///< of the file when it was read
        BoatCheckInput input;
    };

    Database& m_database;
    const CheckStore& m_store;
    std::optional<Held> m_held;
};

} // namespace core
