#include "core/tag/maker_label.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/tag/gs1_identifiers.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <vector>

namespace core {
namespace {

constexpr char separator = '\x1D';
constexpr std::string_view gs1Symbols[]{"]d2", "]Q3", "]C1", "]e0"};

using Elements = std::map<std::string, std::string, std::less<>>;

/// For a message: whatever was read, in plain ASCII.
std::string shown(std::string_view text) {
    std::string plain(text.substr(0, 40));
    for (char& c : plain)
        if (c < ' ' || c > '~') c = '?';
    return plain;
}

/// Collects elements one by one; holds the first fault.
class Reading {
public:
    explicit Reading(std::string_view text)
        : m_rest(text) {}

    Result<Elements> run() {
        const bool bracketed = m_rest.starts_with('(');
        while (!m_fault && !m_rest.empty()) {
            if (bracketed)
                readBracketed();
            else
                readPlain();
        }
        if (m_fault) return *m_fault;
        if (m_elements.empty()) return Error{ErrorCode::LabelEmpty};
        return std::move(m_elements);
    }

private:
    /// As a reader transmits it: the next separator ends an element of variable length.
    void readPlain() {
        if (m_rest.front() == separator)
            return m_rest.remove_prefix(1); // leading, or not needed but tolerated
        std::size_t length{};
        const Gs1Identifier* identifier = gs1IdentifierAt(m_rest, length);
        if (!identifier) return fail(ErrorCode::LabelElementUnknown, {shown(m_rest.substr(0, 4))});
        const auto ai = take(length);
        const std::size_t end =
            identifier->predefined ? static_cast<std::size_t>(identifier->most()) : m_rest.find(separator);
        add(*identifier, ai, take(std::min(end, m_rest.size())));
    }

    /// As it is printed for people: (01)…(17)…
    void readBracketed() {
        const auto close = m_rest.find(')'); // the text begins with its bracket: the last value ended there
        if (close == m_rest.npos) return fail(ErrorCode::LabelBracketOpen, {});
        const auto ai = m_rest.substr(1, close - 1);
        std::size_t length{};
        const Gs1Identifier* identifier = gs1IdentifierAt(ai, length);
        if (!identifier || length != ai.size()) return fail(ErrorCode::LabelIdentifierUnknown, {shown(ai)});
        m_rest.remove_prefix(close + 1);
        add(*identifier, ai, take(std::min(m_rest.find('('), m_rest.size())));
    }

    std::string_view take(std::size_t length) {
        const auto taken = m_rest.substr(0, length);
        m_rest.remove_prefix(taken.size());
        return taken;
    }

    void add(const Gs1Identifier& identifier, std::string_view ai, std::string_view value) {
        if (const auto fault = gs1Fault(identifier, value))
            return fail(*fault, {std::string(ai), shown(value)});
        const auto [element, isNew] = m_elements.try_emplace(std::string(ai), value);
        if (!isNew && element->second != value) fail(ErrorCode::LabelContradiction, {std::string(ai)});
    }

    void fail(ErrorCode code, std::vector<std::string> arguments) { m_fault = {code, std::move(arguments)}; }

    std::string_view m_rest;
    Elements m_elements;
    std::optional<Error> m_fault;
};

std::string valueOf(const Elements& elements, std::string_view ai) {
    const auto found = elements.find(ai);
    return found == elements.end() ? std::string() : found->second;
}

/// 49 years back to 50 ahead of the current year (GS1 General Specifications 7.12).
int fullYear(int twoDigits, int currentYear) {
    const int century = currentYear - currentYear % 100;
    const int ahead = twoDigits - currentYear % 100;
    if (ahead >= 51) return century - 100 + twoDigits;
    if (ahead <= -50) return century + 100 + twoDigits;
    return century + twoDigits;
}

/// `yymmdd` was checked by the table. Empty when the day does not exist in its century: 29 February 2100.
std::optional<PartialDay> dayFrom(std::string_view yymmdd, int currentYear) {
    const int year = fullYear((yymmdd[0] - '0') * 10 + (yymmdd[1] - '0'), currentYear);
    const auto month = yymmdd.substr(2, 2);
    const auto day = yymmdd.substr(4);
    return PartialDay::parse(day == "00" ? fmt::format("{:04}-{}", year, month)
                                         : fmt::format("{:04}-{}-{}", year, month, day));
}

} // namespace

std::string_view withoutGs1Symbol(std::string_view text) {
    for (std::string_view symbol : gs1Symbols)
        if (text.starts_with(symbol)) return text.substr(symbol.size());
    return text;
}

Result<MakerLabel> parseMakerLabel(std::string_view text, int currentYear) {
    const auto elements = Reading(withoutGs1Symbol(withoutOuterBlanks(text))).run();
    if (!elements) return elements.error();
    MakerLabel label{valueOf(*elements, "01"), valueOf(*elements, "21"), valueOf(*elements, "10"), {}, {}};
    const bool hasExpiry = elements->contains("17");
    const std::pair<std::string_view, std::optional<PartialDay>*> days[]{
        {"11", &label.made}, {hasExpiry ? "17" : "15", &label.stamped}};
    for (const auto& [ai, day] : days) {
        const std::string value = valueOf(*elements, ai);
        if (value.empty()) continue;
        *day = dayFrom(value, currentYear);
        if (!*day) return Error{ErrorCode::LabelDay, {std::string(ai), value}};
    }
    return label;
}

bool looksLikeMakerLabel(std::string_view text) {
    if (withoutGs1Symbol(text).size() < text.size() || text.find(separator) != text.npos) return true;
    if (text.starts_with("(01)")) return true;
    const bool hasGtin = text.size() >= 16 && text.starts_with("01");
    const auto gtin = text.substr(std::min<std::size_t>(2, text.size()), 14);
    return hasGtin && gtin.find_first_not_of("0123456789") == gtin.npos && hasGs1CheckDigit(gtin);
}

} // namespace core
