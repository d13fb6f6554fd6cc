#include "core/upkeep/same_name.h"

#include "core/register/sheets.h"

namespace core {

bool sameName(std::string_view a, std::string_view b) {
    // Nearly every pair is equal as it stands or differs in its first letter; only the rest is worth folding.
    if (a == b) return true;
    const auto isPlainLower = [](char c) { return c >= 'a' && c <= 'z'; };
    if (!a.empty() && !b.empty() && a[0] != b[0] && isPlainLower(a[0]) && isPlainLower(b[0])) return false;
    return foldName(a) == foldName(b);
}

} // namespace core
