#include "tests/support/watched_disk.h"

#include <cstring>
#include <limits>
#include <map>
#include <sqlite3.h>

namespace support {
namespace {

int syncCount = 0;
int writeCount = 0;
int writesLeft = std::numeric_limits<int>::max();
sqlite3_vfs* under = nullptr;
sqlite3_vfs watched;

/// Each file's own methods, with two of them replaced. Kept by the table that they replace.
std::map<const sqlite3_io_methods*, sqlite3_io_methods> replaced;
std::map<const sqlite3_io_methods*, const sqlite3_io_methods*> original;

int countedSync(sqlite3_file* file, int flags) {
    ++syncCount;
    return original[file->pMethods]->xSync(file, flags);
}

int countedWrite(sqlite3_file* file, const void* bytes, int amount, sqlite3_int64 offset) {
    ++writeCount;
    if (writesLeft <= 0) return SQLITE_FULL;
    --writesLeft;
    return original[file->pMethods]->xWrite(file, bytes, amount, offset);
}

int open(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags) {
    const int code = under->xOpen(under, name, file, flags, outFlags);
    if (code == SQLITE_OK && file->pMethods != nullptr) {
        const sqlite3_io_methods* own = file->pMethods;
        if (!replaced.contains(own)) {
            replaced[own] = *own;
            replaced[own].xSync = countedSync;
            replaced[own].xWrite = countedWrite;
            original[&replaced[own]] = own;
        }
        file->pMethods = &replaced[own];
    }
    return code;
}

} // namespace

WatchedDisk::WatchedDisk() {
    under = sqlite3_vfs_find(nullptr);
    watched = *under;
    watched.zName = "watched";
    watched.pNext = nullptr;
    watched.xOpen = open;
    syncCount = writeCount = 0;
    empty();
    sqlite3_vfs_register(&watched, 1);
}

WatchedDisk::~WatchedDisk() {
    sqlite3_vfs_unregister(&watched);
    sqlite3_vfs_register(under, 1);
}

int WatchedDisk::syncs() const {
    return syncCount;
}
int WatchedDisk::writes() const {
    return writeCount;
}
void WatchedDisk::fillAfter(int writes) {
    writesLeft = writes;
}
void WatchedDisk::empty() {
    writesLeft = std::numeric_limits<int>::max();
}

} // namespace support
