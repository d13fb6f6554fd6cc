#pragma once

#include <QPainterPath>

#include <string>

namespace app {

/// A club tag's symbol: QR version 1, level H (ISO/IEC 18004), which ten characters of a tag code fill
/// exactly.
inline constexpr int symbolModules = 21;
inline constexpr int quietModules = 4; ///< that the standard asks for on each side

/// The dark modules as one path, a module being 1 × 1, the symbol's top left corner at (0, 0). One path, so
/// that no seam shows between neighbours when it is filled. `code` is a tag code.
QPainterPath symbolPath(const std::string& code);

} // namespace app
