#pragma once

#include <QImage>

#include <filesystem>
#include <string>
#include <vector>

namespace support {

enum class VideoKind { Vp8InMatroska, MjpegInAvi, MjpegInMovTurned };

/// Writes the pictures, all of one even size, as a video file of so many frames a second. MjpegInMovTurned
/// carries the tag of a phone held upright: a player has to turn each picture a quarter clockwise. Throws
/// when it cannot.
void writeVideo(const std::filesystem::path& path, const std::vector<QImage>& pictures, int framesPerSecond,
                VideoKind kind);

} // namespace support
