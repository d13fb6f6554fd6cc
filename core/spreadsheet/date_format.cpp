#include "core/spreadsheet/date_format.h"

#include "core/base/calendar_day.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace core {
namespace {

/// The first section without what is quoted, escaped, padded or in brackets, in small letters.
std::string bareFormat(std::string_view code) {
    std::string bare;
    for (std::size_t i = 0; i < code.size() && code[i] != ';'; ++i) {
        if (code[i] == '\\' || code[i] == '_' || code[i] == '*') {
            ++i;
        } else if (code[i] == '"' || code[i] == '[') {
            i = code.find(code[i] == '"' ? '"' : ']', i + 1);
            if (i == std::string_view::npos) break;
        } else {
            bare += code[i] >= 'A' && code[i] <= 'Z' ? static_cast<char>(code[i] - 'A' + 'a') : code[i];
        }
    }
    return bare;
}

} // namespace

DayShown dayShownBy(std::string_view formatCode) {
    const std::string bare = bareFormat(formatCode);
    if (bare.find("general") != std::string::npos) return DayShown::None;
    const auto shows = [&](char letter) { return bare.find(letter) != std::string::npos; };
    if (shows('d')) return DayShown::Day;
    if (shows('y')) return shows('m') ? DayShown::Month : DayShown::Year;
    return shows('m') && !shows('h') && !shows('s') ? DayShown::Day : DayShown::None;
}

std::optional<DayShown> dayShownBy(int builtInFormat) {
    if (builtInFormat < 0 || builtInFormat >= 164) return std::nullopt;
    if (builtInFormat == 17) return DayShown::Month; // mmm-yy
    const bool isDay = (builtInFormat >= 14 && builtInFormat <= 16) || builtInFormat == 22 ||
                       (builtInFormat >= 27 && builtInFormat <= 31) || builtInFormat == 36 ||
                       (builtInFormat >= 50 && builtInFormat <= 58);
    return isDay ? DayShown::Day : DayShown::None;
}

std::optional<std::string> isoDayOf(double dayNumber, bool from1904) {
    if (!(dayNumber >= 1) || dayNumber > 3'000'000) return std::nullopt;
    const int number = static_cast<int>(std::floor(dayNumber));
    if (!from1904 && number == 60) return std::nullopt; // 29 February 1900
    const CalendarDay origin = from1904 ? CalendarDay::from(1904, 1, 1).value()
                                        : CalendarDay::from(1899, 12, number < 60 ? 31 : 30).value();
    if (origin.number() + number > CalendarDay::from(9999, 12, 31)->number()) return std::nullopt;
    return origin.plusDays(number).iso();
}

std::string asShown(const std::string& isoDay, DayShown shown) {
    if (shown == DayShown::Year && isoDay.ends_with("-01-01")) return isoDay.substr(0, 4);
    const bool isFirst = isoDay.size() == 10 && isoDay.ends_with("-01");
    return shown == DayShown::Month && isFirst ? isoDay.substr(0, 7) : isoDay;
}

std::string numberAsShown(double number, std::string_view zeros) {
    if (!std::isfinite(number)) return "?";
    std::array<char, 512> digits{}; // the longest double has 309 before its point, or 343 behind it
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), number, std::chars_format::fixed).ptr;
    std::string text(digits.data(), end);
    if (text == "-0") text = "0";
    const bool isWhole = text.find_first_not_of("0123456789") == std::string::npos;
    if (isWhole && text.size() < zeros.size()) text.insert(0, zeros.size() - text.size(), '0');
    return text;
}

} // namespace core
