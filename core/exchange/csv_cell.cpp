#include "core/exchange/csv_cell.h"

#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/register/cell_values.h"
#include "core/tag/tag_code.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace core {
namespace {

constexpr double largestCount = 1e6;
constexpr double largestNumber = 1e9;

CellReading faulty(Error fault) {
    return {std::nullopt, std::move(fault)};
}
CellReading faulty(ErrorCode code, std::string_view text) {
    return faulty({code, {shown(text)}});
}
CellReading value(std::string text) {
    return {std::move(text), {}};
}

bool isFormulaStart(std::string_view text) {
    static constexpr std::array<std::string_view, 11> starts{
        "=", "+", "-", "@", "\t", "\r", "\n", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
    return std::any_of(starts.begin(), starts.end(), [&](auto start) { return text.starts_with(start); });
}

std::string_view withoutApostrophes(std::string_view text) {
    return text.substr(std::min(text.find_first_not_of('\''), text.size()));
}

std::string canonicalNumber(std::string_view text) {
    const bool negative = text.starts_with('-');
    text.remove_prefix(negative || text.starts_with('+') ? 1 : 0);
    const auto point = std::min(text.find('.'), text.size());
    std::string_view whole = text.substr(0, point);
    std::string_view fraction = text.substr(std::min(point + 1, text.size()));
    whole.remove_prefix(std::min(whole.find_first_not_of('0'), whole.size() - 1));
    fraction = fraction.substr(0, fraction.find_last_not_of('0') + 1);
    const std::string digits = fraction.empty() ? std::string(whole) : fmt::format("{}.{}", whole, fraction);
    return negative && digits != "0" ? '-' + digits : digits;
}

CellReading readNumber(std::string_view text, bool mayBeNegative, bool whole) {
    const auto number = numberFrom(text);
    if (!number && text.find(',') != std::string_view::npos)
        return faulty(ErrorCode::CellNumberWithComma, text);
    if (!number) return faulty(ErrorCode::CellNotANumber, text);
    if (*number < 0 && !mayBeNegative) return faulty(ErrorCode::CellNegative, text);
    const std::string canonical = canonicalNumber(text);
    if (whole && canonical.find('.') != std::string::npos) return faulty(ErrorCode::CellNotWhole, text);
    const double largest = whole ? largestCount : largestNumber;
    if (*number > largest || *number < -largest)
        return faulty({ErrorCode::CellTooLarge, {shown(text), fmt::format("{:.0f}", largest)}});
    return value(canonical);
}

CellReading readDay(const Column& column, std::string_view text) {
    const auto day = PartialDay::parse(text);
    if (day && column.type == CellType::Day) return value(day->text());
    if (day) return value((column.isLastDay ? day->lastDay() : day->firstDay()).iso());
    const bool shaped = text.size() == 10 && text[4] == '-' && text[7] == '-';
    return faulty(shaped ? ErrorCode::CellNotInCalendar : ErrorCode::CellNotADay, text);
}

CellReading readChoice(std::string_view text, std::span<const std::string_view> choices) {
    const std::string folded = foldName(text);
    if (std::find(choices.begin(), choices.end(), folded) != choices.end()) return value(folded);
    return faulty({ErrorCode::CellNotAChoice, {shown(text), fmt::format("{}", fmt::join(choices, ", "))}});
}

ErrorCode codeOfOtherTag(char wanted) {
    if (wanted == 'K') return ErrorCode::CellNotAKitTag;
    if (wanted == 'S') return ErrorCode::CellNotAShelfTag;
    return wanted == 'B' ? ErrorCode::CellNotABoatTag : ErrorCode::CellNotAPersonTag;
}

CellReading readTag(std::string_view text, char tagClass) {
    const auto code = TagCode::parse(text);
    if (!code) {
        Error fault = code.error();
        fault.arguments.front() = shown(text); // what was typed
        return faulty(std::move(fault));
    }
    if (static_cast<char>(code->tagClass()) != tagClass) return faulty(codeOfOtherTag(tagClass), text);
    return value(code->text());
}

/// GS1 General Specifications, 7.9 "Check digit calculations": weights 3 and 1 from the right, sum divisible
/// by ten.
bool hasGoodCheckDigit(std::string_view digits) {
    int sum = 0;
    for (std::size_t i = 0; i < digits.size(); ++i)
        sum += (digits[digits.size() - 1 - i] - '0') * (i % 2 == 0 ? 1 : 3);
    return sum % 10 == 0;
}

CellReading readGtin(std::string_view text) {
    const bool digitsOnly =
        std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    const auto size = text.size();
    if (!digitsOnly || (size != 8 && (size < 12 || size > 14))) return faulty(ErrorCode::CellNotAGtin, text);
    if (!hasGoodCheckDigit(text)) return faulty(ErrorCode::CellGtinCheckDigit, text);
    return value(std::string(14 - size, '0') + std::string(text));
}

CellReading readSteps(std::string_view text) {
    if (!stepsFrom(text) || stepsFrom(text)->empty()) return faulty(ErrorCode::CellNotSteps, text);
    std::string canonical;
    for (const std::string& step : namesFrom(text)) {
        const std::string_view whole(step);
        const auto colon = whole.find(':');
        canonical += fmt::format("{}{}:{}", canonical.empty() ? "" : ";",
                                 canonicalNumber(withoutOuterBlanks(whole.substr(0, colon))),
                                 canonicalNumber(withoutOuterBlanks(whole.substr(colon + 1))));
    }
    return value(canonical);
}

CellReading readTolerance(std::string_view text) {
    const std::string folded = foldName(text);
    const auto tolerance = toleranceFrom(folded);
    if (!tolerance) return faulty(ErrorCode::CellNotATolerance, text);
    return value(tolerance->kind == Tolerance::Kind::Days ? fmt::format("{}d", tolerance->days) : folded);
}

CellReading reading(Result<std::string> given) {
    return given ? value(std::move(given).value()) : faulty(given.error());
}

CellReading readNames(std::string_view text) {
    const std::vector<std::string> names = namesFrom(text);
    for (const std::string& name : names)
        if (auto given = nameFrom(name); !given) return faulty(given.error());
    return value(fmt::format("{}", fmt::join(names, ";")));
}

CellReading readTyped(const Column& column, std::string_view text) {
    static constexpr std::array<std::string_view, 2> yesNo{"yes", "no"};
    switch (column.type) {
    case CellType::Text:
    case CellType::Name:
        return reading(nameFrom(text));
    case CellType::Names:
        return readNames(text);
    case CellType::YesNo:
        return readChoice(text, yesNo);
    case CellType::Choice:
        return readChoice(text, column.choices);
    case CellType::Count:
        return readNumber(text, false, true);
    case CellType::Amount:
        return readNumber(text, false, false);
    case CellType::Number:
        return readNumber(text, true, false);
    case CellType::Day:
    case CellType::ExactDay:
        return readDay(column, text);
    case CellType::Tag:
        return readTag(text, column.tagClass);
    case CellType::Steps:
        return readSteps(text);
    case CellType::Tolerance:
        return readTolerance(text);
    case CellType::Gtin:
        return readGtin(text);
    }
    return {};
}

} // namespace

bool isProse(const Column& column) {
    return column.type == CellType::Text && (column.name == "note" || column.name == "source" ||
                                             column.name == "text" || column.name == "closing");
}

CellReading readCell(const Column& column, std::string_view raw) {
    const std::string_view bare = withoutOuterBlanks(raw);
    if (bare.empty()) return {};
    const bool isText = column.type == CellType::Text || column.type == CellType::Name;
    if (isText && !isProse(column)) {
        if (bare == "-") return value({});
        return readTyped(column, withoutOuterBlanks(withoutFormulaGuard(raw)));
    }
    const Result<std::string> given = proseFrom(withoutFormulaGuard(raw));
    if (!given) return faulty(given.error());
    if (withoutOuterBlanks(*given).empty()) return {}; // a guarded line break, and nothing else
    if (isProse(column)) return value(raw == "-" ? std::string() : *given);
    return bare == "-" ? value({}) : readTyped(column, withoutOuterBlanks(*given));
}

std::string writtenCell(const Column& column, const std::string& stored) {
    const bool isNumber = column.type == CellType::Number && numberFrom(stored);
    return isNumber ? stored : withFormulaGuard(stored);
}

std::string withFormulaGuard(std::string_view text) {
    return isFormulaStart(withoutApostrophes(text)) ? '\'' + std::string(text) : std::string(text);
}

std::string_view withoutFormulaGuard(std::string_view text) {
    return text.starts_with('\'') && isFormulaStart(withoutApostrophes(text)) ? text.substr(1) : text;
}

} // namespace core
