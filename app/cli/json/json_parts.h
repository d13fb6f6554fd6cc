#pragma once

#include "app/text/errors.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/register/item_name.h"
#include "core/register/photo.h"
#include "core/upkeep/due_date.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace app {

// What the documents of the command line are made of.

using Json = nlohmann::ordered_json;

/// Codes come from outside, so their bytes may be no UTF-8: what is not is replaced (U+FFFD). What drives a
/// terminal (core::isUnseen) is written as `\u009b`: the same value, and nothing happens where it is read.
std::string written(const Json& document);

inline Json orNull(const std::string& text) {
    return text.empty() ? Json() : Json(text);
}

inline Json orNull(const std::optional<core::CalendarDay>& day) {
    return day ? Json(day->iso()) : Json();
}

inline Json orNull(const std::optional<core::Instant>& at) {
    return at ? Json(at->iso()) : Json();
}

template <class Value, class Make>
Json listOf(const std::vector<Value>& values, Make make) {
    Json list = Json::array();
    for (const Value& value : values)
        list.push_back(make(value));
    return list;
}

/// A document names an item by its id, for ever.
inline Json idsOf(const std::vector<core::ItemName>& items) {
    return listOf(items, [](const core::ItemName& item) { return Json(item.id); });
}

inline const char* nameOf(core::DueState state) {
    constexpr const char* names[] = {"later", "due-soon", "within-tolerance", "passed", "undated"};
    return names[static_cast<std::size_t>(state)];
}

inline Json photoJson(const core::Photo& photo) {
    return {{"photo", photo.sha256},
            {"at", photo.at.iso()},
            {"by", orNull(photo.by)},
            {"kb", (photo.size + 999) / 1000},
            {"entry", orNull(photo.entry)}};
}

/// What is taken and may not be meant so; `name`: what it is about.
inline Json warningJson(const std::string& name, const core::Error& what) {
    return {{"name", name}, {"what", rejectionInWords(what).toStdString()}};
}

inline std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

} // namespace app
