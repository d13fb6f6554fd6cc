#pragma once

#include <optional>
#include <string>

namespace app {

/// The tag code that a scanned text carries: the text itself, exactly as printed, or the serial number (AI
/// 21) of a GS1 element string. Empty when there is none.
std::optional<std::string> tagOfText(const std::string& text);

/// Whether the text is a tag code as it is printed; for the scanner, which does not know the trade.
bool isTagText(const std::string& text);

} // namespace app
