#include "app/cli/commands/stream_reading.h"

#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/flow/seen_text.h"
#include "app/text/sentences.h"
#include "app/text/text.h"

#include <filesystem>

namespace app {
namespace {

namespace fs = std::filesystem;

constexpr std::chrono::milliseconds budget{33}; // processor time: thirty frames a second

/// The streams of a folder that can be read from their first frame to their last.
std::vector<scanner::PictureStream> soundStreams(const std::string& folder, bool& faulty) {
    std::error_code failed;
    if (!fs::is_directory(folder, failed)) {
        faulty = true;
        failWith(fs::exists(folder, failed) ? "not a folder" : "no such folder", folder,
                 "name the folder that holds the pictures NAME_0.jpg, NAME_1.jpg …");
        return {};
    }
    scanner::FolderOfStreams found = scanner::streamsIn(folder);
    for (const fs::path& other : found.others)
        note(QStringLiteral("%1 is left out: its name is not NAME_NUMBER").arg(text(other.string())));
    if (found.streams.empty()) {
        faulty = true;
        failWith("no stream in the folder", folder,
                 "name its pictures NAME_0.jpg, NAME_1.jpg … in the order in which they were taken");
    }
    std::erase_if(found.streams, [&](const scanner::PictureStream& stream) {
        const bool gap = stream.missing.has_value();
        if (!gap && !stream.twice) return false;
        faulty = true;
        const std::string number = std::to_string(gap ? *stream.missing : *stream.twice);
        failWith(gap ? "frame " + number + " is missing" : "frame " + number + " is there twice",
                 (fs::path(folder) / stream.name).string(),
                 "a stream's pictures are numbered from 0 without a gap, each number once");
        return true;
    });
    return found.streams;
}

} // namespace

std::vector<scanner::StreamReading> readStreams(const std::vector<std::string>& folders, bool& faulty) {
    std::vector<scanner::PictureStream> streams;
    for (const std::string& folder : folders) {
        auto some = soundStreams(folder, faulty);
        streams.insert(streams.end(), some.begin(), some.end());
    }
    Progress progress(QStringLiteral("read"));
    std::vector<scanner::StreamReading> readings;
    double done = 0;
    for (const scanner::PictureStream& stream : streams) {
        progress.show(done++ / static_cast<double>(streams.size()));
        scanner::StreamReading reading;
        {
            const LibrariesQuiet quiet;
            reading = scanner::readStream(stream, isTagText, budget);
        }
        if (reading.error) {
            faulty = true;
            fail(fileErrorOf(reading.faulty.string(), *reading.error));
        } else {
            readings.push_back(std::move(reading));
        }
    }
    return readings;
}

} // namespace app
