#include "tests/app/cli/small_club.h"

#include "tests/support/kept_state.h"

#include <sqlite3.h>

#include <algorithm>
#include <fstream>
#include <memory>
#include <optional>
#include <stdexcept>

namespace small_club {

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
        ask("SELECT *, 0 FROM \"" + name + "\" ORDER BY 1, 2", text); // one table has a single column
    }
    if (text.find("== fact") == std::string::npos) throw std::runtime_error("no facts in " + file.string());
    return text;
}

void expectOneErrorLine(const Ran& ran) {
    EXPECT_THAT(ran.err, testing::StartsWith("tholepinctl: "));
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

namespace {

/// The club of all tests of a process, as it was created, and the key that it was signed with.
class CreatedClub {
public:
    CreatedClub() {
        writeFiles(m_folder / "csv", csvFiles());
        const Ran made = ctl({"create", m_folder / "club.tholepin", "--club", "Small Club", "--from",
                              m_folder / "csv", "--today", "2026-01-10"});
        if (made.exit != 0) throw std::runtime_error("no club file: " + made.err);
        m_keys.emplace();
    }
    /// There it is as if nothing had been done with it yet.
    void copyTo(const std::filesystem::path& file) const {
        std::filesystem::copy_file(m_folder / "club.tholepin", file);
        m_keys->putBack();
    }

private:
    support::ScratchFolder m_folder;
    std::optional<support::KeptState> m_keys;
};

} // namespace

SmallClub::SmallClub()
    : m_file(m_folder / "club.tholepin") {
    static const CreatedClub created;
    writeFiles(m_folder / "csv", csvFiles());
    created.copyTo(m_file);
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
