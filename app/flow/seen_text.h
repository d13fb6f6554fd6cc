#pragma once

#include "core/tag/scanned_text.h"

#include <optional>
#include <string>

namespace scanner {
struct SeenCode;
}

namespace app {

/// What the scanner saw, as core takes it.
core::ScannedText scannedText(const scanner::SeenCode& code);

/// What a hand-held scanner would type for the symbol: element strings with their symbology identifier, so
/// that nobody has to guess later; another text as it is.
std::string typedText(const scanner::SeenCode& code);

/// The tag code that a scanned text carries: the text itself, exactly as printed, or the serial number (AI
/// 21) of a GS1 element string. Empty when there is none. `gs1`: the symbol says that it holds element
/// strings, so the text may begin with any of them; else it must look like a maker's label.
std::optional<std::string> tagOfText(const std::string& text, bool gs1 = false);

/// Whether the text carries a tag code; for the scanner, which does not know the trade.
bool isTagText(const std::string& text);

} // namespace app
