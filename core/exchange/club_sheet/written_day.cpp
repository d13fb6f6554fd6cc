#include "core/exchange/club_sheet/written_day.h"

#include "core/base/calendar_day.h"
#include "core/exchange/club_sheet/heading_words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <vector>

namespace core {
namespace {

/// A run of digits or of letters, and what stands before it.
struct Piece {
    std::string text;
    std::string before;
    bool isNumber = false;

    int number() const {
        int value = -1;
        if (isNumber && text.size() <= 4) std::from_chars(text.data(), text.data() + text.size(), value);
        return value;
    }
    bool isYear() const { return isNumber && text.size() == 4; }
};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 128;
}

/// Small letters, umlauts written out; other marks stay.
std::string lettersPlain(std::string_view text) {
    std::string plain = foldName(text);
    for (const auto& [umlaut, letters] : {std::pair("ä", "ae"), {"\u00A0", " "}})
        for (auto at = plain.find(umlaut); at != std::string::npos; at = plain.find(umlaut))
            plain.replace(at, std::string_view(umlaut).size(), letters);
    return plain;
}

std::vector<Piece> piecesOf(const std::string& text) {
    std::vector<Piece> pieces;
    std::string before;
    for (std::size_t i = 0; i < text.size();) {
        const bool isNumber = isDigit(text[i]);
        if (!isNumber && !isLetter(text[i])) {
            before += text[i++];
            continue;
        }
        std::size_t end = i;
        while (end < text.size() && (isNumber ? isDigit(text[end]) : isLetter(text[end])))
            ++end;
        pieces.push_back({text.substr(i, end - i), std::move(before), isNumber});
        before.clear();
        i = end;
    }
    return pieces;
}

/// A time of day behind the day: `T00:00:00`, ` 08:30`.
void dropTime(std::string& text) {
    const auto colon = text.find(':');
    if (colon == std::string::npos || colon < 3) return;
    const auto cut = text.find_last_of(" t", colon);
    if (cut != std::string::npos && cut > 0 && (text[cut] == ' ' || isDigit(text[cut - 1]))) text.resize(cut);
}

int monthOf(const std::string& word) {
    static constexpr std::array<std::string_view, 12> names{"january|januar|jan|jaenner|jaen",
                                                            "february|februar|feb|feber",
                                                            "march|maerz|mar|mrz|maer",
                                                            "april|apr",
                                                            "may|mai",
                                                            "june|juni|jun",
                                                            "july|juli|jul",
                                                            "august|aug",
                                                            "september|sept|sep",
                                                            "october|oktober|oct|okt",
                                                            "november|nov",
                                                            "december|dezember|dec|dez"};
    for (std::size_t month = 0; month < names.size(); ++month) {
        std::string_view words = names[month];
        while (!words.empty()) {
            const auto bar = std::min(words.find('|'), words.size());
            if (words.substr(0, bar) == word) return static_cast<int>(month) + 1;
            words.remove_prefix(std::min(bar + 1, words.size()));
        }
    }
    return 0;
}

std::optional<int> yearOf(const Piece& piece) {
    const int year = piece.number();
    if (piece.isYear()) return year >= 1900 && year <= 2199 ? std::optional(year) : std::nullopt;
    if (piece.text.size() != 2) return std::nullopt;
    return year >= 69 ? 1900 + year : 2000 + year;
}

std::string padded(int number, std::size_t digits) {
    std::string text = std::to_string(number);
    return std::string(digits - std::min(digits, text.size()), '0') + text;
}

WrittenDay dayOf(std::optional<int> year, int month, int day) {
    const auto found = year ? CalendarDay::from(*year, month, day) : std::nullopt;
    return {found ? found->iso() : std::string()};
}

WrittenDay monthIn(std::optional<int> year, int month) {
    if (!year || month < 1 || month > 12) return {};
    return {padded(*year, 4) + '-' + padded(month, 2)};
}

WrittenDay ofThreeNumbers(const std::vector<Piece>& pieces, std::optional<DayOrder> order) {
    const int first = pieces[0].number();
    const int second = pieces[1].number();
    if (pieces[0].isYear()) return dayOf(yearOf(pieces[0]), second, pieces[2].number());
    const auto year = yearOf(pieces[2]);
    const WrittenDay dayFirst = dayOf(year, second, first);
    const WrittenDay monthFirst = dayOf(year, first, second);
    if (order) return *order == DayOrder::DayFirst ? dayFirst : monthFirst;
    if (dayFirst.text.empty()) return monthFirst;
    const bool byStops = pieces[1].before.starts_with('.');
    if (byStops || monthFirst.text.empty() || first == second) return dayFirst;
    return {{}, true};
}

WrittenDay ofTwoNumbers(const std::vector<Piece>& pieces) {
    if (pieces[0].isYear()) return monthIn(yearOf(pieces[0]), pieces[1].number());
    // 03/27 is a month and year; 03/12 may be a day without its year.
    if (!pieces[1].isYear() && pieces[1].number() <= 12) return {};
    return monthIn(yearOf(pieces[1]), pieces[0].number());
}

/// 20260314, or a year.
WrittenDay ofOneNumber(const std::string& digits) {
    if (digits.size() == 8) {
        const auto day =
            CalendarDay::parse(digits.substr(0, 4) + '-' + digits.substr(4, 2) + '-' + digits.substr(6));
        return {day && day->year() >= 1900 && day->year() <= 2199 ? day->iso() : std::string()};
    }
    const Piece piece{digits, {}, true};
    return piece.isYear() && yearOf(piece) ? WrittenDay{digits} : WrittenDay{};
}

bool isOrdinal(const std::string& word) {
    return word == "st" || word == "nd" || word == "rd" || word == "th" || word == "of";
}

/// 14 March 2026, March 14, 2026, 2026 March 14, Mar-26.
WrittenDay withMonthName(const std::vector<Piece>& pieces, std::size_t name) {
    const int month = monthOf(pieces[name].text);
    std::vector<Piece> numbers;
    for (const Piece& piece : pieces)
        if (piece.isNumber) numbers.push_back(piece);
    if (month == 0 || numbers.empty() || numbers.size() > 2) return {};
    if (numbers.size() == 1) return monthIn(yearOf(numbers[0]), month);
    if (numbers[0].isYear()) return dayOf(yearOf(numbers[0]), month, numbers[1].number());
    return dayOf(yearOf(numbers[1]), month, numbers[0].number());
}

} // namespace

