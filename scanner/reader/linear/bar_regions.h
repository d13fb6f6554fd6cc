#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <vector>

namespace scanner::reader {

/// A patch of parallel bars: a parallelogram, since under tilt the bars do not stand square to their row.
struct BarRegion {
    Point centre;
    Point along;       ///< unit vector of the row of bars
    Point upright;     ///< unit vector of the bars
    double length = 0; ///< pixels, along the row
    double height = 0; ///< pixels, along the bars
};

/// Sums of gradient products over cells of 8 pixels: the structure tensor of each.
struct BarCells {
    struct Tensor {
        float xx = 0, xy = 0, yy = 0;
    };
    int columns = 0, rows = 0;
    std::vector<Tensor> cells;
};

BarCells barCellsOf(const GreyPicture& picture);

/// How regions are told apart: usually each cell with its neighbours; faint bars in a picture that has been
/// smoothed; strong ones each cell by itself, so that what runs the same way beside the label is left out.
enum class BarSearch { Usual, Faint, Parted };

/// Patches whose edges all run one way, by the structure tensors; largest first, 40 at most.
std::vector<BarRegion> findBarRegions(const BarCells& cells, BarSearch search = BarSearch::Usual);

} // namespace scanner::reader
