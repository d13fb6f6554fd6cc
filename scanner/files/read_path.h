#pragma once

#include "scanner/files/file_fault.h"
#include "scanner/reader/symbol_reader.h"
#include "scanner/seen_code.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <vector>

namespace scanner {

/// What one picture or one video showed.
struct PathReading {
    std::filesystem::path path;
    std::optional<FileError> error; ///< then nothing was read, or, for a video, not to its end

    /// Each text once. Corners are in pixels of the upright picture in its own size, or of the video's first
    /// frame that showed the code.
    std::vector<SeenCode> seen;
    /// Guesses (HowRead::Guessed) that no second frame confirmed: not to be acted upon. A picture's guesses
    /// all land here.
    std::vector<SeenCode> doubtful;

    int width = 0; ///< pixels of the upright picture or of the video's frames
    int height = 0;
    std::optional<int> frames; ///< of a video: how many were read
};

struct ReadProgress {
    const std::filesystem::path& path; ///< the file at work
    double share;                      ///< done of everything, 0 to 1, never falling
};

/// Called from the thread that called readPath, before each picture and about every tenth of a second in a
/// video. False asks to stop: what was read so far is returned.
using OnProgress = std::function<bool(const ReadProgress&)>;

struct ReadPathOptions {
    ReadOptions reading;
    CodeReader reader; ///< empty: readSymbols with `reading`
    double videoFramesPerSecond =
        10.0; ///< at most so many evenly spaced frames of a second are read; 0: every frame
};

/// Reads a picture, a video, or all pictures and videos of a folder, sorted by name (its subfolders are left
/// out). One entry per file; a path that leads to no file gives one entry with its error, so the answer is
/// never empty unless stopped. Never throws for anything that is wrong with a file. Needs no window, no event
/// loop and no display.
std::vector<PathReading> readPath(const std::filesystem::path& path, const ReadPathOptions& options = {},
                                  const OnProgress& progress = {});

} // namespace scanner
