#pragma once

#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <array>
#include <optional>
#include <vector>

namespace scanner::reader {

/// How a quadrilateral of a picture and its margin looked, for finding it again in the next frame.
class PatchMemory {
public:
    PatchMemory(const PictureLevels& picture, const Quad& corners);

    /// By how many pixels the patch has moved since `corners`, up to about 44 either way; nullopt when
    /// nothing there looks like it.
    std::optional<Point> seek(const PictureLevels& picture, const Quad& corners) const;

private:
    static constexpr int side = 24;

    static std::vector<Point> places(const Quad& corners);
    double likeness(const GreyPicture& picture, const std::vector<Point>& places, double scale, Point shift,
                    int every) const;

    std::vector<float> m_look; ///< side × side, zero mean and unit length
};

} // namespace scanner::reader
