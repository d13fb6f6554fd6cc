#pragma once

#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <optional>
#include <vector>

namespace scanner::reader {

/// One size of a picture, and how many of its pixels are one of the full picture.
struct PatchLevel {
    const GreyPicture& picture;
    double scale;
};

/// How a symbol and its margin looked, for finding it again in the next frame, and what its own modules were
/// like, for knowing it from another label in the same place.
class PatchMemory {
public:
    PatchMemory(const PictureLevels& picture, const Quad& corners, Symbology symbology);

    /// Where the symbol is now if it has moved up to about 44 pixels either way from `corners` and turned a
    /// little; nullopt when nothing there looks like it, or when what lies there is like it but says
    /// something else.
    std::optional<Quad> seek(const PictureLevels& picture, const Quad& corners) const;

private:
    /// Of the symbol's unit square, 0 to 1 both ways.
    using Places = std::vector<Point>;

    static Places marginPlaces();
    static Places ownPlaces(Symbology symbology);
    std::optional<Point> seekShift(const PictureLevels& picture, const Homography& toPicture) const;
    bool step(const PatchLevel& level, Homography& toPicture, double& likeness) const;
    Homography refined(const PictureLevels& picture, const Homography& start, double& most) const;
    bool saysTheSame(const PictureLevels& picture, const Homography& toPicture, double likeness) const;
    bool hasTheSameBars(const PictureLevels& picture, const Homography& toPicture) const;

    Symbology m_symbology;
    Places m_places, m_ownPlaces;
    std::vector<float> m_look; ///< at m_places: zero mean and unit length
    std::vector<float> m_own;  ///< at m_ownPlaces, or along a row of bars
};

} // namespace scanner::reader
