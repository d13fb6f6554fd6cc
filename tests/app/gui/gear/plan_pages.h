#pragma once

#include "app/gui/club/club_thread.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "tests/app/gui/demo_club.h"

#include <gtest/gtest.h>

namespace support {

/// A page over the demo club.
class PlanPages : public DemoClub {
protected:
    std::filesystem::path inFolder(const char* name) const { return folder() / name; }

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

    QString m_saveTo;
    QString m_shownItem;

private:
    app::ClubThread m_thread;
    app::Sounds m_sounds;
};

} // namespace support
