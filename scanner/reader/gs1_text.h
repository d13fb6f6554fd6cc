#pragma once

#include "scanner/reader/text_test.h"

#include <string_view>

namespace scanner::reader {

/// Whether a text is a row of GS1 element strings that proves itself: every application identifier known
/// here, every value of its length and kind, and at least one check digit that agrees or a serial number that
/// is a tag. FNC1 is the byte 0x1D. Source: GS1 General Specifications, sections 3 (element strings) and 7.9
/// (check digit).
bool provesItselfAsGs1(std::string_view text, const TextTest& isTag = {});

/// The modulo 10 check digit, weights 3 and 1 from the right; the last digit is the check digit.
bool gs1CheckDigitAgrees(std::string_view digits);

} // namespace scanner::reader
