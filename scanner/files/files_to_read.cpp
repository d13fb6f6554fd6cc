#include "scanner/files/files_to_read.h"

#include "scanner/files/folder.h"
#include "scanner/files/picture_file.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <string_view>
#include <system_error>

namespace scanner {

namespace fs = std::filesystem;

namespace {

bool endsLikeVideo(std::string ending) {
    static constexpr std::array<std::string_view, 12> known{"3gp",  "avi", "m4v", "mkv", "mov",  "mp4",
                                                            "mpeg", "mpg", "mts", "ogv", "webm", "wmv"};
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return std::find(known.begin(), known.end(), ending) != known.end();
}

} // namespace

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
