#include "tests/app/cli/small_club.h"

#include <sqlite3.h>

#include <algorithm>
#include <fstream>
#include <memory>
#include <stdexcept>

namespace small_club {
namespace {

const char* points = "boat_class,phase,point,kind,unit,low,high,required\n"
                     "inflatable,launch,hull,look,,,,yes\n"
                     "inflatable,launch,bow chamber,measure,kPa,18,22,yes\n"
                     "inflatable,launch,engine run,timed,,5,300,no\n";

std::string items() {
    return "code,kit_type,size,boat,place,state,since,why,first_use,registered,gtin,serial\n" + knife +
           ",knife,,Teal,,,,,,2024-01-01,,\n" + paddle1 + ",paddle,,Teal,,,,,,2024-01-01,,\n" + paddle2 +
           ",paddle,,Teal,,,,,,2024-01-01,,\n" + towLine + ",tow line,,Teal,,,,,2025-06-01,2024-01-01,,\n" +
           jacketM + ",life jacket,M,Teal,,,,,,2024-01-01,,\n" + jacketL +
           ",life jacket,L,Teal,,,,,,2024-01-01,,\n" + radio +
           ",radio,,Teal,,,,,,2024-01-01,02000000100012,R-7\n" + cootKnife +
           ",knife,,Coot,,missing,2026-03-08,lost,,2024-01-01,,\n" + writtenOff +
           ",paddle,,,Shed,written off,2026-01-05,worn,,2024-01-01,,\n";
}

} // namespace

std::vector<std::string> wholeKit() {
    return {knife, paddle1, paddle2, towLine, jacketM, jacketL, radio};
}

std::string lines(const std::vector<std::string>& codes) {
    std::string text;
    for (const std::string& code : codes)
        text += code + '\n';
    return text;
}

std::vector<std::string> without(std::vector<std::string> codes, const std::string& code) {
    codes.erase(std::remove(codes.begin(), codes.end(), code), codes.end());
    return codes;
}

std::map<std::string, std::string> csvFiles() {
    return {{"places.csv", "place\nShed\n"},
            {"kit_types.csv",
             "kit_type,worn\nknife,no\npaddle,no\ntow line,no\nlife jacket,yes\nradio,no\nflare,no\n"},
            {"sizes.csv", "kit_type,size,mass_low_kg,mass_high_kg,source\n"
                          "life jacket,M,50,70,example\nlife jacket,L,70,90,example\n"},
            {"life_rules.csv",
             "kit_type,rule,kind,n,source\ntow line,yearly look,inspect_every,12,club order 3\n"},
            {"boats.csv", "boat,boat_class,tag,place\nTeal,inflatable," + tealTag +
                              ",Shed\nCoot,inflatable," + cootTag + ",Shed\n"},
            {"manifest_lines.csv",
             "boat_class,kit_type,quantity,required\ninflatable,life jacket,2,yes\n"
             "inflatable,paddle,2,yes\ninflatable,knife,1,yes\ninflatable,tow line,1,yes\n"
             "inflatable,radio,1,no\n"},
            {"points.csv", points},
            {"people.csv",
             "person,tag,role,mass_kg\nAda Thorne," + adaTag + ",driver,62\nBo Lind," + boTag + ",crew,80\n"},
            {"items.csv", items()}};
}

void writeFiles(const std::filesystem::path& folder, const std::map<std::string, std::string>& files) {
    std::filesystem::create_directories(folder);
    for (const auto& [name, text] : files)
        std::ofstream(folder / name, std::ios::binary) << text;
}

std::string textOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::string contentOf(const std::filesystem::path& file) {
    sqlite3* opened = nullptr;
    const int failed = sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READONLY, nullptr);
    const std::unique_ptr<sqlite3, int (*)(sqlite3*)> database(opened, sqlite3_close);
    if (failed) throw std::runtime_error("cannot look into " + file.string());
    std::string text;
    const auto gather = [](void* into, int count, char** cells, char**) {
        for (int i = 0; i < count; ++i)
            *static_cast<std::string*>(into) += std::string(cells[i] ? cells[i] : "∅") + '|';
        *static_cast<std::string*>(into) += '\n';
        return 0;
    };
    const auto ask = [&](const std::string& sql, std::string& into) {
        if (sqlite3_exec(database.get(), sql.c_str(), gather, &into, nullptr) != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(database.get()));
    };
    std::string tables;
    ask("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
        tables);
    for (std::size_t from = 0, end; (end = tables.find("|\n", from)) != std::string::npos; from = end + 2) {
        const std::string name = tables.substr(from, end - from);
        text += "== " + name + '\n';
        ask("SELECT * FROM \"" + name + "\" ORDER BY 1, 2", text);
    }
    if (text.find("== fact") == std::string::npos) throw std::runtime_error("no facts in " + file.string());
    return text;
}

void expectOneErrorLine(const Ran& ran) {
    EXPECT_THAT(ran.err, testing::StartsWith("tholepinctl: "));
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

SmallClub::SmallClub()
    : m_file(m_folder / "club.tholepin") {
    writeFiles(m_folder / "csv", csvFiles());
    const Ran made =
        ctl({"create", m_file, "--club", "Small Club", "--from", m_folder / "csv", "--today", "2026-01-10"});
    if (made.exit != 0) throw std::runtime_error("no club file: " + made.err);
}

std::string SmallClub::write(const std::string& name, const std::string& text) const {
    std::ofstream(m_folder / name, std::ios::binary) << text;
    return m_folder / name;
}

Ran SmallClub::run(std::vector<std::string> words, const std::string& input) const {
    words.insert(words.begin() + 1, m_file);
    return ctl(words, input);
}

Ran SmallClub::check(const std::vector<std::string>& codes, std::vector<std::string> more,
                     const std::string& day) const {
    std::vector<std::string> words{
        "check",      "--boat",
        "Teal",       "--phase",
        "launch",     "--driver",
        "Ada Thorne", "--crew",
        "Bo Lind",    "--json",
        "--today",    day,
        "--codes",    "-",
        "--points",   write("points.csv", "point,value\nhull,done\nbow chamber,20\nengine run,60\n")};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, lines(codes));
}

} // namespace small_club
