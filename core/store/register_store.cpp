#include "core/store/register_store.h"

#include "core/record/fact.h"
#include "core/register/typed_rows.h"
#include "core/store/item_states.h"
#include "core/store/names_now.h"
#include "core/store/row_table.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <utility>

namespace core {
namespace {

const Sheet& items = sheet(SheetId::Items);

template <class Make>
auto valuesOf(const std::vector<Cells>& rows, Make make) {
    std::vector<decltype(make(rows.front()))> values;
    values.reserve(rows.size());
    for (const Cells& row : rows)
        values.push_back(make(row));
    return values;
}

std::vector<LogEntry> newestFirst(std::vector<LogEntry> entries) {
    std::stable_sort(entries.begin(), entries.end(),
                     [](const LogEntry& a, const LogEntry& b) { return a.day > b.day; });
    return entries;
}

void applyState(const StateNow& now, Item& item) {
    item.state = now.state;
    item.since = now.since;
    item.why = now.why;
}

/// A class's list with the boat's own rows replacing theirs in place (by `name`), its additions last.
template <class Value, class Name>
std::vector<Value> ownOverClass(std::vector<Value> ofClass, const std::vector<Value>& own, Name name) {
    for (const Value& mine : own) {
        const auto same = std::find_if(ofClass.begin(), ofClass.end(),
                                       [&](const Value& v) { return name(v) == name(mine); });
        if (same != ofClass.end())
            *same = mine;
        else
            ofClass.push_back(mine);
    }
    return ofClass;
}

std::optional<std::string> stateName(const Cells& cells) {
    const std::string& text = cells[static_cast<std::size_t>(items.indexOf("state"))];
    return text.empty() ? std::nullopt : std::optional(text);
}

} // namespace

std::string logEntryId(const Cells& cells) {
    return sha256Hex(keyOf(sheet(SheetId::Log), cells)).substr(0, 10);
}

std::vector<LogEntry> openOnly(std::vector<LogEntry> entries) {
    std::erase_if(entries, [](const LogEntry& entry) { return entry.closed.has_value(); });
    return entries;
}

std::optional<Cells> RegisterStore::find(SheetId id, const std::string& key) const {
    auto row = rowTable::find(m_database, sheet(id), key);
    if (!row) return std::nullopt;
    std::vector<Cells> one{std::move(row->cells)};
    return id == SheetId::Items ? withStates(std::move(one)).front() : one.front();
}

std::vector<Cells> RegisterStore::all(SheetId id) const {
    auto rows = rowTable::all(m_database, sheet(id));
    return id == SheetId::Items ? withStates(std::move(rows)) : rows;
}

std::vector<Cells> RegisterStore::where(SheetId id, std::string_view column, const std::string& value) const {
    auto rows = rowTable::where(m_database, sheet(id), column, value);
    return id == SheetId::Items ? withStates(std::move(rows)) : rows;
}

std::vector<Cells> RegisterStore::withStates(std::vector<Cells> rows) const {
    for (Cells& row : rows) {
        if (stateName(row) != "missing") continue;
        const StateNow now = itemStates::now(m_database, row[0], {});
        if (now.state == ItemState::Missing) continue;
        row[static_cast<std::size_t>(items.indexOf("state"))] = now.given;
        row[static_cast<std::size_t>(items.indexOf("since"))] = now.since ? now.since->iso() : "";
        row[static_cast<std::size_t>(items.indexOf("why"))] = now.why;
    }
    return rows;
}

std::string RegisterStore::nameNow(Named named, const std::string& name, const std::string& of) const {
    return namesNow::of(m_database, named, name, of);
}

std::string RegisterStore::codeOfTag(const std::string& tag) const {
    return tagTables::everOf(m_database, tag);
}

std::optional<Boat> RegisterStore::boat(const std::string& name) const {
    const auto cells = find(SheetId::Boats, foldName(name));
    return cells ? std::optional(boatFrom(*cells)) : std::nullopt;
}

std::optional<Boat> RegisterStore::boatOfTag(const std::string& code) const {
    const auto rows = where(SheetId::Boats, "tag", code);
    return rows.empty() ? std::nullopt : std::optional(boatFrom(rows.front()));
}

std::optional<Person> RegisterStore::person(const std::string& name) const {
    const auto cells = find(SheetId::People, foldName(name));
    return cells ? std::optional(personFrom(*cells)) : std::nullopt;
}

std::optional<Person> RegisterStore::personOfTag(const std::string& code) const {
    const auto rows = where(SheetId::People, "tag", code);
    return rows.empty() ? std::nullopt : std::optional(personFrom(rows.front()));
}

std::optional<KitType> RegisterStore::kitType(const std::string& name) const {
    const auto cells = find(SheetId::KitTypes, foldName(name));
    return cells ? std::optional(wholeKitType(*cells)) : std::nullopt;
}

KitType RegisterStore::wholeKitType(const Cells& cells) const {
    KitType type = kitTypeFrom(cells);
    type.sizes = valuesOf(where(SheetId::Sizes, "kit_type", type.name), sizeFrom);
    // The smallest first, as people say them; those of nobody's measures by name.
    const auto least = [](const Size& size) { return std::pair(size.massKg.low, size.chestCm.low); };
    std::stable_sort(type.sizes.begin(), type.sizes.end(),
                     [&](const Size& a, const Size& b) { return least(a) < least(b); });
    type.rules = valuesOf(where(SheetId::LifeRules, "kit_type", type.name), lifeRuleFrom);
    return type;
}

std::map<std::string, KitType> RegisterStore::allKitTypes() const {
    std::map<std::string, KitType> types;
    for (const Cells& cells : all(SheetId::KitTypes)) {
        KitType type = wholeKitType(cells);
        types[type.name] = std::move(type);
    }
    return types;
}

/// A boat may be of no class: boats' own rows have none either, and are not its.
std::vector<Cells> RegisterStore::ofClass(SheetId id, const std::string& boatClass) const {
    return boatClass.empty() ? std::vector<Cells>() : where(id, "boat_class", boatClass);
}

std::vector<ManifestLine> RegisterStore::manifestOf(const Boat& boat) const {
    auto lines = ownOverClass(valuesOf(ofClass(SheetId::ManifestLines, boat.boatClass), manifestLineFrom),
                              valuesOf(where(SheetId::ManifestLines, "boat", boat.name), manifestLineFrom),
                              [](const ManifestLine& line) { return line.kitType; });
    std::erase_if(lines, [](const ManifestLine& line) { return line.quantity == 0; });
    return lines;
}

std::vector<BoatPoint> RegisterStore::pointsOf(const Boat& boat, const std::string& phase) const {
    const auto inPhase = [&](const std::vector<Cells>& rows) {
        std::vector<BoatPoint> points;
        for (PhasePoint& each : valuesOf(rows, pointFrom))
            if (each.phase == phase) points.push_back(std::move(each.point));
        return points;
    };
    return ownOverClass(inPhase(ofClass(SheetId::Points, boat.boatClass)),
                        inPhase(where(SheetId::Points, "boat", boat.name)),
                        [](const BoatPoint& point) { return foldName(point.name); });
}

std::optional<Item> RegisterStore::item(const std::string& code) const {
    const auto found = record(code);
    return found ? std::optional(found->item) : std::nullopt;
}

std::optional<ItemRecord> RegisterStore::record(const std::string& code) const {
    const auto row = rowTable::find(m_database, items, foldName(code));
    if (!row) return std::nullopt;
    ItemRecord record{.item = itemFrom(row->cells)};
    const std::string& own = record.item.id;
    record.item.tag = tagTables::tagOf(m_database, own);
    record.parts = valuesOf(where(SheetId::Parts, "code", own), partFrom);
    record.services = valuesOf(where(SheetId::Services, "code", own), serviceAt());
    record.happenings = valuesOf(where(SheetId::Happenings, "code", own), happeningAt());
    record.use = valuesOf(where(SheetId::Use, "code", own), useFrom);
    applyState(itemStates::now(m_database, own, record.services), record.item);
    return record;
}

std::function<ServiceRecord(const Cells&)> RegisterStore::serviceAt() const {
    return [this](const Cells& cells) {
        ServiceRecord record = serviceFrom(cells);
        const Sheet& services = sheet(SheetId::Services);
        record.at = rowTable::instantOf(m_database, services, keyOf(services, cells));
        return record;
    };
}

std::function<Happening(const Cells&)> RegisterStore::happeningAt() const {
    return [this](const Cells& cells) {
        Happening happening = happeningFrom(cells);
        const Sheet& happenings = sheet(SheetId::Happenings);
        happening.at = rowTable::instantOf(m_database, happenings, keyOf(happenings, cells));
        return happening;
    };
}

std::vector<ItemRecord> RegisterStore::allRecords() const {
    std::vector<ItemRecord> records;
    std::map<std::string, std::size_t> byId;
    for (Item& item : itemsOf(rowTable::all(m_database, items))) {
        byId[item.id] = records.size();
        records.push_back({.item = std::move(item)});
    }
    const auto gather = [&](SheetId id, auto make, auto member) {
        for (const Cells& cells : rowTable::all(m_database, sheet(id)))
            if (const auto found = byId.find(cells[0]); found != byId.end())
                (records[found->second].*member).push_back(make(cells));
    };
    gather(SheetId::Parts, partFrom, &ItemRecord::parts);
    gather(SheetId::Services, serviceAt(), &ItemRecord::services);
    gather(SheetId::Happenings, happeningAt(), &ItemRecord::happenings);
    gather(SheetId::Use, useFrom, &ItemRecord::use);
    for (ItemRecord& record : records)
        applyState(itemStates::now(m_database, record.item.id, record.services), record.item);
    return records;
}

std::vector<Item> RegisterStore::itemsOfLabel(const std::string& gtin, const std::string& serial) const {
    std::vector<Item> found = itemsOf(where(SheetId::Items, "serial", serial));
    std::erase_if(found, [&](const Item& item) { return item.gtin != gtin || item.isByMistake(); });
    return found;
}

std::vector<Item> RegisterStore::allItems() const {
    return itemsOf(all(SheetId::Items));
}

std::vector<Item> RegisterStore::itemsOfBoat(const std::string& boat) const {
    return itemsOf(where(SheetId::Items, "boat", boat));
}

std::vector<Item> RegisterStore::itemsOf(const std::vector<Cells>& rows) const {
    std::vector<Item> found = valuesOf(rows, itemFrom);
    for (Item& item : found)
        item.tag = tagTables::tagOf(m_database, item.id);
    return found;
}

std::vector<LogEntry> RegisterStore::entriesOf(const std::vector<Cells>& rows) const {
    std::vector<LogEntry> entries;
    for (const Cells& cells : rows) {
        entries.push_back(logEntryFrom(cells));
        entries.back().id = logEntryId(cells);
        if (ItemName& item = entries.back().item; !item.id.empty())
            item.tag = tagTables::tagOf(m_database, item.id);
    }
    return newestFirst(std::move(entries));
}

std::vector<LogEntry> RegisterStore::logOfBoat(const std::string& boat) const {
    return entriesOf(where(SheetId::Log, "boat", boat));
}

std::vector<LogEntry> RegisterStore::logOfItem(const std::string& code) const {
    return entriesOf(where(SheetId::Log, "code", code));
}

std::vector<LogEntry> RegisterStore::allLog() const {
    return entriesOf(all(SheetId::Log));
}

} // namespace core
