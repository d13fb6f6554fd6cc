#include "scanner/reader/gs1_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace scanner::reader {
namespace {

struct ElementKind {
    std::string_view identifier;
    std::size_t length; ///< of the value; the longest if it varies
    bool varies;
    bool digits;
    bool checked; ///< the value ends with a check digit
};

constexpr std::array<ElementKind, 18> kinds{{{"00", 18, false, true, true},
                                             {"01", 14, false, true, true},
                                             {"02", 14, false, true, true},
                                             {"10", 20, true, false, false},
                                             {"11", 6, false, true, false},
                                             {"12", 6, false, true, false},
                                             {"13", 6, false, true, false},
                                             {"15", 6, false, true, false},
                                             {"16", 6, false, true, false},
                                             {"17", 6, false, true, false},
                                             {"20", 2, false, true, false},
                                             {"21", 20, true, false, false},
                                             {"22", 20, true, false, false},
                                             {"30", 8, true, true, false},
                                             {"37", 8, true, true, false},
                                             {"240", 30, true, false, false},
                                             {"241", 30, true, false, false},
                                             {"250", 30, true, false, false}}};

bool isDigits(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

bool gs1CheckDigitAgrees(std::string_view digits) {
    if (digits.size() < 2 || !isDigits(digits)) return false;
    int sum = 0;
    for (std::size_t i = 0; i < digits.size(); ++i)
        sum += (digits[digits.size() - 1 - i] - '0') * (i % 2 ? 3 : 1);
    return sum % 10 == 0;
}

bool provesItselfAsGs1(std::string_view text, const TextTest& isTag) {
    bool proved = false;
    while (!text.empty()) {
        const auto kind = std::find_if(kinds.begin(), kinds.end(),
                                       [&](const ElementKind& k) { return text.starts_with(k.identifier); });
        if (kind == kinds.end()) return false;
        text.remove_prefix(kind->identifier.size());
        const std::string_view value =
            kind->varies ? text.substr(0, text.find('\x1d')) : text.substr(0, kind->length);
        const bool fits =
            kind->varies ? !value.empty() && value.size() <= kind->length : value.size() == kind->length;
        if (!fits || (kind->digits && !isDigits(value))) return false;
        if (kind->checked && !gs1CheckDigitAgrees(value)) return false;
        proved |= kind->checked || (kind->identifier == "21" && isTag && isTag(std::string(value)));
        text.remove_prefix(value.size());
        if (text.starts_with('\x1d')) text.remove_prefix(1);
    }
    return proved;
}

} // namespace scanner::reader
