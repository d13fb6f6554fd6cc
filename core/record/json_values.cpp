#include "core/record/json_values.h"

namespace core {
namespace {

/// Long enough to know what is meant, short enough for a sentence.
constexpr std::size_t shownBytes = 60;

template <class Enum>
bool readName(const json& from, std::initializer_list<Enum> values, Enum& into) {
    if (!from.is_string()) return false;
    for (const Enum value : values)
        if (from.get_ref<const std::string&>() == nameOf(value)) {
            into = value;
            return true;
        }
    return false;
}

/// Reads what parses of a text.
template <class Value>
void readText(const json& from, Value& into) {
    const auto value = from.is_string() ? Value::parse(from.get_ref<const std::string&>()) : std::nullopt;
    if (!value) failAt(from);
    into = *value;
}

} // namespace

void failAt(const json& from) {
    std::string text = from.is_string() ? from.get<std::string>() : canonical(from);
    if (text.size() > shownBytes) {
        std::size_t end = shownBytes;
        while (end > 0 && (text[end] & 0xC0) == 0x80) // within a character
            --end;
        text = text.substr(0, end) + "…";
    }
    throw FieldFault{{}, text};
}

std::string canonical(const json& value) {
    return value.dump(-1, ' ', false, json::error_handler_t::replace);
}

namespace {

bool isBounded(const std::string& text) {
    constexpr std::size_t longest = 1 << 20;
    constexpr int deepest = 64;
    int depth = 0;
    bool isInString = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        if (isInString && c == '\\')
            ++at; // what is escaped ends no string
        else if (c == '"')
            isInString = !isInString;
        else if (!isInString && (c == '[' || c == '{') && ++depth > deepest)
            return false;
        else if (!isInString && (c == ']' || c == '}'))
            --depth;
    }
    return text.size() <= longest;
}

} // namespace

json parsedOrDiscarded(const std::string& text) {
    return isBounded(text) ? json::parse(text, nullptr, false) : json(json::value_t::discarded);
}

json parsed(const std::string& text) {
    json value = parsedOrDiscarded(text);
    if (value.is_discarded()) failAt(text);
    return value;
}

json jsonOf(const std::string& value) {
    return value;
}
json jsonOf(bool value) {
    return value;
}
json jsonOf(int value) {
    return value;
}
json jsonOf(double value) {
    return value;
}
json jsonOf(Instant at) {
    return at.iso();
}
json jsonOf(CalendarDay day) {
    return day.iso();
}
json jsonOf(Phase phase) {
    return nameOf(phase);
}
json jsonOf(Named named) {
    return nameOf(named);
}
json jsonOf(CheckOutcome outcome) {
    return nameOf(outcome);
}
json jsonOf(const AssignmentScore& score) {
    return {score.required, score.other, score.ownType, score.ownBoat, score.dueSum};
}

void readJson(const json& from, std::string& into) {
    if (!from.is_string()) failAt(from);
    into = from.get_ref<const std::string&>();
}

void readJson(const json& from, bool& into) {
    if (!from.is_boolean()) failAt(from);
    into = from.get<bool>();
}

namespace {

/// Whole numbers of JSON are kept unsigned when they are written without a sign.
template <class Whole>
void readWhole(const json& from, Whole& into) {
    using Limits = std::numeric_limits<Whole>;
    const bool tooLarge =
        from.is_number_unsigned() && from.get<std::uint64_t>() > std::uint64_t{Limits::max()};
    if (!from.is_number_integer() || tooLarge || from.get<std::int64_t>() < Limits::min()) failAt(from);
    into = from.get<Whole>();
}

} // namespace

void readJson(const json& from, int& into) {
    readWhole(from, into);
}

void readJson(const json& from, double& into) {
    if (!from.is_number()) failAt(from);
    into = from.get<double>();
}

void readJson(const json& from, Instant& into) {
    readText(from, into);
}

void readJson(const json& from, CalendarDay& into) {
    readText(from, into);
}

void readJson(const json& from, Phase& into) {
    if (!readName(from, {Phase::Launch, Phase::Return, Phase::Stocktake}, into)) failAt(from);
}

void readJson(const json& from, Named& into) {
    std::string name;
    readJson(from, name);
    const auto named = namedFrom(name);
    if (!named) failAt(from);
    into = *named;
}

void readJson(const json& from, CheckOutcome& into) {
    if (!readName(from, {CheckOutcome::Complete, CheckOutcome::CompleteWithRemarks, CheckOutcome::Incomplete},
                  into))
        failAt(from);
}

void readJson(const json& from, AssignmentScore& into) {
    if (!from.is_array() || from.size() != 5) failAt(from);
    std::size_t place = 0;
    for (int* each : {&into.required, &into.other, &into.ownType, &into.ownBoat})
        readWhole(from[place++], *each);
    readWhole(from[place], into.dueSum);
}

} // namespace core
