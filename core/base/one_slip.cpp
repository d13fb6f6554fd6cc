#include "core/base/one_slip.h"

#include <algorithm>

namespace core {

bool isOneSlip(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > 1 || a == b) return false;
    const auto differs = std::ranges::mismatch(a, b);
    const auto at = static_cast<std::size_t>(differs.in1 - a.begin());
    const std::string_view restOfA = a.substr(at);
    const std::string_view restOfB = b.substr(at);
    if (a.size() < b.size()) return restOfA == restOfB.substr(1);
    if (restOfA.substr(1) == restOfB.substr(1)) return true;
    return restOfA.size() >= 2 && restOfA[0] == restOfB[1] && restOfA[1] == restOfB[0] &&
           restOfA.substr(2) == restOfB.substr(2);
}

bool isLikelySlip(std::string_view a, std::string_view b) {
    if (!isOneSlip(a, b) || std::min(a.size(), b.size()) < 3) return false;
    const auto lastWord = [](std::string_view text) { return text.substr(text.find_last_of(' ') + 1); };
    const auto isNumber = [](char c) { return c >= '0' && c <= '9'; };
    return lastWord(a).size() > 1 && lastWord(b).size() > 1 && std::ranges::none_of(a, isNumber);
}

} // namespace core
