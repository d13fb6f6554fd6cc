#include "tests/support/watched_disk.h"

#include "core/store/file_steps.h"

#include <array>
#include <cerrno>
#include <filesystem>
#include <map>
#include <sqlite3.h>

namespace support {
namespace {

constexpr std::size_t calls = std::size(everyDiskCall);

struct Watched {
    std::array<int, calls> counts{};
    DiskCall call{};
    int nth = 0; // none fails
    int code = 0;
    bool lasting = false;
    bool hasFailed = false;
    bool sharesMemory = true;
    std::function<void(const DiskEvent&)> listener;
    std::map<sqlite3_file*, std::string> names;
};
Watched now;
sqlite3_vfs* under = nullptr;
sqlite3_vfs watched;

/// Each file's own methods, with some of them replaced. Kept by the table that they replace.
std::map<const sqlite3_io_methods*, sqlite3_io_methods> replaced;
std::map<const sqlite3_io_methods*, const sqlite3_io_methods*> original;

const sqlite3_io_methods* ownOf(sqlite3_file* file) {
    return original.at(file->pMethods);
}

/// Counts the call; another number than 0: it is to fail with that.
int failureOf(DiskCall call) {
    const int number = ++now.counts[static_cast<std::size_t>(call)];
    if (now.nth == 0 || call != now.call) return 0;
    if (number != now.nth && !(now.lasting && number > now.nth)) return 0;
    now.hasFailed = true;
    return now.code;
}

void tellOf(const DiskEvent& event) {
    if (now.listener && !event.path.empty()) now.listener(event);
}

int watchedClose(sqlite3_file* file) {
    const auto* own = ownOf(file);
    now.names.erase(file);
    return own->xClose(file);
}

int watchedRead(sqlite3_file* file, void* bytes, int amount, sqlite3_int64 offset) {
    if (const int code = failureOf(DiskCall::Read)) return code;
    return ownOf(file)->xRead(file, bytes, amount, offset);
}

int watchedWrite(sqlite3_file* file, const void* bytes, int amount, sqlite3_int64 offset) {
    const int code = failureOf(DiskCall::Write);
    const int done = code == 0 ? amount : amount / 2; // a full disk takes what still fits
    tellOf({DiskEvent::Kind::Write,
            now.names[file],
            {},
            offset,
            std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(done))});
    const int written = ownOf(file)->xWrite(file, bytes, done, offset);
    return code == 0 ? written : code;
}

int watchedTruncate(sqlite3_file* file, sqlite3_int64 size) {
    if (const int code = failureOf(DiskCall::Truncate)) return code;
    tellOf({DiskEvent::Kind::Truncate, now.names[file], {}, size});
    return ownOf(file)->xTruncate(file, size);
}

int watchedSync(sqlite3_file* file, int flags) {
    if (const int code = failureOf(DiskCall::Sync)) return code;
    tellOf({DiskEvent::Kind::Sync, now.names[file]});
    return ownOf(file)->xSync(file, flags);
}

int watchedLock(sqlite3_file* file, int level) {
    if (const int code = failureOf(DiskCall::Lock)) return code;
    return ownOf(file)->xLock(file, level);
}

int watchedMap(sqlite3_file* file, int page, int size, int extend, void volatile** at) {
    if (const int code = failureOf(DiskCall::SharedMap)) return code;
    return ownOf(file)->xShmMap(file, page, size, extend, at);
}

int watchedShared(sqlite3_file* file, int offset, int n, int flags) {
    if ((flags & SQLITE_SHM_LOCK) != 0) // to let go of a lock does not fail
        if (const int code = failureOf(DiskCall::SharedLock)) return code;
    return ownOf(file)->xShmLock(file, offset, n, flags);
}

void replaceMethods(sqlite3_file* file) {
    const sqlite3_io_methods* own = file->pMethods;
    if (!replaced.contains(own)) {
        sqlite3_io_methods& mine = replaced[own] = *own;
        mine.xClose = watchedClose;
        mine.xRead = watchedRead;
        mine.xWrite = watchedWrite;
        mine.xTruncate = watchedTruncate;
        mine.xSync = watchedSync;
        mine.xLock = watchedLock;
        if (own->xShmMap != nullptr) mine.xShmMap = watchedMap;
        if (own->xShmLock != nullptr) mine.xShmLock = watchedShared;
        original[&mine] = own;
    }
    replaced[own].iVersion = now.sharesMemory ? own->iVersion : 1; // the first had no shared memory
    file->pMethods = &replaced[own];
}

int watchedOpen(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags) {
    file->pMethods = nullptr;
    if (const int code = failureOf(DiskCall::Open)) return code;
    const std::string path = name != nullptr && (flags & SQLITE_OPEN_DELETEONCLOSE) == 0 ? name : "";
    if ((flags & SQLITE_OPEN_CREATE) != 0 && !path.empty() && !std::filesystem::exists(path))
        tellOf({DiskEvent::Kind::Make, path});
    const int code = under->xOpen(under, name, file, flags, outFlags);
    if (file->pMethods == nullptr) return code;
    now.names[file] = path;
    replaceMethods(file);
    return code;
}

int watchedDelete(sqlite3_vfs*, const char* name, int syncFolder) {
    if (const int code = failureOf(DiskCall::Delete)) return code;
    if (std::filesystem::exists(name)) tellOf({DiskEvent::Kind::Delete, name});
    return under->xDelete(under, name, syncFolder);
}

int sleepNot(sqlite3_vfs*, int micros) {
    return micros;
}

/// SQLite opens a folder for one purpose: to sync it.
using OpenFolder = int (*)(const char*, int*);
OpenFolder openFolder = nullptr;
int watchedOpenFolder(const char* file, int* handle) {
    tellOf({DiskEvent::Kind::SyncFolder, std::filesystem::path(file).parent_path().string()});
    return openFolder(file, handle);
}

int watchedStep(core::fileSteps::Step step, const std::filesystem::path& file,
                const std::filesystem::path& to) {
    using core::fileSteps::Step;
    using Kind = DiskEvent::Kind;
    if (step != Step::Remove) // what cannot be removed is swept up later, and no step by itself
        if (const int number = failureOf(DiskCall::Step)) return number;
    switch (step) {
    case Step::Make:
        tellOf({Kind::Make, file.string()});
        break;
    case Step::SyncFile:
        tellOf({Kind::Sync, file.string()});
        break;
    case Step::SyncFolder:
        tellOf({Kind::SyncFolder, file.string()});
        break;
    case Step::Rename:
        tellOf({Kind::Rename, file.string(), to.string()});
        break;
    case Step::Remove:
        tellOf({Kind::Delete, file.string()});
        break;
    }
    return 0;
}

} // namespace

