#include "tests/core/disk/disk_figures.h"

#include "core/store/database.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace support {
namespace fs = std::filesystem;

DiskFigures& figures() {
    static DiskFigures all;
    return all;
}

bool isEverythingTried() {
    static const bool is = std::getenv("THOLEPIN_EVERY_CALL") != nullptr;
    return is;
}

int nextToTry(int number) {
    if (isEverythingTried()) return number < 200 ? number + 1 : number + number / 50;
    return number < 2 ? number + 1 : number * 8;
}

std::vector<fs::path> clubsIn(const fs::path& folder) {
    std::vector<fs::path> clubs;
    for (const std::string& name : namesIn(folder)) {
        const bool isBackup = name.find(".before-") != std::string::npos;
        const bool isBeside = name.ends_with("-wal") || name.ends_with("-journal") ||
                              name.ends_with("-shm") ||
                              name.find(".tholepin-unfinished") != std::string::npos;
        if (!isBeside && (isBackup || name.ends_with(".tholepin"))) clubs.push_back(folder / name);
    }
    return clubs;
}

Hashes hashesOf(const fs::path& file) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    core::Statement query = database.prepare("SELECT hash FROM fact ORDER BY at_utc, machine, seq");
    Hashes hashes;
    while (query.step())
        hashes.push_back(query.text(0));
    return hashes;
}

bool holdsAll(const Hashes& whole, const Hashes& part) {
    auto next = part.begin();
    for (const std::string& each : whole)
        if (next != part.end() && each == *next) ++next;
    return next == part.end();
}

std::vector<std::string> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.is_regular_file()) names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

std::string contentOf(const fs::path& file) {
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

void copyFolder(const fs::path& from, const fs::path& to) {
    fs::remove_all(to);
    fs::create_directories(to);
    for (const std::string& name : namesIn(from))
        if (!name.ends_with("-shm")) fs::copy_file(from / name, to / name);
}

} // namespace support
