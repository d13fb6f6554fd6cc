#pragma once

#include "core/base/error_code.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace core {

/// What must hold of a component beside its length and characters.
enum class Gs1Lint { None, CheckDigit, Date, Zero };

/// One piece of an element: `set` N digits, X the 82 characters of GS1's character set 82.
struct Gs1Component {
    char set = 'N';
    int least = 0;
    int most = 0;
    Gs1Lint lint = Gs1Lint::None;
};

/// A run of application identifiers of one format.
struct Gs1Identifier {
    std::string_view first;
    std::string_view last;
    bool predefined = false; ///< of predefined length: no separator follows
    std::array<Gs1Component, 3> components{};

    int least() const { return components[0].least + components[1].least + components[2].least; }
    int most() const { return components[0].most + components[1].most + components[2].most; }
};

/// The identifiers that labels of kit carry; formats as in the GS1 Barcode Syntax Dictionary.
std::span<const Gs1Identifier> gs1Identifiers();

/// The identifier that `text` begins with; null if the table has none. `length` is its number of digits, 2
/// to 4.
const Gs1Identifier* gs1IdentifierAt(std::string_view text, std::size_t& length);

/// What keeps the value from the identifier's form: LabelLength, LabelCharacter, LabelCheckDigit,
/// LabelFirstDigit, LabelMonth or LabelDay (day 00 is good). Nothing when it has that form.
std::optional<ErrorCode> gs1Fault(const Gs1Identifier& identifier, std::string_view value);

/// GS1 modulo-10 check over digits, the last of them the check digit (weights 3, 1, 3 … from the right).
bool hasGs1CheckDigit(std::string_view digits);

} // namespace core
