#include "tests/core/disk/disk_folder.h"

#include "core/answers/service_round.h"
#include "core/club/club_copy.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"
#include "core/store/database.h"
#include "tests/core/club/small_club.h"
#include "tests/core/disk/disk_figures.h"

namespace support {
namespace {

namespace fs = std::filesystem;

void tamper(const fs::path& file) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    database.script("UPDATE item SET kit_type = 'radio' WHERE kit_type = 'knife'");
}

/// Something to be withdrawn, an event that holds, a rule that waits for something.
void fill(SmallClub& small) {
    small.import("life_rules.csv", "kit_type,rule,kind,n,event,undated,source\n"
                                   "tow line,yearly look,inspect_every,12,,ignore,its maker\n"
                                   "tow line,after a long tow,after_event,,long tow,ignore,its maker\n");
    const core::ServiceOrder look{
        .rule = "yearly look", .day = small.now.today, .by = "Odalys Finch", .scans = {"K79TE08WXH"}};
    small.club.kit().recordService(look, small.now).value();
    small.club.events().begin("Lake festival", {}, "Bram Oke", small.now).value();
}

/// By a machine of its own, for the first file goes on with the key; all of it later than what is there.
void goOnElsewhere(const fs::path& file, core::Moment now) {
    core::Club van = core::Club::open(file).value();
    const std::string check = van.checks().open("Tern", core::Phase::Launch, now)->check;
    for (const auto& [code, type] : publishedKit)
        van.checks().scan(check, core::ScannedText::typed(code), core::SeenBy::Typed, now).value();
    van.log().add("Tern", "strap worn", core::Severity::Remark, "Odalys Finch", now).value();
    const core::CellTexts person{{"person", "Nia Marsh"}, {"mass_kg", "61"}};
    van.register_().write({core::SheetId::People, {{{}, person, {}}}}, {}, now).value();
}

} // namespace

DiskFolder::DiskFolder() {
    SmallClub small;
    const core::Moment now = small.now;
    fill(small);
    const auto id = small.open();
    for (const char* code : {"KGFB6J8WF9", "K80NSC1FX4"})
        small.scan(id, code);
    small.club.rest();
    core::copyClub(small.file(), m_folder / "van", false).value();
    small.scan(id, "KBDWAF2K6T");
    small.close();
    fs::copy_file(small.file(), m_folder / "club.tholepin");
    goOnElsewhere(m_folder / "van", now);
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

std::string DiskFolder::contentOf(const char* name) const {
    return support::contentOf(m_folder / name);
}

} // namespace support
