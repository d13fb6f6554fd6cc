#include "core/club/merge_look.h"

#include "core/club/club_register.h"
#include "core/store/check_tables.h"
#include "core/store/fact_table.h"
#include "core/store/named_rows.h"
#include "core/store/names_now.h"
#include "core/store/sign_off_tables.h"
#include "core/store/tag_tables.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <cstdlib>

namespace core {
namespace {

constexpr std::int64_t hour = 60 * 60 * std::int64_t{1000};

bool areWithin(std::int64_t millis, Instant a, Instant b) {
    return std::llabs(a.millis() - b.millis()) <= millis;
}

const std::string* valueOf(const RowWritten& row, int column) {
    for (const auto& cells : {&row.set, &row.sealed})
        for (const auto& [index, text] : *cells)
            if (index == column) return &text;
    return nullptr;
}

/// Rows that have a name of their own, which two machines may spell otherwise.
bool isNamed(SheetId sheet) {
    return sheet == SheetId::Boats || sheet == SheetId::People || sheet == SheetId::Places ||
           sheet == SheetId::KitTypes;
}

/// Equal for what is equal.
std::string textOf(const LookAt& found) {
    std::string text =
        std::string(nameOf(found.kind)) + (found.isPinSet ? '1' : '0') + (found.isOpen ? '1' : '0');
    for (const std::string* each :
         {&found.item.id, &found.otherItem.id, &found.sheet, &found.name, &found.otherName, &found.text})
        text += '\x1f' + *each;
    return text;
}

/// Gear officers whose PIN counts, by the fact that set it.
std::map<std::string, std::string> pinsNow(const ClubState& state) {
    std::map<std::string, std::string> pins;
    for (pinTables::PinNow& pin : state.pinLock.pinsOfOfficers())
        pins.emplace(std::move(pin.fact), std::move(pin.person));
    return pins;
}

} // namespace

MergeLook::MergeLook(ClubState& state, const OtherFacts& news)
    : m_state(state)
    , m_database(*state.database)
    , m_news(news)
    , m_pins(pinsNow(state)) {
    forEachNew(checkTables::isAnythingSeen(m_database),
               [&](const Fact& fact, const FactBody& body) { readBefore(fact, body); });
}

/// Sightings are most of what comes in.
void MergeLook::forEachNew(bool withSightings,
                           const std::function<void(const Fact&, const FactBody&)>& visit) const {
    const auto isWanted = [&](const std::string& kind) {
        return (withSightings && kind == TagSeen::kind) || kind == CheckSigned::kind ||
               kind == Renamed::kind || sheetOfTable(kind) != nullptr;
    };
    if (std::none_of(m_news.ofKind.begin(), m_news.ofKind.end(),
                     [&](const auto& each) { return isWanted(each.first); }))
        return;
    auto facts = m_news.facts();
    while (const auto fact = facts.next()) {
        if (!isWanted(fact->kind)) continue;
        if (const auto body = factTable::bodyOf(*fact)) visit(*fact, *body);
    }
}

void MergeLook::readBefore(const Fact& fact, const FactBody& body) {
    if (const auto* seen = std::get_if<TagSeen>(&body)) {
        if (!m_tags.insert(seen->code).second) return;
        if (const auto newest = checkTables::newestSighting(m_database, seen->code))
            if (const auto run = checkTables::run(m_database, newest->check))
                m_seen.emplace(seen->code, Seen{*run, newest->at});
    } else if (const auto* signature = std::get_if<CheckSigned>(&body)) {
        if (signOffTables::signOff(m_database, signature->check)) m_wasSigned.insert(signature->check);
    } else if (const auto* row = std::get_if<RowWritten>(&body); row && isNamed(row->sheet)) {
        if (m_state.registerStore.find(row->sheet, row->key)) m_wasThere.insert(fact.kind + ' ' + row->key);
    }
}

void MergeLook::note(LookAt found) {
    if (m_noted.insert(textOf(found)).second) m_into->push_back(std::move(found));
}

void MergeLook::lookAround(std::vector<LookAt>& into) {
    m_into = &into;
    for (const LookAt& each : into)
        m_noted.insert(textOf(each));
    forEachNew(!m_seen.empty(), [&](const Fact& fact, const FactBody& body) { lookAt(fact, body); });
    for (const std::string& boat : m_boats)
        lookAtLaunches(boat);
    lookAtPins();
}

void MergeLook::lookAt(const Fact& fact, const FactBody& body) {
    if (const auto* seen = std::get_if<TagSeen>(&body)) lookAtSighting(*seen);
    if (const auto* row = std::get_if<RowWritten>(&body)) lookAtRow(fact, namesNow::row(m_database, *row));
    if (const auto* signature = std::get_if<CheckSigned>(&body)) lookAtSignature(fact, *signature);
    if (const auto* renamed = std::get_if<Renamed>(&body)) lookAtRenaming(fact, *renamed);
}

void MergeLook::lookAtSighting(const TagSeen& seen) {
    const auto before = m_seen.find(seen.code);
    if (before == m_seen.end()) return;
    const auto run = checkTables::run(m_database, seen.check);
    if (!run || run->phase != Phase::Launch) return;
    const CheckRun& other = before->second.run;
    if (other.phase != Phase::Launch || other.location == run->location) return;
    const auto item = m_state.registerStore.item(tagTables::everOf(m_database, seen.code));
    if (!item || !areWithin(12 * hour, before->second.at, seen.at)) return;
    note({.kind = LookAt::Kind::SeenOnTwoBoats,
          .item = item->name(),
          .name = other.location.name,
          .otherName = run->location.name});
}

/// Two machines that gave one cell different values within an hour; which of them holds is settled, and may
/// not be what was meant.
void MergeLook::lookAtRow(const Fact& fact, const RowWritten& row) {
    for (const Fact& other : factTable::ofRow(m_database, fact.kind, row.key)) {
        if (other.machine == fact.machine || isNew(other)) continue;
        if (!areWithin(hour, factTable::recordedAt(fact), factTable::recordedAt(other))) continue;
        if (knewOfEachOther(fact, other)) continue;
        const RowWritten theirs = factTable::rowOf(other);
        for (const auto& [column, text] : row.set) {
            const std::string* same = valueOf(theirs, column);
            if (same == nullptr || *same == text) continue;
            const Sheet& sheet = core::sheet(row.sheet);
            note({.kind = LookAt::Kind::CellChangedTwice,
                  .sheet = std::string(sheet.name()),
                  .name = ClubRegister(m_state).nameOfRow(row.sheet, row.keyCells),
                  .text = std::string(sheet.columns[static_cast<std::size_t>(column)].name)});
        }
    }
    lookAtSerial(row);
    lookAtName(row);
    lookAtRemoved(row);
}

/// Surely, for the later one's machine went on from the other one or from what stood behind it, as one that
/// begins with a copied file. What a machine took in later is not told in the record.
bool MergeLook::knewOfEachOther(const Fact& fact, const Fact& other) const {
    const bool isLater = fact.stamp() > other.stamp();
    const Fact& later = isLater ? fact : other;
    const Fact& earlier = isLater ? other : fact;
    const auto beginning = factTable::inChain(m_database, later.machine, 1);
    const auto body = beginning ? factTable::bodyOf(*beginning) : std::nullopt;
    const auto* begun = body ? std::get_if<MachineBegun>(&*body) : nullptr;
    const auto from = begun ? factTable::byHash(m_database, begun->continues) : std::nullopt;
    return from && from->machine == earlier.machine && from->seq >= earlier.seq;
}

void MergeLook::lookAtSerial(const RowWritten& row) {
    const int column = sheet(SheetId::Items).indexOf("serial");
    const std::string* serial = row.sheet == SheetId::Items ? valueOf(row, column) : nullptr;
    const auto item =
        serial && !serial->empty() ? m_state.registerStore.item(row.keyCells.front()) : std::nullopt;
    if (!item || item->state == ItemState::WrittenOff) return;
    for (const Cells& cells : m_state.registerStore.where(SheetId::Items, "serial", *serial)) {
        const auto other = m_state.registerStore.item(cells.front());
        if (!other || other->id == item->id || other->state == ItemState::WrittenOff) continue;
        if (other->kitType != item->kitType || other->gtin != item->gtin) continue;
        const bool isFirst = item->id < other->id;
        note({.kind = LookAt::Kind::SerialTwice,
              .item = isFirst ? item->name() : other->name(),
              .otherItem = isFirst ? other->name() : item->name(),
              .text = *serial});
    }
}

void MergeLook::lookAtName(const RowWritten& row) {
    const Sheet& sheet = core::sheet(row.sheet);
    if (row.isGone || !isNamed(row.sheet) || m_wasThere.count(std::string(sheet.table) + ' ' + row.key) > 0)
        return;
    const auto [names, isFirst] = m_named.try_emplace(row.sheet);
    if (isFirst)
        for (const Cells& cells : m_state.registerStore.all(row.sheet))
            names->second.add(foldName(cells.front()), cells.front());
    for (const std::string& name : names->second.oneSlipFrom(row.key))
        note({.kind = LookAt::Kind::LikeNames,
              .sheet = std::string(sheet.name()),
              .name = name,
              .otherName = row.keyCells.front()});
}

void MergeLook::lookAtSignature(const Fact& fact, const CheckSigned& signature) {
    const auto kept = signOffTables::signOff(m_database, signature.check);
    if (kept && (kept->stamp != fact.stamp() || m_wasSigned.count(signature.check) > 0))
        note({.kind = LookAt::Kind::SignedTwice, .name = kept->location.name});
    if (kept && kept->phase == Phase::Launch) m_boats.insert(kept->location.name);
}

/// Of a size its kit type may have been renamed, too, on either machine.
bool MergeLook::areOfSame(const Renamed& a, const Renamed& b) const {
    const auto kitTypeNow = [&](const Renamed& each) {
        return namesNow::of(m_database, Named::KitType, each.of);
    };
    return a.named == b.named && sameName(a.from, b.from) &&
           (sameName(a.of, b.of) || sameName(kitTypeNow(a), kitTypeNow(b)));
}

/// What was taken away and is there, since something names it, by the newest fact of its own.
void MergeLook::lookAtRemoved(const RowWritten& row) {
    std::vector<namedRows::Key> rows;
    if (row.isGone) rows.push_back({row.sheet, row.key});
    if (const auto cells = m_state.registerStore.find(row.sheet, row.key))
        for (const namedRows::Key& each : namedRows::in(sheet(row.sheet), *cells))
            rows.push_back(each);
    for (const auto& [id, key] : rows) {
        if (!m_asked.insert({id, key}).second) continue; // many items are of one kit type
        const Sheet& named = sheet(id);
        const auto there = named.staysWhileNamed ? m_state.registerStore.find(id, key) : std::nullopt;
        if (!there) continue;
        const auto facts = factTable::ofRow(m_database, std::string(named.table), key);
        if (facts.empty() || !factTable::rowOf(facts.back()).isGone) continue;
        note({.kind = LookAt::Kind::CameBack,
              .sheet = std::string(named.name()),
              .name = ClubRegister(m_state).nameOfRow(id, *there)});
    }
}

/// One thing that two machines renamed, neither knowing of the other: the newer name holds.
void MergeLook::lookAtRenaming(const Fact& fact, const Renamed& renamed) {
    if (!m_renamings) m_renamings = factTable::ofPlainKind(m_database, fact.kind);
    for (const Fact& other : *m_renamings) {
        if (other.machine == fact.machine || isNew(other) || knewOfEachOther(fact, other)) continue;
        const auto body = factTable::bodyOf(other);
        const auto* theirs = body ? std::get_if<Renamed>(&*body) : nullptr;
        if (!theirs || !areOfSame(*theirs, renamed) || theirs->to == renamed.to) continue;
        const bool isNewer = fact.stamp() > other.stamp();
        const auto sheet = sheetOf(renamed.named);
        note({.kind = LookAt::Kind::RenamedTwice,
              .sheet = sheet ? std::string(core::sheet(*sheet).name()) : std::string(),
              .name = namesNow::of(m_database, renamed.named, renamed.to, renamed.of),
              .otherName = isNewer ? theirs->to : renamed.to});
    }
}

/// A launch after a launch, without a return between them, of two machines, of which one came in.
void MergeLook::lookAtLaunches(const std::string& boat) {
    const auto signOffs = signOffTables::signOffsOf(m_database, boat);
    for (std::size_t i = 0; i + 1 < signOffs.size(); ++i) {
        if (signOffs[i].phase != Phase::Launch || signOffs[i + 1].phase != Phase::Launch) continue;
        const auto later = factTable::byStamp(m_database, signOffs[i].stamp);
        const auto earlier = factTable::byStamp(m_database, signOffs[i + 1].stamp);
        if (!later || !earlier || later->machine == earlier->machine) continue;
        if (isNew(*later) || isNew(*earlier)) note({.kind = LookAt::Kind::OutTwice, .name = boat});
    }
}

/// Goes by what holds, not by which facts came in: a PIN also goes when only the erasure of it arrives, when
/// a newer one comes without what is kept of it, or when its person is no gear officer here any more.
void MergeLook::lookAtPins() {
    const auto now = pinsNow(m_state);
    std::set<std::string> set, changed;
    for (const auto& [fact, person] : now) {
        set.insert(person);
        if (m_pins.count(fact) == 0) changed.insert(person);
    }
    for (const auto& [fact, person] : m_pins)
        if (now.count(fact) == 0) changed.insert(namesNow::of(m_database, Named::Person, person, {}));
    for (const std::string& person : changed)
        note({.kind = LookAt::Kind::PinsChanged,
              .sheet = std::string(sheet(SheetId::People).name()),
              .name = person,
              .isPinSet = set.count(person) > 0,
              .isOpen = now.empty()});
}

} // namespace core
