#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// What is left of the print of a Code 128 that was read, 4 (as new) to 0 (about to fail), after the idea of
/// ISO/IEC 15416: some lines across the bars are each graded by their worst place (a character that is little
/// like its shape, a quiet zone that is not free; 0 where it does not read), their mean counts, and the
/// contrast of the whole. Blur costs little, as the shapes are blurred alike. Nullopt when no line can be
/// laid.
std::optional<double> barGradeOf(const GreyPicture& picture, const SeenCode& code);

} // namespace scanner::reader
