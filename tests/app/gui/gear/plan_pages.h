#pragma once

#include "app/gui/club/club_thread.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/widgets/gear_page.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/wait_for.h"

#include <gtest/gtest.h>

namespace support {

/// The demo club in a file of its own, with a page over it. What came of something is read from the file by a
/// second reader.
class PlanPages : public testing::Test {
protected:
    void SetUp() override {
        auto club = core::Club::create(file(), "Quillmere Lake Rescue");
        ASSERT_TRUE(club);
        const auto plan = club->register_().importCsv(DEMO_CLUB_FOLDER, today(), false);
        ASSERT_TRUE(plan);
        ASSERT_TRUE(plan->rejected.empty());
    }

    static core::CalendarDay today() { return *core::CalendarDay::from(2026, 3, 14); }
    static core::Moment moment() { return {*core::Instant::parse("2026-03-14T06:40:00Z"), today()}; }
    std::filesystem::path file() const { return m_folder / "club.tholepin"; }
    std::filesystem::path inFolder(const char* name) const { return m_folder / name; }

    /// Opens the file and gives what a page works with; files to save are named `m_saveTo`.
    app::GearTools tools() {
        bool isOpen = false;
        m_thread.open(file(), [&](const core::Outcome& opened) { isOpen = static_cast<bool>(opened); });
        EXPECT_TRUE(waitFor([&] { return isOpen; }));
        app::Choosers choosers;
        choosers.saveFile = [this](QWidget*, const QString&) { return m_saveTo; };
        return {m_thread,
                [] { return moment(); },
                m_sounds,
                choosers,
                [] { return false; },
                [] { return QString("Joss Iveny"); },
                [this](const QString& code) { m_shownItem = code; }};
    }

    core::Club stored() const {
        auto club = core::Club::open(file(), core::Club::Access::ReadOnly);
        EXPECT_TRUE(club);
        return std::move(club).value();
    }

    QString m_saveTo;
    QString m_shownItem;

private:
    ScratchFolder m_folder;
    app::ClubThread m_thread;
    app::Sounds m_sounds;
};

} // namespace support
