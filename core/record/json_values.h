#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/register/operation.h"
#include "core/register/sheets.h"

#include <limits>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

// How values stand in the JSON of the record, within core/record: `jsonOf` writes one, `readJson` reads it or
// throws a FieldFault.

namespace core {

using nlohmann::json;

/// A field that is not as a program writes it. Never leaves core/record.
struct FieldFault {
    std::string field;               ///< "answer.findings.2.kind"; empty: the whole
    std::optional<std::string> text; ///< what stands there, cut; empty: nothing does
};

/// Reports what stands there instead of what should.
[[noreturn]] void failAt(const json& from);

json parsed(const std::string& text);
/// Discarded where it is no JSON, or deeper or longer than any program writes: reading that could exhaust the
/// stack or the memory.
json parsedOrDiscarded(const std::string& text);
/// Keys sorted, no blanks; bytes that are not UTF-8 are replaced.
std::string canonical(const json& value);

/// Puts a key before the field of every fault that `read` meets.
template <class Read>
void within(std::string_view key, Read read) {
    try {
        read();
    } catch (FieldFault& fault) {
        fault.field.insert(0, std::string(key) + (fault.field.empty() ? "" : "."));
        throw;
    }
}

json jsonOf(const std::string& value);
json jsonOf(bool value);
json jsonOf(int value);
json jsonOf(double value);
json jsonOf(Instant at);
json jsonOf(CalendarDay day);
json jsonOf(Phase phase);
json jsonOf(Named named);
json jsonOf(CheckOutcome outcome);
json jsonOf(const AssignmentScore& score);
json jsonOf(const CheckAnswer& answer);  // documents.cpp
json jsonOf(const Operation& operation); // documents.cpp

void readJson(const json& from, std::string& into);
void readJson(const json& from, bool& into);
void readJson(const json& from, int& into);
void readJson(const json& from, double& into);
void readJson(const json& from, Instant& into);
void readJson(const json& from, CalendarDay& into);
void readJson(const json& from, Phase& into);
void readJson(const json& from, Named& into);
void readJson(const json& from, CheckOutcome& into);
void readJson(const json& from, AssignmentScore& into);
void readJson(const json& from, CheckAnswer& into);
void readJson(const json& from, Operation& into);

/// Enumerations stand as numbers, from 0 to their `Last`: a new enumerator is put behind the others.
template <class Enum>
requires std::is_enum_v<Enum> json jsonOf(Enum value) {
    return static_cast<int>(value);
}

template <class Enum>
requires std::is_enum_v<Enum>
void readJson(const json& from, Enum& into) {
    int number = 0;
    readJson(from, number);
    if (number < 0 || number > static_cast<int>(Enum::Last)) failAt(from);
    into = static_cast<Enum>(number);
}

/// A value to read into.
template <class Value>
Value blank() {
    return {};
}
template <>
inline CalendarDay blank() {
    return CalendarDay::fromNumber(1);
}
template <>
inline Instant blank() {
    return Instant::fromMillis(0);
}
template <>
inline LogEntry blank() {
    return {.day = blank<CalendarDay>()};
}
template <>
inline CheckAnswer blank() {
    return {.today = blank<CalendarDay>()};
}

/// A struct by its description.
template <class Struct>
json objectOf(const Struct& value);
template <class Struct>
void readObject(const json& from, Struct& into);

template <class Struct>
requires std::is_class_v<Struct> json jsonOf(const Struct& value) {
    return objectOf(value);
}

template <class Struct>
requires std::is_class_v<Struct>
void readJson(const json& from, Struct& into) {
    readObject(from, into);
}

/// What is not known stands as null.
template <class Value>
json jsonOf(const std::optional<Value>& value) {
    return value ? jsonOf(*value) : json();
}

template <class Value>
void readJson(const json& from, std::optional<Value>& into) {
    if (from.is_null()) return into.reset();
    Value value = blank<Value>();
    readJson(from, value);
    into = std::move(value);
}

template <class Value>
json jsonOf(const std::vector<Value>& values) {
    json list = json::array();
    for (const Value& value : values)
        list.push_back(jsonOf(value));
    return list;
}

template <class Value>
void readJson(const json& from, std::vector<Value>& into) {
    if (!from.is_array()) failAt(from);
    into.clear();
    for (const json& each : from) {
        Value value = blank<Value>();
        within(std::to_string(into.size()), [&] { readJson(each, value); });
        into.push_back(std::move(value));
    }
}

} // namespace core
