#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <vector>

namespace scanner::reader {

/// Whether the grain of a picture is strong beside its light, as in frames taken in the dark with the
/// camera's gain turned up.
bool isNoisy(const GreyPicture& picture);

/// The mean of the newest frames of a stream, each laid over the first block by block, so that the grain
/// goes and the print stays. What changes between frames (another label in the place) begins anew there. A
/// camera that has moved far begins anew altogether.
class AddedFrames {
public:
    void add(const GreyPicture& frame);
    void clear() { m_frames = 0; }

    /// The mean, as the first of its frames lay.
    const GreyPicture& picture() const { return m_picture; }
    /// By how many pixels a place of the mean has moved in the newest frame.
    Point shiftAt(Point place) const;

private:
    /// How a block of the mean lies in the newest frame.
    struct Block {
        double x = 0, y = 0;   ///< its shift, pixels
        double difference = 0; ///< mean square, grey levels
        bool changed = false;
    };

    void begin(const GreyPicture& frame);
    void smoothShifts();
    void markChanges();
    void blend(const GreyPicture& frame);
    void blendAtEdge(const GreyPicture& frame, int left, int top, const Block& block, float weight);
    Block between(double column, double row) const;

    int m_frames = 0;
    int m_columns = 0, m_rows = 0;
    std::vector<Block> m_blocks;
    std::vector<float> m_mean;
    GreyPicture m_picture;
};

} // namespace scanner::reader
