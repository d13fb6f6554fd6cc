#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace support {

/// What SQLite, and core besides it (core/store/file_steps.h), ask of the disk, and what may fail.
enum class DiskCall { Open, Read, Write, Sync, Truncate, Delete, SharedMap, SharedLock, Lock, Step };
inline constexpr DiskCall everyDiskCall[] = {
    DiskCall::Open,   DiskCall::Read,      DiskCall::Write,      DiskCall::Sync, DiskCall::Truncate,
    DiskCall::Delete, DiskCall::SharedMap, DiskCall::SharedLock, DiskCall::Lock, DiskCall::Step};
const char* nameOf(DiskCall call);
/// What SQLite's own disk says when such a call fails; of a step, numbers of errno.
std::vector<int> failuresOf(DiskCall call);

/// What changes what is on the disk, or makes it lasting.
struct DiskEvent {
    enum class Kind { Make, Write, Truncate, Sync, Delete, Rename, SyncFolder };
    Kind kind{};
    std::string path = {};
    std::string to = {};     ///< Rename
    std::int64_t offset = 0; ///< Write; Truncate: the new size
    std::string bytes = {};  ///< Write
};

/// Puts itself between core and the disk, for the whole process while it lives: counts calls, lets some fail,
/// and tells what is written. Waiting for a lock takes no time. Create it before the database is opened. One
/// at a time, for one thread.
class WatchedDisk {
public:
    WatchedDisk();
    ~WatchedDisk();
    WatchedDisk(const WatchedDisk&) = delete;
    WatchedDisk& operator=(const WatchedDisk&) = delete;

    int syncs() const { return count(DiskCall::Sync); }
    int writes() const { return count(DiskCall::Write); }
    int count(DiskCall call) const; ///< since it was made, or since `fail`

    /// From now on the n-th call, from 1, fails with that code; the later ones, too, when `lasting`.
    void fail(DiskCall call, int nth, int code, bool lasting);
    void heal();
    bool hasFailed() const; ///< since `fail`

    void fillAfter(int writes); ///< from that many further writes on, every write fails with SQLITE_FULL
    void empty() { heal(); }    ///< there is room again

    /// From the next file on: a disk where programs cannot share memory, so that SQLite has no write-ahead
    /// log.
    void shareNoMemory();
    /// Told of each change before it is made. Empty: nobody.
    void tell(std::function<void(const DiskEvent&)> listener);
};

} // namespace support
