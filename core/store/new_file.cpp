#include "core/store/new_file.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/store/file_steps.h"

#include <cerrno>
#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace core {
namespace {

/// Whether the handle is still of what stands at the name.
bool isAt(int handle, const std::filesystem::path& place) {
    struct stat held {};
    struct stat named {};
    return ::fstat(handle, &held) == 0 && ::lstat(place.c_str(), &named) == 0 &&
           held.st_dev == named.st_dev && held.st_ino == named.st_ino;
}

bool isSomething(const std::filesystem::path& place) {
    return std::filesystem::exists(std::filesystem::symlink_status(place));
}

/// False: another program has it. A file system without such locks has none to hold.
bool lockAlone(int handle) {
    return ::flock(handle, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK;
}

constexpr std::string_view ending = ".tholepin-unfinished";

/// A name that nobody gives to a file of theirs, for what is found there is swept up.
std::filesystem::path placeOf(const std::filesystem::path& file) {
    return file.parent_path() / ("." + file.filename().string() + std::string(ending));
}

/// Its owner is who runs this program, and it has no other name.
bool isOurs(const struct stat& status) {
    return S_ISREG(status.st_mode) && status.st_uid == ::geteuid() && status.st_nlink == 1;
}

/// SQLite would play what stands there into the new file, or it is of a file that was moved without it.
void requireNothingBeside(const std::filesystem::path& file) {
    for (const char* end : {"", "-journal", "-wal"})
        if (*end == '\0' ? isSomething(file) : holdsSomething(file, end))
            throw StoreFailure({ErrorCode::FileExists, {}, file.string() + end});
}

} // namespace

bool holdsSomething(const std::filesystem::path& file, const char* end) {
    std::error_code none;
    const auto size = std::filesystem::file_size(file.string() + end, none);
    return !none && size > 0;
}

void removeWithTraces(const std::filesystem::path& file) noexcept {
    // The file last: what is beside it is never without it.
    for (const char* end : {"-journal", "-wal", "-shm", ""})
        fileSteps::remove(file.string() + end);
}

void NewFile::sweep(const std::filesystem::path& file) {
    const std::filesystem::path place = placeOf(file);
    const int handle = ::open(place.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (handle < 0) return;
    struct stat status {};
    if (::fstat(handle, &status) == 0 && isOurs(status) && lockAlone(handle) && isAt(handle, place))
        removeWithTraces(place);
    ::close(handle);
}

NewFile::NewFile(std::filesystem::path file)
    : m_file(std::move(file))
    , m_place(placeOf(m_file)) {
    if (m_file.filename().string().ends_with(ending)) // it would be swept up
        throw StoreFailure(
            {ErrorCode::FileNotMade, {std::generic_category().message(EINVAL)}, m_file.string()});
    requireNothingBeside(m_file);
    sweep(m_file);
    if (!isSomething(m_place)) { // what a file that is gone left beside it
        for (const char* end : {"-journal", "-wal", "-shm"})
            fileSteps::remove(m_place.string() + end);
    }
    m_handle = fileSteps::make(m_place);
    if (lockAlone(m_handle) && isAt(m_handle, m_place)) return;
    ::close(m_handle); // another program makes the same file at this moment
    throw StoreFailure({ErrorCode::FileExists, {}, m_place.string()});
}

NewFile::~NewFile() {
    if (m_handle < 0) return;
    removeWithTraces(m_place);
    ::close(m_handle);
}

void NewFile::finish(mode_t mode) {
    for (const char* end : {"-journal", "-wal"}) // then the file would not be whole without it
        if (holdsSomething(m_place, end))
            throw StoreFailure(
                {ErrorCode::FileNotMade, {std::generic_category().message(EIO)}, m_place.string() + end});
    if (struct stat status{};
        !isAt(m_handle, m_place) || ::fstat(m_handle, &status) != 0 || status.st_size == 0)
        throw StoreFailure({ErrorCode::FileReplaced, {}, m_place.string()});
    if (::fchmod(m_handle, mode & 0777) != 0)
        throw StoreFailure(
            {ErrorCode::FileNotMade, {std::generic_category().message(errno)}, m_file.string()});
    fileSteps::syncFile(m_place);
    for (const char* end : {"-journal", "-wal", "-shm"})
        fileSteps::remove(m_place.string() + end);
    fileSteps::renameNoReplace(m_place, m_file);
    ::close(std::exchange(m_handle, -1));
    try {
        fileSteps::syncFolder(m_file.parent_path());
    } catch (...) {
        discard();
        throw;
    }
}

void NewFile::discard() {
    removeWithTraces(m_file);
}

} // namespace core
