#include "tests/core/disk/disk_acts.h"

#include "core/club/club_checks.h"
#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/register/new_kit.h"
#include "core/store/club_file.h"
#include "tests/core/club/small_club.h"
#include "tests/core/disk/disk_figures.h"

#include <algorithm>

namespace support {
namespace {

namespace fs = std::filesystem;
using core::Club;

template <class T>
Told told(const core::Result<T>& result) {
    return result ? Told() : Told(result.error());
}

/// The launch check of Petrel, which is open; none: the error.
core::Result<std::string> check(Club& club) {
    const auto open = club.checks().unfinishedOf("Petrel", core::Phase::Launch);
    if (!open) return open.error();
    return open->check;
}

template <class Act>
Told inCheck(Club& club, Act act) {
    const auto id = check(club);
    return id ? told(act(*id)) : Told(id.error());
}

Told scan(Club& club, const fs::path&) {
    return inCheck(club, [&](const std::string& id) {
        return club.checks().scan(id, core::ScannedText::typed("K6JYGNZ376"), core::SeenBy::Scanner, today());
    });
}

Told import(Club& club, const fs::path& folder) {
    return told(club.register_().importCsv(folder / "more", today().today, false));
}

Told receive(Club& club, const fs::path&) {
    core::NewKit kit;
    kit.kitType = "knife";
    kit.boat = "Tern";
    kit.count = 3;
    return told(club.kit().registerKit(kit, "Bram Oke", today()));
}

Told openOnly(const fs::path& file, Club::Access access) {
    const auto club = Club::open(file, access);
    return club ? Told() : Told(club.error());
}

Told migrateFile(const fs::path& folder) {
    try {
        core::clubFile::open(folder / "club.tholepin", false, stepsAndOne());
        return {};
    } catch (const core::StoreFailure& failure) {
        return failure.error;
    }
}

void tamper(const fs::path& file) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    database.script("UPDATE item SET kit_type = 'radio' WHERE kit_type = 'knife'");
}

} // namespace

core::Moment today() {
    const auto when = *core::Instant::parse("2026-03-14T06:40:00Z");
    return {when, *core::CalendarDay::parse("2026-03-14")};
}

const std::vector<core::Migration>& stepsAndOne() {
    static const std::vector<core::Migration> steps = [] {
        std::vector<core::Migration> all(core::migrations().begin(), core::migrations().end());
        all.push_back(
            {all.back().version + 1,
             "ALTER TABLE item ADD COLUMN colour TEXT NOT NULL DEFAULT ''; UPDATE item SET colour = "
             "'orange';"});
        return all;
    }();
    return steps;
}

const std::vector<ClubAct>& clubActs() {
    static const std::vector<ClubAct> acts{
        {"open check",
         [](Club& club, auto&) { return told(club.checks().open("Tern", core::Phase::Launch, today())); }},
        {"scan", scan},
        {"point",
         [](Club& club, auto&) {
             return inCheck(club, [&](const std::string& id) {
                 return club.checks().recordPoint(id, "bow chamber", 20, today());
             });
         }},
        {"undo",
         [](Club& club, auto&) {
             return inCheck(
                 club, [&](const std::string& id) { return club.checks().undo(id, "taken back", today()); });
         }},
        {"receive", receive},
        {"import", import},
        {"log entry",
         [](Club& club, auto&) {
             return told(club.log().add("Petrel", "valve hisses", core::Severity::Stop, "Bram Oke", today()));
         }},
        {"write off",
         [](Club& club, auto&) {
             return told(club.kit().writeOff("K0D6EKB9KR", "lost", "Bram Oke", today()));
         }},
        {"sign",
         [](Club& club, auto&) {
             return inCheck(club, [&](const std::string& id) {
                 return club.checks().sign(id, "Odalys Finch", "a call at sea", today());
             });
         }},
    };
    return acts;
}

const ClubAct& clubAct(std::string_view name) {
    return *std::find_if(clubActs().begin(), clubActs().end(),
                         [name](const ClubAct& act) { return act.name == name; });
}

const std::vector<FileAct>& fileActs() {
    static const std::vector<FileAct> acts{
        {"create",
         [](const fs::path& folder) { return told(Club::create(folder / "new.tholepin", "New club")); },
         true},
        {"backup",
         [](const fs::path& folder) {
             return told(core::copyClub(folder / "club.tholepin", folder / "second.tholepin", true));
         },
         true},
        {"restore",
         [](const fs::path& folder) {
             return told(core::copyClub(folder / "backup.tholepin", folder / "restored.tholepin", false));
         },
         true},
        {"migrate", migrateFile, true},
        {"open",
         [](const fs::path& folder) { return openOnly(folder / "club.tholepin", Club::Access::ReadWrite); },
         false},
        {"open to read",
         [](const fs::path& folder) { return openOnly(folder / "club.tholepin", Club::Access::ReadOnly); },
         false},
        {"open a backup",
         [](const fs::path& folder) { return openOnly(folder / "backup.tholepin", Club::Access::ReadWrite); },
         false},
    };
    return acts;
}

DiskFolder::DiskFolder() {
    SmallClub small;
    const auto id = small.open();
    for (const char* code : {"KGFB6J8WF9", "K80NSC1FX4"})
        small.scan(id, code);
    small.close();
    fs::copy_file(small.file(), m_folder / "club.tholepin");
    core::copyClub(m_folder / "club.tholepin", m_folder / "backup.tholepin", true).value();
    core::copyClub(m_folder / "club.tholepin", m_folder / "tampered", true).value();
    tamper(m_folder / "tampered");
    fs::create_directories(m_folder / "more");
    writeFile(m_folder / "more" / "places.csv", "place\nshed\nloft\nvan\n");
    for (const std::string& name : namesIn(m_folder.path())) // of those who looked
        if (name.ends_with("-wal") || name.ends_with("-shm")) fs::remove(m_folder / name);
    m_keys.emplace();
}

/// With the keys as they were: a program that finds newer ones than the file goes on as another machine.
void DiskFolder::copyTo(const fs::path& to) const {
    m_keys->putBack();
    copyFolder(m_folder.path(), to);
    copyFolder(m_folder / "more", to / "more");
}

std::string DiskFolder::contentOfBackup() const {
    return contentOf(m_folder / "backup.tholepin");
}

} // namespace support
