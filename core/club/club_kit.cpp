#include "core/club/club_kit.h"
#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/instant.h"
#include "core/base/plain_text.h"
#include "core/base/result.h"
#include "core/club/act_effects.h"
#include "core/club/club_state.h"
#include "core/register/item.h"
#include "core/tag/tag_code.h"

#include "core/club/club_register.h"
#include "core/club/scanned_code.h"

#include "core/register/new_kit.h"
#include "core/register/typed_rows.h"
#include "core/store/item_states.h"
#include "core/store/tag_tables.h"
#include "core/tag/maker_label.h"
#include "core/tag/reason.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/ranges.h>
#include <set>

namespace core {
namespace {

/// What arrives was made and first used before it is registered, in that order.
Outcome areDaysOfNewKit(const NewKit& kit, CalendarDay today) {
    for (const std::string* day : {&kit.made, &kit.firstUse, &kit.stamped})
        if (!day->empty() && !PartialDay::parse(*day)) return Error{ErrorCode::KitDayUnreadable, {*day}};
    const auto made = PartialDay::parse(kit.made), firstUse = PartialDay::parse(kit.firstUse);
    if (made && made->firstDay() > today) return Error{ErrorCode::MadeInFuture, {kit.made}};
    if (firstUse && firstUse->firstDay() > today) return Error{ErrorCode::FirstUseInFuture, {kit.firstUse}};
    if (made && firstUse && firstUse->lastDay() < made->firstDay())
        return Error{ErrorCode::UsedBeforeMade, {kit.firstUse, kit.made}};
    return Done{};
}

/// The days of the cells, of which the later of two holds.
NewKit daysIn(const CellTexts& cells) {
    NewKit kit;
    for (const auto& [column, text] : cells) {
        if (column == "made") kit.made = text;
        if (column == "first_use") kit.firstUse = text;
    }
    return kit;
}

/// No serial stands twice in what is registered at once; the register's own are looked at one by one.
class SerialsGiven {
public:
    /// `of`: what has serials of its own, a GTIN or a kit type.
    Outcome add(const std::string& of, const std::string& serial) {
        if (serial.empty() || m_seen.emplace(of, serial).second) return Done{};
        return Error{ErrorCode::SerialTwice, {serial}};
    }

private:
    std::set<std::pair<std::string, std::string>> m_seen;
};

/// Its home and its keeper, as the register spells them; all are still here.
Outcome lookUpHome(ClubState& state, NewKit& kit, CalendarDay today) {
    if (!kit.boat.empty() && !kit.place.empty()) return Error{ErrorCode::TwoHomes};
    if (!kit.boat.empty()) {
        const auto boat = ClubRegister(state).boat(kit.boat);
        if (!boat) return boat.error();
        if (const Outcome here = stillHere(boat->name, boat->until, today); !here) return here;
        kit.boat = boat->name;
    }
    if (!kit.place.empty()) {
        const auto cells = state.registerStore.find(SheetId::Places, foldName(kit.place));
        if (!cells) return Error{ErrorCode::NoSuchHomePlace, {kit.place}};
        const ClubPlace place = placeFrom(*cells);
        if (const Outcome here = stillHere(place.name, place.until, today); !here) return here;
        kit.place = place.name;
    }
    if (!kit.person.empty()) {
        const auto person = state.registerStore.person(kit.person);
        if (!person) return Error{ErrorCode::NoSuchKeeper, {kit.person}};
        if (const Outcome here = stillHere(person->name, person->until, today); !here) return here;
        kit.person = person->name;
    }
    return Done{};
}

/// Looks the names of new kit up and puts them as the register spells them.
Result<NewKit> lookedUp(ClubState& state, NewKit kit, CalendarDay today) {
    const auto type = state.registerStore.kitType(kit.kitType);
    if (!type) return Error{ErrorCode::NoSuchKitType, {kit.kitType}};
    kit.kitType = type->name;
    if (!kit.size.empty()) {
        const auto size = std::find_if(type->sizes.begin(), type->sizes.end(), [&](const Size& each) {
            return foldName(each.name) == foldName(kit.size);
        });
        if (size == type->sizes.end()) return Error{ErrorCode::NoSuchSize, {kit.kitType, kit.size}};
        kit.size = size->name;
    }
    if (const Outcome found = lookUpHome(state, kit, today); !found) return found.error();
    const auto maker = nameFrom(kit.maker, "maker"), note = proseFrom(kit.note, "note");
    if (!maker) return maker.error();
    if (!note) return note.error();
    kit.maker = *maker;
    kit.note = *note;
    if (const Outcome days = areDaysOfNewKit(kit, today); !days) return days.error();
    if (kit.labels.empty() && (kit.count < 1 || kit.count > 1000))
        return Error{ErrorCode::ItemCountOutOfRange};
    if (const std::size_t count = kit.labels.empty() ? static_cast<std::size_t>(kit.count) : 0;
        kit.serials.size() > count)
        return Error{ErrorCode::MoreSerialsThanThings,
                     {std::to_string(kit.serials.size()), std::to_string(count), kit.kitType}};
    return kit;
}

/// What the maker's label says goes before what was typed.
Result<CellTexts> cellsOfLabel(const RegisterStore& store, const std::string& text, int year,
                               SerialsGiven& given) {
    const auto label = parseMakerLabel(text, year);
    if (!label) return label.error();
    if (label->serial.empty()) return Error{ErrorCode::LabelWithoutSerial, {text}};
    if (const Outcome apart = given.add(label->gtin, label->serial); !apart) return apart.error();
    if (const auto known = store.itemsOfLabel(label->gtin, label->serial); !known.empty())
        return Error{ErrorCode::SerialRegistered, {label->serial, known.front().tag}};
    CellTexts cells{{"gtin", label->gtin}, {"serial", label->serial}, {"batch", label->batch}};
    if (label->made) cells.emplace_back("made", label->made->text());
    if (label->stamped) cells.emplace_back("stamped", label->stamped->text());
    return cells;
}

/// A serial that was typed is one of its kit type's.
Result<CellTexts> cellsOfSerial(const RegisterStore& store, const NewKit& kit, std::size_t at,
                                SerialsGiven& given) {
    if (at >= kit.serials.size() || withoutOuterBlanks(kit.serials[at]).empty()) return CellTexts{};
    const auto serial = nameFrom(withoutOuterBlanks(kit.serials[at]), "serial");
    if (!serial) return serial.error();
    if (const Outcome apart = given.add(kit.kitType, *serial); !apart) return apart.error();
    for (const Cells& cells : store.where(SheetId::Items, "serial", *serial))
        if (const auto known = store.item(cells.front());
            known && !known->isByMistake() && sameName(known->kitType, kit.kitType))
            return Error{ErrorCode::SerialRegistered, {*serial, known->tag}};
    return CellTexts{{"serial", *serial}};
}

CellTexts cellsOf(const NewKit& kit, CalendarDay today) {
    return {{"kit_type", kit.kitType},   {"size", kit.size},       {"boat", kit.boat},
            {"place", kit.place},        {"person", kit.person},   {"made", kit.made},
            {"first_use", kit.firstUse}, {"stamped", kit.stamped}, {"registered", today.iso()},
            {"maker", kit.maker},        {"note", kit.note}};
}

/// One for each thing that is to be registered.
Result<std::vector<CellTexts>> cellsOfThings(const RegisterStore& store, const NewKit& kit, CalendarDay today,
                                             SerialsGiven& given) {
    std::vector<CellTexts> things(kit.labels.empty() ? static_cast<std::size_t>(kit.count)
                                                     : kit.labels.size());
    for (std::size_t i = 0; i < things.size(); ++i) {
        const auto own = kit.labels.empty() ? cellsOfSerial(store, kit, i, given)
                                            : cellsOfLabel(store, kit.labels[i], today.year(), given);
        if (!own) return own.error();
        things[i] = cellsOf(kit, today);
        things[i].insert(things[i].end(), own->begin(), own->end());
        if (const Outcome days = areDaysOfNewKit(daysIn(things[i]), today); !days) return days.error();
    }
    return things;
}

} // namespace

Result<Item> knownItem(ClubState& state, const std::string& typed) {
    if (auto known = ClubKit(state).item(typed)) return std::move(*known);
    if (const auto alike = state.tagsLike(typed); !alike.empty())
        return Error{ErrorCode::TagLikeOthers, {typed, fmt::format("{}", fmt::join(alike, ", "))}};
    return Error{ErrorCode::NoSuchItem, {typed}};
}

Result<std::vector<Item>> ClubKit::registerKit(const NewKit& given, const std::string& by, Moment moment) {
    auto items = registerAll({given}, by, moment);
    if (!items) return items.error();
    return std::move(items->front());
}

Result<std::vector<std::vector<Item>>> ClubKit::registerAll(const std::vector<NewKit>& kinds,
                                                            const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<std::vector<std::vector<Item>>> {
        SerialsGiven serials;
        std::vector<std::vector<std::string>> codes;
        for (const NewKit& given : kinds) {
            const auto kit = lookedUp(*m_state, given, moment.today);
            if (!kit) return kit.error();
            const auto things = cellsOfThings(m_state->registerStore, *kit, moment.today, serials);
            if (!things) return things.error();
            codes.emplace_back();
            for (const CellTexts& cells : *things) {
                codes.back().push_back(mintCodes(1).front());
                ledger.append(rowWritten(SheetId::Items, {{"code", codes.back().back()}}, cells), by);
            }
        }
        std::vector<std::vector<Item>> items(codes.size());
        for (std::size_t i = 0; i < codes.size(); ++i)
            for (const std::string& code : codes[i])
                if (auto item = m_state->registerStore.item(code)) items[i].push_back(std::move(*item));
        return items;
    });
}

