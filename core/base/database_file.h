#pragma once

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <utility>

namespace core {

/// Whether the file is a database of SQLite, such as a club file, its rollback journal or its write-ahead
/// log, or stands where SQLite would take it for one of those of a database that is there. Told by how the
/// files begin (SQLite's file format, sections 1.3, 3 and 4.1); what is no regular
/// file, or cannot be read, is none.
bool isOfDatabase(const std::filesystem::path& file);

/// A database that this program has open. To look into its file by another way would, on closing it, drop the
/// locks that SQLite holds on it (fcntl(2): all of a process go with any of its handles); so `isOfDatabase`
/// knows it without looking. Any thread.
class OpenDatabase {
public:
    explicit OpenDatabase(const std::filesystem::path& file); ///< which is open; empty: in memory
    ~OpenDatabase();
    OpenDatabase(const OpenDatabase&) = delete;
    OpenDatabase& operator=(const OpenDatabase&) = delete;

    /// A connection of this program waits for another one's lock on the file: counted for all that have it
    /// open.
    void countWait() { ++*m_waits; }
    std::uint64_t waits() const { return *m_waits; }

    /// Whether the file is one of those, or what SQLite keeps beside one.
    static bool isOne(const std::filesystem::path& file);

private:
    std::pair<std::uint64_t, std::uint64_t> m_id; ///< device and inode; 0 and 0: none
    std::shared_ptr<std::atomic<std::uint64_t>> m_waits;
};

} // namespace core
