#pragma once

#include "scanner/reader/image/grid_sampling.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <optional>
#include <vector>

namespace scanner::reader {

/// A symbol as it was printed: its modules (negative: dark) and the codeword that each is of (-1: none).
struct PrintedSymbol {
    GridSamples modules;
    std::vector<int> codewords; ///< of the modules, row by row
    /// Of the modules outside the codewords, row by row: which finder or side of the border they are of.
    std::vector<int> parts;
    int checks = 0; ///< Reed–Solomon codewords
};

/// What is left of a symbol's print. The idea and the steps of `unused` are those of ISO/IEC 15415 (symbol
/// contrast, modulation, unused error correction); the measures are a camera's: what blur, slanting light and
/// exposure do to all modules alike is taken out first, so that it is the print that is graded and not the
/// picture.
struct PrintWear {
    double contrast = 0; ///< by how much ink is darker than paper, in parts of the paper's light
    double unused = 0;   ///< of the error correction, 1 to 0: codewords with a module of the other colour
    double firm = 0;     ///< the same when modules that are half gone count as gone
    /// Share of the modules that are gone, of the finder or side of the border which has lost most; one on
    /// its way to the other colour counts in part.
    double fixed = 0;

    /// 4 (as new) to 0 (about to fail).
    double grade() const;
};

/// `samples`: what is seen of it.
PrintWear wearOf(const GridSamples& samples, const PrintedSymbol& printed);

/// The grade of a symbol that was read and lies flat: a QR tag, a Data Matrix or a Code 128; nullopt for
/// others, or when the grid does not fit well.
std::optional<double> printGradeOf(const PictureLevels& picture, const SeenCode& code);

} // namespace scanner::reader
