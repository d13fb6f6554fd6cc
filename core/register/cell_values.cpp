#include "core/register/cell_values.h"

#include "core/base/plain_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace core {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<double> numberFrom(std::string_view text) {
    const std::string_view digits = text.substr(!text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0);
    const bool plain =
        std::all_of(digits.begin(), digits.end(), [](char c) { return isDigit(c) || c == '.'; });
    if (digits.empty() || !plain || !isDigit(digits.front()) || !isDigit(digits.back()) || digits.size() > 24)
        return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || end != digits.data() + digits.size()) return std::nullopt;
    return text[0] == '-' && value != 0 ? -value : value;
}

std::string numberText(double number) {
    std::array<char, 400> digits{}; // the largest number has 309
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), number, std::chars_format::fixed, 4).ptr;
    std::string text(digits.data(), end);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text == "-0" ? "0" : text;
}

std::optional<int> countFrom(std::string_view text) {
    const auto number = numberFrom(text);
    if (!number || *number < 0 || *number > 1e6 || *number != std::floor(*number)) return std::nullopt;
    return static_cast<int>(*number);
}

std::optional<std::vector<RuleStep>> stepsFrom(std::string_view text) {
    std::vector<RuleStep> steps;
    for (const std::string& step : namesFrom(text)) {
        const auto colon = step.find(':');
        if (colon == std::string::npos) return std::nullopt;
        const std::string_view whole(step);
        const auto age = countFrom(withoutOuterBlanks(whole.substr(0, colon)));
        const auto n = numberFrom(withoutOuterBlanks(whole.substr(colon + 1)));
        if (!age || !n || *n <= 0 || (!steps.empty() && *age <= steps.back().ageMonths)) return std::nullopt;
        steps.push_back({*age, *n});
    }
    return steps;
}

std::optional<Tolerance> toleranceFrom(std::string_view text) {
    if (text == "none") return Tolerance{};
    if (text == "end_of_month") return Tolerance{Tolerance::Kind::EndOfMonth, 0};
    const auto days = text.ends_with('d') ? countFrom(text.substr(0, text.size() - 1)) : std::nullopt;
    return days ? std::optional(Tolerance{Tolerance::Kind::Days, *days}) : std::nullopt;
}

std::vector<std::string> namesFrom(std::string_view text) {
    std::vector<std::string> names;
    while (!text.empty()) {
        const auto end = std::min(text.find(';'), text.size());
        const auto name = withoutOuterBlanks(text.substr(0, end));
        if (!name.empty()) names.emplace_back(name);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return names;
}

} // namespace core
