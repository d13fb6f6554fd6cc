#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// What a maker's own label (GS1 element string) says of an item. Empty where the label does not carry it.
struct MakerLabel {
    std::string gtin;                  ///< 14 digits; AI 01
    std::string serial;                ///< AI 21
    std::string batch;                 ///< AI 10
    std::optional<PartialDay> made;    ///< AI 11; day 00 gives a month
    std::optional<PartialDay> stamped; ///< expiry, AI 17, else best before, AI 15; day 00 gives a month
};

/// Reads the element string as a reader transmits it, GS (0x1D) as separator, or as it is printed for people:
/// (01)…(17)…; a symbology identifier in front (d2, Q3, C1, e0 after a square bracket) may be there or not.
/// `currentYear` places two-digit years: 49 back to 50 ahead (GS1 General Specifications 7.12). BadInput,
/// naming the element, for an identifier that is not known, a wrong length or character, a check digit that
/// fails, a day that does not exist, or one identifier with two values.
Result<MakerLabel> parseMakerLabel(std::string_view text, int currentYear);

/// Without the symbology identifier of a GS1 symbol in front, if one is there.
std::string_view withoutGs1Symbol(std::string_view text);

/// Whether it is worth parsing: a GS1 symbology identifier, a GS, or a GTIN in front.
bool looksLikeMakerLabel(std::string_view text);

} // namespace core
