#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scanner::reader {

/// Code 128 (ISO/IEC 15417): widths of bars and spaces of the symbol characters 0 to 105, as six digits; the
/// stop character has seven.
extern const std::array<const char*, 106> code128Widths;
extern const char* const code128Stop;

struct Code128Text {
    std::string text;
    bool gs1 = false; ///< begins with FNC1; later FNC1 are the byte 0x1D
};

/// The text of symbol characters from the start character to the last before the check character; nullopt
/// when they are not a sentence of Code 128, or use FNC2 to FNC4.
std::optional<Code128Text> code128TextOf(std::span<const int> characters);

/// Whether the check character is the weighted sum of those before it, modulo 103.
bool code128CheckAgrees(std::span<const int> charactersWithCheck);

} // namespace scanner::reader