const char* nameOf(DiskCall call) {
    static constexpr const char* names[] = {"open",   "read",       "write",       "sync", "truncate",
                                            "delete", "shared map", "shared lock", "lock", "step"};
    return names[static_cast<std::size_t>(call)];
}

std::vector<int> failuresOf(DiskCall call) {
    static const std::vector<int> codes[] = {{SQLITE_CANTOPEN},
                                             {SQLITE_IOERR_READ},
                                             {SQLITE_FULL, SQLITE_IOERR_WRITE},
                                             {SQLITE_IOERR_FSYNC},
                                             {SQLITE_IOERR_TRUNCATE},
                                             {SQLITE_IOERR_DELETE},
                                             {SQLITE_IOERR_SHMMAP},
                                             {SQLITE_IOERR_SHMLOCK, SQLITE_BUSY},
                                             {SQLITE_IOERR_LOCK, SQLITE_BUSY},
                                             {ENOSPC, EIO}};
    return codes[static_cast<std::size_t>(call)];
}

WatchedDisk::WatchedDisk() {
    sqlite3_initialize();
    under = sqlite3_vfs_find(nullptr);
    watched = *under;
    watched.zName = "watched";
    watched.pNext = nullptr;
    watched.xOpen = watchedOpen;
    watched.xDelete = watchedDelete;
    watched.xSleep = sleepNot;
    now = {};
    openFolder = reinterpret_cast<OpenFolder>(under->xGetSystemCall(under, "openDirectory"));
    under->xSetSystemCall(under, "openDirectory", reinterpret_cast<sqlite3_syscall_ptr>(watchedOpenFolder));
    core::fileSteps::watch(watchedStep);
    sqlite3_vfs_register(&watched, 1);
}

WatchedDisk::~WatchedDisk() {
    core::fileSteps::watch({});
    under->xSetSystemCall(under, "openDirectory", nullptr);
    sqlite3_vfs_unregister(&watched);
    sqlite3_vfs_register(under, 1);
}

int WatchedDisk::count(DiskCall call) const {
    return now.counts[static_cast<std::size_t>(call)];
}

void WatchedDisk::fail(DiskCall call, int nth, int code, bool lasting) {
    now.counts = {};
    now.call = call;
    now.nth = nth;
    now.code = code;
    now.lasting = lasting;
    now.hasFailed = false;
}

void WatchedDisk::heal() {
    now.nth = 0;
}

bool WatchedDisk::hasFailed() const {
    return now.hasFailed;
}

void WatchedDisk::fillAfter(int writes) {
    fail(DiskCall::Write, writes + 1, SQLITE_FULL, true);
}

void WatchedDisk::shareNoMemory() {
    now.sharesMemory = false;
}

void WatchedDisk::tell(std::function<void(const DiskEvent&)> listener) {
    now.listener = std::move(listener);
}

} // namespace support
