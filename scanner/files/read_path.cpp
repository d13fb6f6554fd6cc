#include "scanner/files/read_path.h"

#include "scanner/files/code_tally.h"
#include "scanner/files/folder.h"
#include "scanner/files/picture_file.h"
#include "scanner/files/video_file.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace scanner {
namespace {

namespace fs = std::filesystem;

PathReading failedReading(const fs::path& path, FileError error) {
    PathReading reading;
    reading.path = path;
    reading.error = std::move(error);
    return reading;
}

PathReading emptyFolder(const fs::path& folder) {
    std::error_code failed;
    fs::directory_iterator at(folder, failed);
    return failedReading(folder, {failed ? FileFault::NotReadable : FileFault::Empty, failed.message()});
}

void enlarge(std::vector<SeenCode>& codes, const LoadedPicture& picture) {
    for (SeenCode& code : codes)
        for (Point& corner : code.corners)
            corner = {corner.x * picture.scaleX(), corner.y * picture.scaleY()};
}

PathReading readPicture(const fs::path& path, const LoadedPicture& picture, const CodeReader& reader) {
    PathReading reading;
    reading.path = path;
    reading.width = picture.width;
    reading.height = picture.height;
    std::vector<SeenCode> seen = reader(picture.grey.view());
    enlarge(seen, picture);
    CodeTally tally;
    tally.add(seen);
    reading.seen = tally.believed();
    reading.doubtful = tally.doubtful();
    return reading;
}

/// `goOn` hears the share of this video.
PathReading readVideo(const fs::path& path, double framesPerSecond, const CodeReader& reader,
                      const std::function<bool(double)>& goOn) {
    PathReading reading;
    reading.path = path;
    VideoOptions options;
    options.framesPerSecond = framesPerSecond;
    VideoFile video(path, options);
    CodeTally tally;
    int frames = 0;
    while (const auto picture = video.next()) {
        reading.width = picture->grey.width;
        reading.height = picture->grey.height;
        tally.add(reader(picture->grey.view()));
        ++frames;
        if (!goOn(picture->share)) break;
    }
    reading.error = video.error();
    if (frames > 0) reading.frames = frames;
    reading.seen = tally.believed();
    reading.doubtful = tally.doubtful();
    return reading;
}

} // namespace

std::vector<PathReading> readPath(const fs::path& path, const ReadPathOptions& options,
                                  const OnProgress& progress) {
    const std::vector<fs::path> files = filesToRead(path);
    if (files.empty()) return {emptyFolder(path)};
    const CodeReader reader =
        options.reader ? options.reader : [&](GreyView view) { return readSymbols(view, options.reading); };

    std::vector<PathReading> readings;
    for (const fs::path& file : files) {
        bool stopped = false;
        const auto goOn = [&](double shareOfFile) {
            const double share =
                (static_cast<double>(readings.size()) + shareOfFile) / static_cast<double>(files.size());
            stopped = progress && !progress({file, share});
            return !stopped;
        };
        if (!goOn(0)) break;
        const LoadedPicture picture = loadPicture(file);
        if (!picture.error)
            readings.push_back(readPicture(file, picture, reader));
        else if (picture.error->fault == FileFault::NotAPicture)
            readings.push_back(readVideo(file, options.videoFramesPerSecond, reader, goOn));
        else
            readings.push_back(failedReading(file, *picture.error));
        if (stopped) break;
    }
    return readings;
}

} // namespace scanner
