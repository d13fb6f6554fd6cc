#pragma once

#include "core/club/club_pins.h"
#include "core/club/pin_clock.h"
#include "core/record/pin.h"
#include "tests/core/store/full_club.h"

namespace support {

/// A computer's clocks that a test moves.
class MovedClock : public core::PinClock {
public:
    core::Instant now() const override { return core::Instant::fromMillis(wall); }
    std::int64_t awake() const override { return sinceBoot; }
    std::string boot() const override { return start; }
    void pass(std::int64_t seconds) {
        wall += seconds * 1000;
        sinceBoot += seconds * 1000;
    }
    void restart() {
        start += "'";
        sinceBoot = 0;
    }

    std::int64_t wall = core::Instant::parse("2026-03-14T06:40:00Z")->millis();
    std::int64_t sinceBoot = 5000;
    std::string start = "boot";
};

inline core::Pin pin(std::string text) {
    return std::move(core::Pin::from(std::move(text))).value();
}

/// A full club in which Bram Oke is a gear officer with the PIN 4711.
class PinClub : public FullClub {
public:
    PinClub() {
        import("people.csv", "person,role\nBram Oke,gear officer\n");
        givePin("Bram Oke");
        club.pins().goBy(clock);
    }
    /// 4711, without the time that sealing takes.
    void givePin(const std::string& person) {
        core::Database database(file(), core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger(database).append(core::PinSet{person, sealed4711}, {});
        transaction.commit();
    }
    std::int64_t facts() {
        return core::Database(file(), core::Database::Mode::ReadOnly).number("SELECT count(*) FROM fact");
    }
    core::Outcome unlock(const std::string& text = "4711") {
        return club.pins().unlock("Bram Oke", pin(text));
    }
    /// A gear officer's act.
    core::Outcome act() { return club.register_().rename(core::Named::Boat, "Tern", "Tern", {}, {}); }

    MovedClock clock;
};

} // namespace support