Outcome ClubKit::writeOff(const std::string& code, const std::string& why, const std::string& by,
                          Moment moment) {
    return writeOffAll({code}, why, by, moment);
}

Outcome ClubKit::writeOffAll(const std::vector<std::string>& codes, const std::string& why,
                             const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        for (const std::string& typed : codes) {
            const auto known = knownItem(*m_state, typed);
            if (!known) return known.error();
            if (!sheet(SheetId::Items).column("why").offers(why)) return Error{ErrorCode::NotAReason, {why}};
            if (known->state == ItemState::WrittenOff) return Error{ErrorCode::WrittenOffAlready};
            ledger.append(stateGiven(known->id, "written off", moment.today, why), by);
        }
        return Done{};
    });
}

namespace {

/// NoLongerHere: kit is not given back to a boat, place or person that is gone.
Outcome homesAreHere(const ClubState& state, const Item& item, CalendarDay today) {
    for (const auto& [id, name] : {std::pair(SheetId::Boats, item.boat),
                                   {SheetId::Places, item.place},
                                   {SheetId::People, item.person}})
        if (!name.empty())
            if (const Outcome here = stillHere(name, untilOf(state, id, name), today); !here) return here;
    return Done{};
}

} // namespace

Outcome ClubKit::reinstate(const std::string& typed, const std::string& why, const std::string& by,
                           Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto known = knownItem(*m_state, typed);
        if (!known) return known.error();
        if (known->state != ItemState::WrittenOff) return Error{ErrorCode::NotWrittenOff};
        const auto reason = reasonFrom(why);
        if (!reason) return reason.error();
        if (const Outcome here = homesAreHere(*m_state, *known, moment.today); !here) return here.error();
        // What was missing, too, before it was written off or since, is here now.
        for (const std::string& act : itemStates::goneSince(*m_state->database, known->id))
            ledger.append(ActTakenBack{{}, act, *reason, moment.at}, by);
        judgeRoundsAnew(*m_state, ledger, known->id, moment.today);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return Done{};
    });
}

