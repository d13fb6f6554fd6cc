#include "scanner/files/picture_streams.h"

#include "scanner/files/folder.h"
#include "scanner/files/picture_file.h"
#include "scanner/reader/live_reader.h"

#include <algorithm>
#include <charconv>
#include <map>

namespace scanner {
namespace {

namespace fs = std::filesystem;

/// "NAME_12" in its parts; nullopt when it is not built so.
std::optional<std::pair<std::string, int>> partsOf(const std::string& stem) {
    const std::size_t line = stem.rfind('_');
    if (line == std::string::npos || line == 0) return std::nullopt;
    const char* begin = stem.data() + line + 1;
    const char* end = stem.data() + stem.size();
    int number = 0;
    const auto read = std::from_chars(begin, end, number);
    if (begin == end || *begin == '-' || read.ptr != end || read.ec != std::errc()) return std::nullopt;
    return std::pair(stem.substr(0, line), number);
}

PictureStream streamOf(const std::string& name, const std::multimap<int, fs::path>& numbered) {
    PictureStream stream;
    stream.name = name;
    int next = 0;
    for (const auto& [number, path] : numbered) {
        if (number < next && !stream.twice) stream.twice = number;
        if (number > next && !stream.missing) stream.missing = next;
        next = number + 1;
        stream.frames.push_back(path);
    }
    return stream;
}

/// What is believed after each frame.
class Sights {
public:
    void add(const std::vector<SeenCode>& codes, int frame) {
        for (const SeenCode& code : codes) {
            const bool certain = code.howRead != HowRead::Guessed;
            const auto known = std::find_if(m_seen.begin(), m_seen.end(), [&](const StreamSight& sight) {
                return sight.code.text == code.text;
            });
            if (known == m_seen.end())
                m_seen.push_back({code, frame, !certain});
            else if (known->guessed && (certain || known->frame != frame))
                *known = {code, frame, false};
        }
    }

    std::vector<StreamSight> inOrder() {
        std::stable_sort(m_seen.begin(), m_seen.end(),
                         [](const StreamSight& a, const StreamSight& b) { return a.frame < b.frame; });
        return std::move(m_seen);
    }

private:
    std::vector<StreamSight> m_seen;
};

} // namespace

FolderOfStreams streamsIn(const fs::path& folder) {
    FolderOfStreams found;
    std::map<std::string, std::multimap<int, fs::path>> byName;
    for (const fs::path& picture : picturesIn(folder)) {
        const auto parts = partsOf(picture.stem().string());
        if (parts)
            byName[parts->first].emplace(parts->second, picture);
        else
            found.others.push_back(picture);
    }
    for (const auto& [name, numbered] : byName)
        found.streams.push_back(streamOf(name, numbered));
    return found;
}

StreamReading readStream(const PictureStream& stream, const TagTest& isTag,
                         std::chrono::milliseconds budget) {
    LiveReader reader(isTag, budget, LiveReader::Clock::Thread);
    StreamReading reading;
    reading.name = stream.name;
    Sights sights;
    for (const fs::path& path : stream.frames) {
        const LoadedPicture picture = loadPicture(path);
        if (picture.error) {
            reading.error = picture.error;
            reading.faulty = path;
            break;
        }
        sights.add(reader.read(picture.grey.view()), reading.frames);
        ++reading.frames;
    }
    reading.seen = sights.inOrder();
    return reading;
}

} // namespace scanner
