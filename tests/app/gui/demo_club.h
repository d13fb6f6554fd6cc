#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

#include <QObject>

#include <filesystem>
#include <functional>
#include <utility>

namespace support {

/// The demo club in a file of its own, on a day of its own. What came of something is read from the file by a
/// second reader.
class DemoClub : public testing::Test {
protected:
    void SetUp() override {
        auto club = core::Club::create(file(), "Quillmere Lake Rescue");
        ASSERT_TRUE(club);
        const auto plan = club->register_().importCsv(DEMO_CLUB_FOLDER, today(), false);
        ASSERT_TRUE(plan);
        ASSERT_TRUE(plan->rejected.empty());
    }

    const ScratchFolder& folder() const { return m_folder; }
    std::filesystem::path file() const { return m_folder / "club.tholepin"; }
    static core::CalendarDay today() { return *core::CalendarDay::from(2026, 3, 14); }
    static core::Moment moment(const char* at = "2026-03-14T06:40:00Z") {
        return {*core::Instant::parse(at), today()};
    }

    core::Club stored(core::Club::Access access = core::Club::Access::ReadOnly) const {
        auto club = core::Club::open(file(), access);
        EXPECT_TRUE(club);
        return std::move(club).value();
    }

private:
    ScratchFolder m_folder;
};

/// Does something and waits for the signal that says it is shown.
template <class Sender, class Owner, class... Arguments>
void waitForSignal(Sender& sender, void (Owner::*signal)(Arguments...), const std::function<void()>& act) {
    bool isHeard = false;
    const auto heard = QObject::connect(&sender, signal, &sender, [&isHeard] { isHeard = true; });
    act();
    EXPECT_TRUE(waitFor([&] { return isHeard; }));
    QObject::disconnect(heard);
}

} // namespace support
