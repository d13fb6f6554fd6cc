#include "scanner/files/folder.h"

#include <QByteArray>
#include <QImageReader>
#include <QList>

#include <algorithm>
#include <array>
#include <cctype>
#include <functional>
#include <string>
#include <string_view>
#include <system_error>

namespace scanner {

namespace fs = std::filesystem;

namespace {

/// The regular files of a folder whose ending (without the dot, as written) the test accepts.
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

bool endsLikeVideo(std::string ending) {
    static constexpr std::array<std::string_view, 12> known{"3gp",  "avi", "m4v", "mkv", "mov",  "mp4",
                                                            "mpeg", "mpg", "mts", "ogv", "webm", "wmv"};
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return std::find(known.begin(), known.end(), ending) != known.end();
}

} // namespace

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

std::vector<fs::path> picturesIn(const fs::path& folder) {
    const QList<QByteArray> endings = QImageReader::supportedImageFormats();
    return filesWithEnding(folder, [&](const std::string& ending) {
        return endings.contains(QByteArray::fromStdString(ending).toLower());
    });
}

std::vector<fs::path> filesToRead(const fs::path& path) {
    std::error_code ignored;
    if (!fs::is_directory(path, ignored)) return {path};
    std::vector<fs::path> files = picturesIn(path);
    const std::vector<fs::path> videos = filesWithEnding(path, endsLikeVideo);
    files.insert(files.end(), videos.begin(), videos.end());
    std::sort(files.begin(), files.end());
    files.erase(std::unique(files.begin(), files.end()), files.end());
    return files;
}

} // namespace scanner
