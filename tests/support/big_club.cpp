#include "tests/support/big_club.h"

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "core/tag/tag_code.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <fmt/format.h>
#include <fstream>
#include <memory>
#include <sqlite3.h>
#include <stdexcept>

namespace support {
namespace {

constexpr int boats = 40, kitOfBoat = 50, items = 8000, kitTypes = 25;

core::Moment now() {
    return {*core::Instant::parse("2026-03-14T06:40:00Z"), *core::CalendarDay::parse("2026-03-14")};
}

std::string mint(core::TagClass tagClass, std::uint64_t& seed) {
    const auto next = [&] { return seed = seed * 6364136223846793005u + 1442695040888963407u; };
    return core::TagCode::mint(tagClass, next).text();
}

std::vector<std::string> writeRegister(const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    std::ofstream places(folder / "places.csv"), types(folder / "kit_types.csv"),
        rules(folder / "life_rules.csv"), lines(folder / "manifest_lines.csv"),
        boatFile(folder / "boats.csv"), people(folder / "people.csv"), itemFile(folder / "items.csv");
    places << "place\nstore\n";
    types << "kit_type\n";
    rules << "kit_type,rule,kind,n\n";
    lines << "boat_class,kit_type,quantity\n";
    for (int type = 0; type < kitTypes; ++type) {
        types << fmt::format("type {}\n", type);
        rules << fmt::format("type {0},yearly look,inspect_every,12\ntype {0},retire,from_made,120\n", type);
        lines << fmt::format("inflatable,type {},{}\n", type, kitOfBoat / kitTypes);
    }
    boatFile << "boat,boat_class\n";
    for (int boat = 0; boat < boats; ++boat)
        boatFile << fmt::format("boat {},inflatable\n", boat);
    people << "person\nWren Sadler\nIda Holm\n";
    itemFile << "code,kit_type,boat,place,made\n";
    std::vector<std::string> codes;
    std::uint64_t seed = 7;
    for (int item = 0; item < items; ++item) {
        codes.push_back(mint(core::TagClass::Kit, seed));
        const bool isAboard = item < boats * kitOfBoat;
        itemFile << fmt::format("{},type {},{},{},2022-05\n", codes.back(), item % kitTypes,
                                isAboard ? fmt::format("boat {}", item / kitOfBoat) : "",
                                isAboard ? "" : "store");
    }
    return codes;
}

/// The club file as what it is beneath: an SQLite database.
class BulkWriter {
public:
    explicit BulkWriter(const std::filesystem::path& file) {
        sqlite3* opened = nullptr;
        const int code = sqlite3_open(file.c_str(), &opened);
        m_database.reset(opened);
        if (code != SQLITE_OK) throw std::runtime_error("cannot open " + file.string());
    }

    void run(const std::string& sql) {
        char* message = nullptr;
        if (sqlite3_exec(m_database.get(), sql.c_str(), nullptr, nullptr, &message) == SQLITE_OK) return;
        const std::string what = message ? message : "no reason given";
        sqlite3_free(message);
        throw std::runtime_error(what + " in: " + sql.substr(0, 120));
    }

private:
    std::unique_ptr<sqlite3, int (*)(sqlite3*)> m_database{nullptr, sqlite3_close};
};

/// An answer with nothing in it: what an old check found is not looked at by the window.
constexpr const char* emptyAnswer = R"({"outcome":"complete","today":"2025-01-01"})";

void writeHistory(BulkWriter& writer, const std::vector<std::string>& codes, std::int64_t sightings) {
    writer.run("PRAGMA synchronous = OFF; PRAGMA cache_size = -200000; BEGIN");
    writer.run("CREATE TEMP TABLE kit (boat INTEGER, pos INTEGER, code TEXT, PRIMARY KEY (boat, pos))");
    for (int item = 0; item < boats * kitOfBoat; ++item)
        writer.run(fmt::format("INSERT INTO kit VALUES ({}, {}, '{}')", item / kitOfBoat, item % kitOfBoat,
                               codes[static_cast<std::size_t>(item)]));
    // Check number c is of boat c % 40, launches and returns in turn; a quarter of an hour lies between two.
    // Whole rounds of launch and return, so that every boat is in at the end.
    constexpr std::int64_t round = 2 * boats;
    const std::int64_t checks = (sightings / kitOfBoat + round - 1) / round * round;
    writer.run(fmt::format(
        "CREATE TEMP TABLE run AS WITH RECURSIVE n(c) AS (SELECT 0 UNION ALL SELECT c + 1 FROM n WHERE c < "
        "{}) SELECT c, 'check-' || c AS id, c % {} AS boat, CASE c / {} % 2 WHEN 0 THEN 'launch' ELSE "
        "'return' END AS phase, strftime('%Y-%m-%dT%H:%M:00.000Z', 1740000000 + c * 900, 'unixepoch') AS at "
        "FROM n",
        checks - 1, boats, boats));
    writer.run("INSERT INTO check_run SELECT id, at || ' elder ' || printf('%012d', c * 60), 'boat ' || "
               "boat, phase, at FROM run");
    writer.run(fmt::format("INSERT INTO sign_off SELECT id, at || ' elder ' || printf('%012d', c * 60 + 59), "
                           "'boat ' || boat, phase, 'Wren Sadler', at, 'complete', '', '{}' FROM run",
                           emptyAnswer));
    writer.run("DROP INDEX sighting_of_check; DROP INDEX sighting_of_code");
    writer.run(
        "INSERT INTO sighting (id, stamp, check_id, code, at, seen_by) SELECT 's' || c || '-' || pos, "
        "at || ' elder ' || printf('%012d', c * 60 + 1 + pos), id, code, at, 'camera' FROM run JOIN kit "
        "USING (boat)");
    writer.run("CREATE INDEX sighting_of_check ON sighting (check_id, stamp);"
               "CREATE INDEX sighting_of_code ON sighting (code, stamp)");
    writer.run("INSERT INTO fact SELECT 's' || c || '-' || pos, 'elder', c * 60 + 1 + pos, at, 'Wren "
               "Sadler', 'tag-seen', json_object('at', at, 'check', id, 'code', code, 'seen_by', 'camera'), "
               "hex(c), hex(c + pos) FROM run JOIN kit USING (boat)");
    writer.run("COMMIT");
}

} // namespace

BigClub makeBigClub(const std::filesystem::path& file, std::int64_t sightings) {
    const ScratchFolder folder;
    const auto codes = writeRegister(folder / "csv");
    {
        auto club = core::Club::create(file, "Big club");
        if (!club) throw std::runtime_error(described(club.error()));
        const auto plan = club->register_().importCsv(folder / "csv", now().today, false);
        if (!plan || !plan->rejected.empty()) throw std::runtime_error("the register was not taken");
    }
    BulkWriter writer(file);
    writeHistory(writer, codes, sightings);
    constexpr int boat = 7;
    const auto first = codes.begin() + boat * kitOfBoat;
    return {fmt::format("boat {}", boat), {first, first + kitOfBoat}, {"Wren Sadler", "Ida Holm"}};
}

} // namespace support
