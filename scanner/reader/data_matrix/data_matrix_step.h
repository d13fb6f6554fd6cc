#pragma once

#include "scanner/reader/data_matrix/dark_patches.h"
#include "scanner/reader/data_matrix/matrix_places.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/time_budget.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <optional>
#include <vector>

namespace scanner::reader {

/// A symbol that was found but not read flat.
struct UnreadMatrix {
    GridFit fit;
    int modules; ///< a side
    bool negative;
};

/// How sure it is that the patch is a symbol's, and of its corners: of any dark patch the sides must show
/// themselves clearly, on a label dirt may have broken them.
enum class PatchTrust { Any, OneCornerLost, OnLabel };

/// Reads the Data Matrix that may lie in a dark patch: finds its solid edges, its size by the alternating
/// ones, fits the grid, mends the codewords. Nothing when the time is spent before. `unread` takes fits that
/// found a symbol but could not read it.
std::optional<SeenCode> readDataMatrix(const PictureLevels& picture, const Quad& patch, bool negative,
                                       const TagTest& isTag, const TimeBudget& budget = {},
                                       std::vector<UnreadMatrix>* unread = nullptr,
                                       PatchTrust trust = PatchTrust::Any);

/// The same where the solid sides and the size are known but for some doubt, and the corners to a module or
/// two.
std::optional<SeenCode> readDataMatrixAt(const PictureLevels& picture, const MatrixPlace& place,
                                         bool negative, const TagTest& isTag, const TimeBudget& budget = {},
                                         std::vector<UnreadMatrix>* unread = nullptr);

/// The same on a bent label, from a flat fit that found it but could not read it.
std::optional<SeenCode> readBentDataMatrix(const PictureLevels& picture, const UnreadMatrix& unread,
                                           const TagTest& isTag, const TimeBudget& budget = {});

} // namespace scanner::reader
