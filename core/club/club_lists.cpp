#include "core/club/club_state.h"

#include "core/club/scanned_code.h"
#include "core/register/kit_entry.h"
#include "core/store/tag_tables.h"
#include "core/store/trip_tables.h"

namespace core {

std::vector<std::string> Club::places() const {
    std::vector<std::string> places;
    for (const Cells& cells : m_state->registerStore.all(SheetId::Places))
        places.push_back(cells[0]);
    return places;
}

std::vector<KitType> Club::kitTypes() const {
    std::vector<KitType> kitTypes;
    for (auto& [name, kitType] : m_state->registerStore.allKitTypes())
        kitTypes.push_back(kitType);
    return kitTypes;
}

std::vector<KitEntry> Club::kit() const {
    const auto tags = tagTables::changed(*m_state->database);
    std::vector<KitEntry> kit;
    for (ItemRecord& record : m_state->registerStore.allRecords()) {
        const auto changed = tags.find(record.item.code);
        std::string tag = changed == tags.end() ? record.item.code : changed->second;
        kit.push_back({std::move(record.item), std::move(tag)});
    }
    return kit;
}

std::optional<ItemRecord> Club::itemRecord(const std::string& typed) const {
    const auto known = item(typed);
    return known ? m_state->registerStore.record(known->code) : std::nullopt;
}

std::optional<Item> Club::itemOfScan(const std::string& text, CalendarDay today) const {
    const auto code = scannedCode(text, *m_state->database, m_state->registerStore, today.year());
    return code ? m_state->registerStore.item(code->text()) : std::nullopt;
}

std::vector<std::string> Club::events() const {
    return tripTables::events(*m_state->database);
}

} // namespace core
