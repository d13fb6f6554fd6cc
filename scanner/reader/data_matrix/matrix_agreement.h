#pragma once

#include "scanner/reader/data_matrix/data_matrix.h"

#include <optional>

namespace scanner::reader {

/// `soft` has as many modules a side as `size` says. Where more may be wrong than the Reed-Solomon code
/// mends: the word that agrees best with the soft modules (negative: dark), if little speaks against it and
/// clearly more against every other word; nothing says so yet of its text. Of symbols of 14 or 16 modules a
/// side, as they are for ten characters; nullopt for others.
std::optional<MatrixReading> mendByAgreement(const GridSamples& soft, const MatrixSize& size);

} // namespace scanner::reader
