#pragma once

#include "scanner/reader/image/grid_pattern.h"
#include "scanner/reader/image/grid_sampling.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace scanner::reader {

/// A square Data Matrix ECC 200 symbol of one region (ISO/IEC 16022, table 7).
struct MatrixSize {
    int modules; ///< a side, with the finder
    int data;    ///< codewords
    int checks;  ///< Reed–Solomon codewords
};

inline constexpr std::size_t matrixSizeCount = 9;

/// Sizes 10 to 26.
std::span<const MatrixSize> matrixSizes();

/// The solid left and lower edges, the alternating upper and right edges, and the quiet zone.
const GridPattern& matrixPattern(int modules);

/// A symbol's codewords after mending, drawn again as a whole symbol (negative: dark).
struct MatrixReading {
    GridSamples modules;
    int erased = 0;
    int errors = 0;
    int checks = 0;
    int changed = 0;          ///< codewords that differ from what the modules say; not known by agreement
    bool byAgreement = false; ///< more was wrong than the code mends

    /// Fewer than two check codewords were left to prove the reading, or many codewords were given up.
    bool needsGuesswork() const {
        return byAgreement || erased + 2 * errors > checks - 2 || erased > checks / 2;
    }
};

/// The codeword of each module, row by row; -1 where there is none.
std::vector<int> matrixCodewords(const MatrixSize& size);

/// `soft` has as many modules a side as `size` says. What the soft modules (negative: dark) say of each bit
/// of the codewords, most significant first: above 0 for a one.
std::vector<float> matrixEvidence(const GridSamples& soft, const MatrixSize& size);

/// The whole symbol (negative: dark) from its codewords.
GridSamples drawnMatrix(const std::vector<std::uint8_t>& word, const MatrixSize& size);

/// Mends what the soft modules (negative: dark) tell, giving up 0 to `mostErased` least certain codewords.
std::optional<MatrixReading> mendMatrix(const GridSamples& soft, const MatrixSize& size, int fewestErased,
                                        int mostErased);

} // namespace scanner::reader