WrittenDay dayAsWritten(std::string_view text, std::optional<DayOrder> order) {
    std::string plain = lettersPlain(withoutOuterBlanks(text));
    dropTime(plain);
    std::vector<Piece> pieces = piecesOf(plain);
    if (pieces.size() > 8 || plain.find(':') != std::string::npos) return {};
    std::erase_if(pieces, [](const Piece& piece) { return isOrdinal(piece.text); });
    const auto isWord = [](const Piece& piece) { return !piece.isNumber; };
    const auto words = std::count_if(pieces.begin(), pieces.end(), isWord);
    if (words > 1 || pieces.empty() || plain.find('+') != std::string::npos || plain.starts_with('-'))
        return {};
    if (words == 1)
        return withMonthName(
            pieces,
            static_cast<std::size_t>(std::find_if(pieces.begin(), pieces.end(), isWord) - pieces.begin()));
    if (pieces.size() == 3) return ofThreeNumbers(pieces, order);
    if (pieces.size() == 2) return ofTwoNumbers(pieces);
    return pieces.size() == 1 ? ofOneNumber(pieces[0].text) : WrittenDay{};
}

std::optional<std::string> monthOfNumber(std::string_view number) {
    const auto point = number.find('.');
    if (point == std::string_view::npos || point > 2 || number.size() - point > 5) return std::nullopt;
    std::string year(number.substr(point + 1));
    year.resize(4, '0');
    const WrittenDay month =
        ofTwoNumbers({{std::string(number.substr(0, point)), {}, true}, {year, ".", true}});
    return month.text.empty() ? std::nullopt : std::optional(month.text);
}

} // namespace core
