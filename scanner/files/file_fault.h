#pragma once

#include <cstdint>
#include <string>

namespace scanner {

/// Why nothing could be read from a path. The words for a person are the caller's.
enum class FileFault : std::uint8_t {
    NotFound,    ///< no such file or folder
    NotReadable, ///< it is there, but may not be opened
    Empty,       ///< a file of no bytes, or a folder without a picture or video
    NotAPicture, ///< the bytes are neither a picture nor a video that can be decoded here
    Damaged,     ///< begins like a picture or video and cannot be decoded to the end of one frame
    TooBig,      ///< has more pixels, or would need more memory or time, than a picture may
};

/// A fault with what the decoding library said about it: plain English for a log, perhaps empty.
struct FileError {
    FileFault fault = FileFault::NotFound;
    std::string detail;
};

} // namespace scanner
