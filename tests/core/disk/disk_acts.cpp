#include "tests/core/disk/disk_acts.h"

#include "core/answers/item_record.h"
#include "core/answers/set_up.h"
#include "core/club/club_checks.h"
#include "core/club/club_copy.h"
#include "core/club/club_events.h"
#include "core/club/club_exchange.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"
#include "core/club/club_register.h"
#include "core/register/new_kit.h"
#include "core/store/club_file.h"

#include <algorithm>

namespace support {
namespace {

namespace fs = std::filesystem;
using core::Club;

const char* const towLine = "K79TE08WXH";

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

Told fitOut(Club& club, const fs::path&) {
    const auto boat = club.kit().fitOutOf("Tern");
    if (!boat) return boat.error();
    std::vector<core::NewKit> kinds;
    for (const core::FitOutLine& line : boat->lines) {
        core::NewKit kit;
        kit.kitType = line.line.kitType;
        kit.boat = boat->boat;
        kit.count = line.lacking();
        if (kit.count > 0) kinds.push_back(kit);
    }
    return told(club.kit().registerAll(kinds, "Bram Oke", today()));
}

/// Larger than some pages of the file.
Told photo(Club& club, const fs::path&) {
    const std::string jpeg = "\xFF\xD8\xFF" + std::string(20'000, 'p') + "\xFF\xD9";
    return told(club.photos().addToItem("K0D6EKB9KR", jpeg, "Bram Oke", today()));
}

Told withdraw(Club& club, const fs::path&) {
    return told(club.kit().withdrawRecord(towLine, {.rule = "yearly look", .day = "2026-03-14"},
                                          "typed twice", "Odalys Finch", today()));
}

Told move(Club& club, const fs::path&) {
    return told(club.register_().write(
        {core::SheetId::Items, {{{{"code", towLine}}, {{"boat", "Tern"}}, {}}}}, "Bram Oke", today()));
}

Told merge(Club& club, const fs::path& folder) {
    return told(club.exchange().merge({folder / "van"}, core::ClubExchange::Forks::Refused));
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
        {"merge", merge},
        {"photo", photo, false},
        {"fit out", fitOut, false},
        {"withdraw record", withdraw, false},
        {"move", move, false},
        {"happened",
         [](Club& club, auto&) {
             return told(club.kit().happened(towLine, "long tow", today().today, "Bram Oke", today()));
         },
         false},
        {"event",
         [](Club& club, auto&) {
             return told(club.events().begin("Winter patrol", {}, "Bram Oke", today()));
         },
         false},
        {"event ends", [](Club& club, auto&) { return told(club.events().end("Bram Oke", today())); }, false},
        {"end",
         [](Club& club, auto&) {
             return told(club.register_().end(core::Named::Person, "Bram Oke", today().today, {}, today()));
         },
         false},
        {"rename",
         [](Club& club, auto&) {
             return told(club.register_().rename(core::Named::Boat, "Tern", "Skua", {}, "Bram Oke"));
         },
         false},
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

} // namespace support
