#include "scanner/files/folder.h"

#include <algorithm>
#include <system_error>

namespace scanner {

namespace fs = std::filesystem;

std::optional<FileError> faultOfFile(const fs::path& path) {
    std::error_code failed;
    const fs::file_status status = fs::status(path, failed);
    if (!fs::exists(status)) {
        const bool shut = failed == std::errc::permission_denied;
        return FileError{shut ? FileFault::NotReadable : FileFault::NotFound, failed.message()};
    }
    if (!fs::is_regular_file(status)) return FileError{FileFault::NotAPicture, "not a regular file"};
    if (fs::file_size(path, failed) == 0) return FileError{FileFault::Empty, {}};
    return std::nullopt;
}

std::vector<fs::path> filesWithEnding(const fs::path& folder,
                                      const std::function<bool(const std::string&)>& isWanted) {
    std::vector<fs::path> files;
    std::error_code failed;
    for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed)) {
        const std::string ending = at->path().extension().string();
        const bool hidden = at->path().filename().string().front() == '.';
        std::error_code ignored;
        if (!hidden && ending.size() > 1 && at->is_regular_file(ignored) && isWanted(ending.substr(1)))
            files.push_back(at->path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace scanner
