#pragma once

namespace support {

/// Puts itself between SQLite and the disk, for the whole process while it lives: counts syncs and can let
/// the disk be full from some write on. Create it before the database is opened. One at a time.
class WatchedDisk {
public:
    WatchedDisk();
    ~WatchedDisk();
    WatchedDisk(const WatchedDisk&) = delete;
    WatchedDisk& operator=(const WatchedDisk&) = delete;

    int syncs() const;          ///< xSync calls so far, of all files
    int writes() const;         ///< xWrite calls so far
    void fillAfter(int writes); ///< from that many further writes on, every write fails with SQLITE_FULL
    void empty();               ///< there is room again
};

} // namespace support
