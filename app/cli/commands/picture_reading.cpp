#include "app/cli/commands/picture_reading.h"

#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/flow/seen_text.h"
#include "app/text/sentences.h"

#include <iterator>

namespace app {

std::vector<scanner::PathReading> readPictures(const std::vector<std::string>& paths, ReadEffort effort) {
    scanner::ReadPathOptions options;
    options.reading.isTag = isTagText;
    options.reading.rescue = effort.full;
    options.reading.budget = std::chrono::milliseconds(static_cast<int>(effort.seconds * 1000));
    Progress progress(QStringLiteral("read"));
    const LibrariesQuiet quiet;
    std::vector<scanner::PathReading> readings;
    for (std::size_t at = 0; at < paths.size(); ++at) {
        const auto show = [&](const scanner::ReadProgress& so) {
            progress.show((static_cast<double>(at) + so.share) / static_cast<double>(paths.size()));
            return true;
        };
        auto some = scanner::readPath(paths[at], options, show);
        readings.insert(readings.end(), std::make_move_iterator(some.begin()),
                        std::make_move_iterator(some.end()));
    }
    return readings;
}

bool reportUnreadable(const std::vector<scanner::PathReading>& readings) {
    bool any = false;
    for (const scanner::PathReading& reading : readings)
        if (reading.error) {
            any = true;
            fail(fileErrorOf(reading.path.string(), *reading.error));
        }
    return any;
}

} // namespace app
