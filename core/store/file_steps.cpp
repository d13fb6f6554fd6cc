#include "core/store/file_steps.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::fileSteps {
namespace {

Watch& watcher() {
    static Watch one;
    return one;
}

[[noreturn]] void failStep(ErrorCode code, const std::filesystem::path& file, int number) {
    if (number == EEXIST) throw StoreFailure({ErrorCode::FileExists, {}, file.string()});
    throw StoreFailure({code, {std::generic_category().message(number)}, file.string()});
}

int said(Step step, const std::filesystem::path& file, const std::filesystem::path& to = {}) {
    return watcher() ? watcher()(step, file, to) : 0;
}

/// Some file systems have no sync of a folder, or nothing that could be synced, and say so: that is no
/// failure.
bool hasNothingToSync(int number) {
    return number == EINVAL || number == EROFS || number == ENOTSUP;
}

void syncPath(const std::filesystem::path& path, int more) {
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | more);
    if (handle < 0) failStep(ErrorCode::FileNotWritten, path, errno);
    const int number = ::fsync(handle) == 0 ? 0 : errno;
    ::close(handle);
    if (number != 0 && !hasNothingToSync(number)) failStep(ErrorCode::FileNotWritten, path, number);
}

/// Where the file system cannot rename without replacing: the name is taken first, by a file of nothing,
/// which is recognised as unfinished should it be left.
int renameOverOwnClaim(const char* from, const char* to) {
    const int handle = ::open(to, O_CREAT | O_EXCL | O_WRONLY | O_NOFOLLOW | O_CLOEXEC, 0600);
    if (handle < 0) return errno;
    ::close(handle);
    if (::rename(from, to) == 0) return 0;
    const int number = errno;
    ::unlink(to);
    return number;
}

} // namespace

int make(const std::filesystem::path& file) {
    int number = said(Step::Make, file);
    if (number != 0) failStep(ErrorCode::FileNotMade, file, number);
    const int handle = ::open(file.c_str(), O_CREAT | O_EXCL | O_RDWR | O_NOFOLLOW | O_CLOEXEC, 0600);
    if (handle < 0) failStep(ErrorCode::FileNotMade, file, errno);
    return handle;
}

void syncFile(const std::filesystem::path& file) {
    if (const int number = said(Step::SyncFile, file); number != 0)
        failStep(ErrorCode::FileNotWritten, file, number);
    syncPath(file, 0);
}

void syncFolder(const std::filesystem::path& folder) {
    const std::filesystem::path named = folder.empty() ? "." : folder;
    if (const int number = said(Step::SyncFolder, named); number != 0)
        failStep(ErrorCode::FileNotWritten, named, number);
    syncPath(named, O_DIRECTORY);
}

void renameNoReplace(const std::filesystem::path& from, const std::filesystem::path& to) {
    int number = said(Step::Rename, from, to);
    if (number == 0 && ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) != 0)
        number = errno;
    if (number == EINVAL || number == ENOSYS) number = renameOverOwnClaim(from.c_str(), to.c_str());
    if (number != 0) failStep(ErrorCode::FileNotMade, to, number);
}

void remove(const std::filesystem::path& file) noexcept {
    struct stat status {};
    if (::lstat(file.c_str(), &status) != 0) return;
    if (said(Step::Remove, file) == 0) ::unlink(file.c_str());
}

void watch(Watch watch) {
    watcher() = std::move(watch);
}

} // namespace core::fileSteps