Outcome ClubKit::release(const std::string& typed, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto known = knownItem(*m_state, typed);
        if (!known) return known.error();
        if (known->state != ItemState::Unserviceable) return Error{ErrorCode::NotUnserviceable};
        ledger.append(stateGiven(known->id, "serviceable", moment.today, {}), by);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return Done{};
    });
}

std::optional<Item> ClubKit::item(const std::string& code) const {
    const auto parsed = TagCode::parse(code);
    if (!parsed) return std::nullopt;
    return m_state->registerStore.item(tagTables::everOf(*m_state->database, parsed->text()));
}

std::vector<Item> ClubKit::all() const {
    std::vector<Item> kit;
    for (ItemRecord& record : m_state->registerStore.allRecords())
        kit.push_back(std::move(record.item));
    return kit;
}

std::optional<ItemRecord> ClubKit::itemRecord(const std::string& typed) const {
    const auto known = item(typed);
    return known ? m_state->registerStore.record(known->id) : std::nullopt;
}

std::optional<Item> ClubKit::itemOfScan(const std::string& text, CalendarDay today) const {
    const auto code =
        scannedCode(ScannedText::typed(text), *m_state->database, m_state->registerStore, today.year());
    return code ? m_state->registerStore.item(code->text()) : std::nullopt;
}

} // namespace core
