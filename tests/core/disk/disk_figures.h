#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace support {

/// What the tests of this program did, printed at its end.
struct DiskFigures {
    int imagesCut = 0;       ///< laid out
    int filesOpened = 0;     ///< club files in them, each that differs from the others
    int lost = 0;            ///< without an act that was acknowledged
    int damaged = 0;         ///< that do not open, or do not verify
    int unfinished = 0;      ///< said to be unfinished, where nothing was acknowledged
    int diskFaults = 0;      ///< calls that failed
    int diskErrors = 0;      ///< after which an error was told; after the others all was done
    int memoryFaults = 0;    ///< requests for memory that were refused
    int memoryErrors = 0;    ///< after which an error was told
    int answersLost = 0;     ///< an error was told, and the act stands
    int standsAfterKill = 0; ///< an error was told, and the act stands if the program is killed at once
};
DiskFigures& figures();

/// Whether each call and each image is tried (tests/power_cuts), or some of them, in seconds.
bool isEverythingTried();
/// The next number to try, from 1: each one, or fewer the more they are.
int nextToTry(int number);

/// Every club file of the folder, by its name, which ends with .tholepin or is a backup's.
std::vector<std::filesystem::path> clubsIn(const std::filesystem::path& folder);
/// The record: the hash of each fact, in the order in which they were recorded.
using Hashes = std::vector<std::string>;
Hashes hashesOf(const std::filesystem::path& file);
/// In that order; what came from another machine may stand between.
bool holdsAll(const Hashes& whole, const Hashes& part);
/// The names of all files in the folder.
std::vector<std::string> namesIn(const std::filesystem::path& folder);
std::string contentOf(const std::filesystem::path& file); ///< empty when there is none
/// Copies the files of one folder to another, which is emptied first; without what SQLite shares in memory.
void copyFolder(const std::filesystem::path& from, const std::filesystem::path& to);

} // namespace support
