#pragma once

#include "scanner/files/file_fault.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace scanner {

/// What a camera saw, kept as pictures NAME_0.jpg, NAME_1.jpg …
struct PictureStream {
    std::string name;
    std::vector<std::filesystem::path> frames; ///< by their numbers
    std::optional<int> missing; ///< the first number, from 0 to the highest, that no picture has
    std::optional<int> twice;   ///< the first number that two pictures have
};

/// The pictures of a folder (not those of its subfolders) by the names of their streams, sorted.
struct FolderOfStreams {
    std::vector<PictureStream> streams;
    std::vector<std::filesystem::path> others; ///< pictures whose names are not NAME_NUMBER
};
FolderOfStreams streamsIn(const std::filesystem::path& folder);

/// A text that a stream showed.
struct StreamSight {
    SeenCode code;
    /// The number of the frame from which it is believed: the first that tells it without guesswork or the
    /// second that guesses it. Of a guess that no second frame confirmed: its frame.
    int frame = 0;
    bool guessed = false; ///< one frame's guess: not to be acted upon
};

struct StreamReading {
    std::string name;
    int frames = 0;                ///< read
    std::vector<StreamSight> seen; ///< each text once, in the order of `frame`
    std::optional<FileError> error;
    std::filesystem::path faulty; ///< the picture that `error` is about
};

/// Reads the frames in turn as a live view does, with so much processor time a frame. Stops at a picture that
/// cannot be read.
StreamReading readStream(const PictureStream& stream, const TagTest& isTag, std::chrono::milliseconds budget);

} // namespace scanner
