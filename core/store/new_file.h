#pragma once

#include <filesystem>
#include <sys/types.h>

namespace core {

/// A club file that is being made. It is made beside its place, as `.<file>.tholepin-unfinished`, and takes
/// its name only when it is whole and on disk: whatever stands at the name is a club, also after a power cut.
/// Throws StoreFailure.
///
/// What a killed program left under that name is nobody's: it is held by no lock (flock, which ends with its
/// program) and goes when the same file is made or opened again.
class NewFile {
public:
    /// FileExists: the file, or what SQLite would take for a part of it, or another program is making it.
    explicit NewFile(std::filesystem::path file);
    /// Unless it was finished, nothing of it is left. No database may be open on it.
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    /// Where it is made: an empty file, its owner's alone.
    const std::filesystem::path& place() const { return m_place; }
    /// Gives it its readers (of `mode` the lowest nine bits) and its name, on disk. No database may be open
    /// on it.
    void finish(mode_t mode);
    /// It has its name, and is not wanted after all.
    void discard();

    /// Takes away what a killed program left of that file, but not what a running one is making.
    static void sweep(const std::filesystem::path& file);

private:
    std::filesystem::path m_file;
    std::filesystem::path m_place;
    int m_handle = -1;
};

/// The file and what SQLite keeps beside it.
void removeWithTraces(const std::filesystem::path& file) noexcept;
/// Whether something stands in SQLite's log, or journal, beside the file. `end`: "-wal" or "-journal".
bool holdsSomething(const std::filesystem::path& file, const char* end);

} // namespace core
