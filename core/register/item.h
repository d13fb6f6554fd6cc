#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/register/item_name.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

enum class ItemState { Serviceable, Unserviceable, Missing, WrittenOff };

/// The states as the sheets and every document name them, in the order of ItemState.
inline constexpr std::array<std::string_view, 4> itemStateNames{"serviceable", "unserviceable", "missing",
                                                                "written off"};

constexpr std::string_view nameOf(ItemState state) {
    return itemStateNames[static_cast<std::size_t>(state)];
}

/// Why something is written off that was never the club's, or was registered twice: it is no loss, and was
/// never in service.
inline constexpr std::string_view byMistake = "mistake";

/// One physical thing with one tag, which may be replaced. Names refer to the register; empty means none.
struct Item {
    std::string id;  ///< what names it for ever: the code of its first tag
    std::string tag; ///< the tag code that is on it now
    std::string kitType;
    std::string size;
    std::string boat;   ///< home boat
    std::string place;  ///< home place; at most one of boat and place
    std::string person; ///< whose it is, for a personal kit type
    ItemState state = ItemState::Serviceable;
    std::optional<CalendarDay> since; ///< the day the state began
    std::string why;                  ///< lost, damaged, worn, expired or byMistake
    std::optional<PartialDay> made;
    std::optional<PartialDay> firstUse;
    std::optional<PartialDay> stamped;
    std::optional<PartialDay> registered;
    std::string maker;
    std::string gtin; ///< 14 digits
    std::string serial;
    std::string batch;
    std::string note;

    ItemName name() const { return {id, tag}; }
    bool isByMistake() const { return state == ItemState::WrittenOff && why == byMistake; }
};

/// Something inside an item that has dates of its own.
struct Part {
    std::string name;
    std::optional<PartialDay> made;
    std::optional<PartialDay> firstUse;
    std::optional<PartialDay> stamped;
};

/// That an item (or a part of it) was looked at by a rule. `at` is known for records made in the program;
/// those from CSV know only the day.
struct ServiceRecord {
    std::string part;
    std::string rule;
    CalendarDay day;
    std::optional<Instant> at;
    bool passed = true;
};

/// Something that happened to an item and that a rule of kind after_event waits for.
struct Happening {
    std::string event;
    CalendarDay day;
    std::optional<Instant> at;
};

/// Hours run and launches on one day.
struct Use {
    CalendarDay day;
    double hours = 0;
    double launches = 0;
};

/// An item with all that its due dates depend on.
struct ItemRecord {
    Item item;
    std::vector<Part> parts;
    std::vector<ServiceRecord> services;
    std::vector<Happening> happenings;
    std::vector<Use> use;
};

} // namespace core
