#pragma once

#include "core/record/json_values.h"

#include <concepts>
#include <string_view>

// How structs stand in the JSON of the record, within core/record. A struct is described once, for both
// directions:
//
//     void fields(Of<TagSeen> auto& fact, auto& field) {
//         field("check", fact.check);
//         …

namespace core {

template <class Value, class Struct>
concept Of = std::same_as<std::remove_const_t<Value>, Struct>;

class FieldWriter {
public:
    explicit FieldWriter(json& into)
        : m_into(into) {}

    template <class Value>
    void operator()(std::string_view key, const Value& value) {
        m_into[key] = jsonOf(value);
    }
    /// What is not known does not stand there at all.
    template <class Value>
    void ifKnown(std::string_view key, const std::optional<Value>& value) {
        if (value) m_into[key] = jsonOf(*value);
    }

private:
    json& m_into;
};

class FieldReader {
public:
    /// Documents within a fact gained fields over time: what an earlier program did not write keeps its
    /// default.
    enum class Absent { IsFault, KeepsDefault };

    FieldReader(const json& from, Absent absent)
        : m_from(from)
        , m_absent(absent) {
        if (!from.is_object()) failAt(from);
    }

    template <class Value>
    void operator()(std::string_view key, Value& into) {
        const auto found = m_from.find(key);
        if (found != m_from.end())
            within(key, [&] { readJson(*found, into); });
        else if (m_absent == Absent::IsFault)
            throw FieldFault{std::string(key), std::nullopt};
    }
    template <class Value>
    void ifKnown(std::string_view key, std::optional<Value>& into) {
        const auto found = m_from.find(key);
        if (found == m_from.end()) return;
        into = blank<Value>();
        within(key, [&] { readJson(*found, *into); });
    }

private:
    const json& m_from;
    Absent m_absent;
};

template <class Struct>
json objectOf(const Struct& value) {
    json object = json::object();
    FieldWriter field(object);
    fields(value, field);
    return object;
}

template <class Struct>
void readObject(const json& from, Struct& into) {
    FieldReader field(from, FieldReader::Absent::KeepsDefault);
    fields(into, field);
}

} // namespace core
