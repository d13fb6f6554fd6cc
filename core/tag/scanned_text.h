#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a reader took from one symbol, or what was typed in its place.
struct ScannedText {
    std::string text;   ///< without the symbology identifier in front of it
    bool isGs1 = false; ///< element strings of a maker's label; else the text stands for itself
    /// What is left of the symbol's print, 4 (as new) to 0, where a camera saw it and could tell.
    std::optional<double> print = {};

    /// Of a reader that knows the symbol: `isGs1` is what the symbol says of itself. One that says nothing
    /// may hold a maker's label all the same.
    static ScannedText ofSymbol(std::string_view text, bool isGs1);

    /// As a person or a hand-held scanner types it. A scanner may put the symbology identifier (ISO/IEC
    /// 15424) in front: `]Q1` of a QR code, `]d2` of a GS1 Data Matrix …
    static ScannedText typed(std::string_view line);

    bool operator==(const ScannedText&) const = default;
};

} // namespace core
