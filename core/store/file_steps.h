#pragma once

#include <filesystem>
#include <functional>

namespace core {

/// The few things that are done to club files without SQLite, one call each, so that a test can put a disk of
/// its own in between. All throw StoreFailure (FileNotMade, FileNotWritten, FileExists).
namespace fileSteps {

/// For its owner alone (0600), open to read and write; refuses what exists (FileExists), a link also. The
/// caller closes the handle.
int make(const std::filesystem::path& file);
/// What was written to the file reaches the disk. Never of a database that this program has open: closing the
/// handle would let go of the locks that SQLite has on it (POSIX, fcntl: they are the process's).
void syncFile(const std::filesystem::path& file);
/// So do the names that were made, changed and taken away in the folder.
void syncFolder(const std::filesystem::path& folder);
/// Refuses what exists (FileExists).
void renameNoReplace(const std::filesystem::path& from, const std::filesystem::path& to);
/// Also what is not there.
void remove(const std::filesystem::path& file) noexcept;

enum class Step { Make, SyncFile, SyncFolder, Rename, Remove };
/// Told of each step before it is done; `to` of a rename alone. Another number than 0 is an errno with which
/// the step fails, undone. For tests: one for the whole process; empty takes it away.
using Watch =
    std::function<int(Step step, const std::filesystem::path& file, const std::filesystem::path& to)>;
void watch(Watch watch);

} // namespace fileSteps
} // namespace core
