#include "core/tag/gs1_identifiers.h"

#include "core/base/calendar_day.h"
#include "core/base/error_code.h"

#include <algorithm>

namespace core {
namespace {

constexpr Gs1Component digits(int least, int most) {
    return {'N', least, most, Gs1Lint::None};
}
constexpr Gs1Component text(int least, int most) {
    return {'X', least, most, Gs1Lint::None};
}
constexpr Gs1Component checked(int length) {
    return {'N', length, length, Gs1Lint::CheckDigit};
}
constexpr Gs1Component date{'N', 6, 6, Gs1Lint::Date};
constexpr Gs1Component zero{'N', 1, 1, Gs1Lint::Zero};
constexpr Gs1Component nothing{};

constexpr Gs1Identifier one(std::string_view ai, Gs1Component first, Gs1Component second = nothing,
                            Gs1Component third = nothing) {
    return {ai, ai, false, {first, second, third}};
}
constexpr Gs1Identifier fixed(std::string_view first, std::string_view last, Gs1Component component) {
    return {first, last, true, {component, nothing, nothing}};
}

constexpr std::array table{
    fixed("00", "00", checked(18)),
    fixed("01", "02", checked(14)),
    one("10", text(1, 20)),
    fixed("11", "13", date),
    fixed("15", "17", date),
    fixed("20", "20", digits(2, 2)),
    one("21", text(1, 20)),
    one("22", text(1, 20)),
    one("240", text(1, 30)),
    one("241", text(1, 30)),
    one("243", text(1, 20)),
    one("250", text(1, 30)),
    one("251", text(1, 30)),
    one("254", text(1, 20)),
    one("30", digits(1, 8)),
    fixed("3100", "3105", digits(6, 6)),
    one("37", digits(1, 8)),
    one("400", text(1, 30)),
    fixed("410", "417", checked(13)),
    one("422", digits(3, 3)),
    one("8003", zero, checked(13), text(0, 16)),
    one("8004", digits(4, 4), text(0, 26)),
    one("8006", checked(14), digits(4, 4)),
    one("8020", text(1, 25)),
    one("8200", text(1, 70)),
    one("90", text(1, 30)),
    Gs1Identifier{"91", "99", false, {text(1, 90), nothing, nothing}},
};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool isOfSet82(char c) {
    constexpr std::string_view marks = "!\"%&'()*+,-./:;<=>?_";
    return isDigit(c) || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || marks.find(c) != marks.npos;
}

int number(std::string_view two) {
    return (two[0] - '0') * 10 + (two[1] - '0');
}

/// YYMMDD in the form all centuries share: a leap day needs the year's century only for 00.
std::optional<ErrorCode> dateFault(std::string_view value) {
    const int month = number(value.substr(2));
    const int day = number(value.substr(4));
    if (month < 1 || month > 12) return ErrorCode::LabelMonth;
    if (day > 0 && !CalendarDay::from(2000 + number(value), month, day)) return ErrorCode::LabelDay;
    return std::nullopt;
}

std::optional<ErrorCode> fault(const Gs1Component& component, std::string_view value) {
    if (component.set == 'N' && !std::all_of(value.begin(), value.end(), isDigit))
        return ErrorCode::LabelCharacter;
    if (!std::all_of(value.begin(), value.end(), isOfSet82)) return ErrorCode::LabelCharacter;
    switch (component.lint) {
    case Gs1Lint::CheckDigit:
        if (hasGs1CheckDigit(value)) return std::nullopt;
        return ErrorCode::LabelCheckDigit;
    case Gs1Lint::Date:
        return dateFault(value);
    case Gs1Lint::Zero:
        if (value == "0") return std::nullopt;
        return ErrorCode::LabelFirstDigit;
    default:
        return std::nullopt;
    }
}

} // namespace

std::span<const Gs1Identifier> gs1Identifiers() {
    return table;
}

const Gs1Identifier* gs1IdentifierAt(std::string_view text, std::size_t& length) {
    for (const Gs1Identifier& identifier : table) {
        const auto candidate = text.substr(0, identifier.first.size());
        const bool isWhole = candidate.size() == identifier.first.size();
        if (isWhole && identifier.first <= candidate && candidate <= identifier.last &&
            std::all_of(candidate.begin(), candidate.end(), isDigit)) {
            length = candidate.size();
            return &identifier;
        }
    }
    return nullptr;
}

bool hasGs1CheckDigit(std::string_view digits) {
    int sum = 0;
    int weight = 1;
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, weight = 4 - weight)
        sum += (*digit - '0') * weight;
    return !digits.empty() && sum % 10 == 0;
}

std::optional<ErrorCode> gs1Fault(const Gs1Identifier& identifier, std::string_view value) {
    if (static_cast<int>(value.size()) < identifier.least() ||
        static_cast<int>(value.size()) > identifier.most())
        return ErrorCode::LabelLength;
    for (const Gs1Component& component : identifier.components) {
        const auto piece = value.substr(0, static_cast<std::size_t>(component.most));
        if (const auto found = fault(component, piece)) return found;
        value.remove_prefix(piece.size());
    }
    return std::nullopt;
}

} // namespace core
