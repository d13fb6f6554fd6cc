#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/pin_clock.h"
#include "core/club/right.h"
#include "core/store/pin_tables.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core {

class Database;
class RegisterStore;

/// Who has unlocked a gear officer's acts in an opened club, and until when.
class PinLock {
public:
    static constexpr std::int64_t unlockedFor = 10 * 60 * 1000; ///< milliseconds after the last proven act

    PinLock(Database& database, const RegisterStore& store)
        : m_database(database)
        , m_store(store) {}

    const PinClock* clock = &clockOfComputer(); ///< never null

    /// Gear officers who are here and have a PIN, by name. None: everything is open.
    std::vector<std::string> officers() const;
    std::vector<pinTables::PinNow> pinsOfOfficers() const; ///< theirs
    /// By whose PIN an act of that right is done now; empty: by nobody's, and it needs none. PinNeeded.
    Result<std::string> proverOf(Right right) const;
    /// A proven act was done: the ten minutes begin anew.
    void renew(Right right);

    void unlock(const pinTables::PinNow& pin);
    void lock() { m_unlock.reset(); }
    struct Standing {
        std::string person;
        std::int64_t millisLeft = 0;
    };
    std::optional<Standing> standing() const; ///< empty: locked, or nothing needs unlocking

    /// Milliseconds to wait before another PIN of that person may be tried on this computer; 0: none.
    std::int64_t waitFor(const pinTables::WrongPins& wrong) const;
    /// As it is told since this start of the computer: from then on nobody's clock counts.
    pinTables::WrongPins sinceThisBoot(const pinTables::WrongPins& wrong) const;
    /// A PIN of that person is about to be looked at: what to keep before that, so that a program that is
    /// killed meanwhile has had its try.
    struct Try {
        pinTables::WrongPins before, toKeep;
        Outcome may; ///< PinWait
    };
    Try tryOf(const std::string& person, const pinTables::WrongPins& kept) const;

private:
    pinTables::WrongPins oneMore(const pinTables::WrongPins& wrong) const; ///< given now
    struct Unlock {
        std::string fact; ///< that set the PIN
        std::int64_t until = 0;
    };

    Database& m_database;
    const RegisterStore& m_store;
    std::optional<Unlock> m_unlock;
};

} // namespace core
