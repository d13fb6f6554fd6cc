#pragma once

#include "app/gui/club/club_thread.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/office/gear_pages.h"
#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/widgets/gear_page.h"
#include "app/gui/window_pictures.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "tests/support/wait_for.h"

#include <QApplication>
#include <QDir>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

// What the programs that make docs/screens have in common.

namespace support {

inline core::CalendarDay screensDay() {
    return *core::CalendarDay::from(2026, 3, 14);
}

inline core::Moment at(const std::string& instant) {
    return {*core::Instant::parse(instant), screensDay()};
}

inline const QStringList allThemes{"light", "sun", "dark"};
inline const QList<QSize> bothSizes{{1280, 800}, {1920, 1080}};

/// The program: settings, club file and look of its own, and the folder that its pictures go to.
class ScreensProgram {
public:
    ScreensProgram(int& argc, char** argv)
        : m_application(withoutDisplay(argc), argv) {
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, m_scratch.path());
        QApplication::setOrganizationName("tholepin-screens");
        app::dress(m_application, app::paletteOf("light"));
        if (argc >= 2 && argc <= 3 && QDir().mkpath(argv[1])) m_folder = QString::fromLocal8Bit(argv[1]);
        if (argc == 3) m_given = argv[2];
        if (m_folder.isEmpty()) QTextStream(stderr) << "usage: " << argv[0] << " FOLDER [CLUB]\n";
    }

    bool hasFolder() const { return !m_folder.isEmpty(); }
    const QString& folder() const { return m_folder; }
    QString scratch() const { return m_scratch.path(); }
    std::filesystem::path clubFile() const { return m_scratch.filePath("club.tholepin").toStdString(); }

    /// The club that was given, in `clubFile`; else the demo club, which is new and has no history.
    core::Result<core::Club> makeClub() const {
        if (!m_given.empty()) {
            std::filesystem::copy_file(m_given, clubFile());
            app::SetUpNotes(clubFile()).putAway(true); // as a club does in its first season
            return core::Club::open(clubFile());
        }
        auto club = core::Club::create(clubFile(), "Quillmere Lake Rescue");
        if (!club) return club;
        if (const auto plan = club->register_().importCsv(DEMO_CLUB_FOLDER, screensDay(), false); !plan)
            return plan.error();
        return club;
    }

private:
    static int& withoutDisplay(int& argc) {
        if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
        return argc;
    }

    QTemporaryDir m_scratch;
    QApplication m_application;
    QString m_folder;
    std::filesystem::path m_given;
};

/// What a camera sees of a tag whose print is that good, 4 (as new) to 0.
inline core::ScannedText tagOfPrint(const std::string& code, double print) {
    core::ScannedText scanned = core::ScannedText::typed(code);
    scanned.print = print;
    return scanned;
}

/// Opens a check of that boat and shows all of its kit, the first two with tags that wear out. Its id; empty
/// when something was refused.
inline std::string checkWithAllKit(core::Club& club, const std::string& boat, core::Phase phase,
                                   core::Moment moment, const std::vector<std::string>& people) {
    const auto check = club.checks().open(boat, phase, moment);
    if (!check || !club.checks().giveNames(check->check, people, moment)) return {};
    const auto kit = club.kit().labelsOfBoat(boat);
    double print = 0.6;
    for (const core::TagLabel& tag : *kit) {
        if (!club.checks().scan(check->check, tagOfPrint(tag.code, print), core::SeenBy::Camera, moment))
            return {};
        print = std::min(print + 0.9, 3.6);
    }
    return check->check;
}

/// The gear officer's pages on the program's club.
class ScreensOffice {
public:
    explicit ScreensOffice(const ScreensProgram& program)
        : m_pictures(m_office, program.folder()) {
        m_club.open(program.clubFile(),
                    [this](const core::Outcome& opened) { m_isOpen = static_cast<bool>(opened); });
        waitFor([&] { return m_isOpen; });
        app::addGearPages(
            m_office,
            {m_club, [] { return at("2026-03-14T06:40:00Z"); }, m_sounds, {}, [] { return false; }});
        m_office.resize(bothSizes.front());
    }

    bool isOpen() const { return m_isOpen; }
    app::GearOffice& office() { return m_office; }

    /// Until everything asked of the club file is done and shown, also what its answers ask anew.
    void settle() {
        for (int round = 0; round < 4; ++round) {
            bool isDone = false;
            m_club.ask(
                &m_office, [](core::Club&) { return true; }, [&](bool) { isDone = true; });
            waitFor([&] { return isDone; });
        }
    }
    void show(const char* page) {
        m_office.showPage(page);
        m_office.show();
        settle();
    }
    template <class Widget>
    Widget* find(const char* name) {
        return m_office.page(m_office.currentPage())->findChild<Widget*>(name);
    }
    /// In every theme and size.
    void take(const QString& name) {
        settle();
        m_isWritten &= m_pictures.take(name, allThemes, bothSizes);
    }
    bool isWritten() const { return m_isWritten; }

private:
    app::ClubThread m_club;
    app::Sounds m_sounds;
    app::GearOffice m_office;
    app::WindowPictures m_pictures;
    bool m_isOpen = false;
    bool m_isWritten = true;
};

} // namespace support
