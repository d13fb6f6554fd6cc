#include "core/register/manifest_record.h"

#include "core/register/typed_rows.h"

#include <algorithm>
#include <set>

namespace core {
namespace {

/// What one act writes follows within this time; what a person does next takes longer.
constexpr std::int64_t onEndMillis = 10'000;

std::string_view cell(SheetId id, const Cells& cells, std::string_view column) {
    return cellOf(sheet(id), cells, column);
}

/// Rows whose `column` names `owner`, in their own order.
template <class Rows>
std::vector<Cells> rowsOf(const Rows& rows, SheetId id, std::string_view column, const std::string& owner) {
    std::vector<std::pair<int, Cells>> found;
    for (const auto& [key, row] : rows)
        if (!owner.empty() && foldName(cell(id, row.cells, column)) == foldName(owner))
            found.emplace_back(row.position, row.cells);
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Cells> ordered;
    for (auto& [position, cells] : found)
        ordered.push_back(std::move(cells));
    return ordered;
}

AskedPoint asked(PhasePoint given) {
    return {.phase = std::move(given.phase), .point = std::move(given.point)};
}

void sortNames(std::vector<std::string>& names) {
    std::sort(names.begin(), names.end(),
              [](const std::string& a, const std::string& b) { return foldName(a) < foldName(b); });
}

} // namespace

void ManifestRecord::Tables::lay(const ManifestFact& fact) {
    Rows& rows = fact.sheet == SheetId::Boats ? boats : fact.sheet == SheetId::Points ? points : lines;
    if (fact.isGone)
        rows.erase(fact.key);
    else
        rows[fact.key] = {fact.position, fact.cells};
}

ManifestRecord::ManifestRecord(std::vector<ManifestFact> facts, std::vector<ManifestCheck> checks)
    : m_facts(std::move(facts))
    , m_checks(std::move(checks)) {
    for (const ManifestFact& fact : m_facts)
        m_now.lay(fact);
}

std::vector<std::string> ManifestRecord::classes() const {
    std::map<std::string, std::string> byKey;
    for (const auto& [key, row] : m_now.boats)
        if (const Boat boat = boatFrom(row.cells); !boat.boatClass.empty())
            byKey.emplace(foldName(boat.boatClass), boat.boatClass);
    std::vector<std::string> names;
    for (const auto& [key, name] : byKey)
        names.push_back(name);
    return names;
}

std::vector<std::string> ManifestRecord::classesWithoutBoat() const {
    std::map<std::string, std::string> byKey;
    const auto add = [&](const Rows& rows, SheetId id) {
        for (const auto& [key, row] : rows) {
            const std::string name(cell(id, row.cells, "boat_class"));
            const bool isAsked = id == SheetId::Points || manifestLineFrom(row.cells).quantity > 0;
            if (isAsked && !name.empty()) byKey.emplace(foldName(name), name);
        }
    };
    add(m_now.lines, SheetId::ManifestLines);
    add(m_now.points, SheetId::Points);
    for (const std::string& name : classes())
        byKey.erase(foldName(name));
    std::vector<std::string> names;
    for (const auto& [key, name] : byKey)
        names.push_back(name);
    return names;
}

std::vector<std::string> ManifestRecord::boats() const {
    std::vector<std::string> names;
    for (const auto& [key, row] : m_now.boats)
        names.push_back(boatFrom(row.cells).name);
    sortNames(names);
    return names;
}

std::vector<std::string> ManifestRecord::boatsOf(const std::string& boatClass) const {
    std::vector<std::string> names;
    for (const Cells& cells : rowsOf(m_now.boats, SheetId::Boats, "boat_class", boatClass))
        names.push_back(boatFrom(cells).name);
    sortNames(names);
    return names;
}

Manifest ManifestRecord::manifestIn(const Tables& tables, const ManifestOwner& owner) {
    const auto rowsFor = [&](std::string_view column, const std::string& name) {
        Manifest rows;
        for (const Cells& cells : rowsOf(tables.lines, SheetId::ManifestLines, column, name))
            rows.lines.push_back({.line = manifestLineFrom(cells)});
        for (const Cells& cells : rowsOf(tables.points, SheetId::Points, column, name))
            rows.points.push_back(asked(pointFrom(cells)));
        return rows;
    };
    std::string boatClass = owner.name;
    Manifest own;
    if (owner.kind == ManifestOwner::Kind::Boat) {
        const auto boat = tables.boats.find(foldName(owner.name));
        if (boat == tables.boats.end()) return {};
        boatClass = boatFrom(boat->second.cells).boatClass;
        own = rowsFor("boat", owner.name);
    }
    Manifest ofClass = rowsFor("boat_class", boatClass);
    ofClass.boatClass = boatClass;
    return manifestOf(ofClass, own);
}

Manifest ManifestRecord::asOf(const ManifestOwner& owner, const std::string& stamp) const {
    Tables then;
    for (const ManifestFact& fact : m_facts)
        if (fact.stamp <= stamp) then.lay(fact);
    return manifestIn(then, owner);
}

bool ManifestRecord::isOneActWithNext(std::size_t at) const {
    if (at + 1 >= m_facts.size()) return false;
    const ManifestFact& fact = m_facts[at];
    const ManifestFact& next = m_facts[at + 1];
    return next.machine == fact.machine && next.seq == fact.seq + 1 && next.by == fact.by &&
           next.at == fact.at && next.recordedAt.millis() - fact.recordedAt.millis() <= onEndMillis;
}

std::vector<ManifestVersion> ManifestRecord::versionsOf(const ManifestOwner& owner) const {
    std::vector<ManifestVersion> versions;
    Tables tables;
    Manifest before;
    std::set<std::pair<SheetId, std::string>> written;
    for (std::size_t i = 0; i < m_facts.size(); ++i) {
        const ManifestFact& fact = m_facts[i];
        tables.lay(fact);
        written.emplace(fact.sheet, fact.key);
        // One act writes a row once.
        if (isOneActWithNext(i) && !written.contains({m_facts[i + 1].sheet, m_facts[i + 1].key})) continue;
        written.clear();
        Manifest after = manifestIn(tables, owner);
        auto changes = changesBetween(before, after);
        before = std::move(after);
        if (!changes.empty())
            versions.push_back({fact.stamp, fact.recordedAt, fact.at, fact.by, std::move(changes)});
    }
    return versions;
}

std::vector<ManifestCheck> ManifestRecord::checksUnder(const ManifestOwner& owner,
                                                       const std::vector<ManifestVersion>& versions,
                                                       const ManifestVersion& version) const {
    const bool isBoat = owner.kind == ManifestOwner::Kind::Boat;
    std::set<std::string> boats;
    for (const std::string& boat : isBoat ? std::vector{owner.name} : boatsOf(owner.name))
        boats.insert(foldName(boat));
    const auto next = std::find_if(versions.begin(), versions.end(),
                                   [&](const ManifestVersion& each) { return each.stamp > version.stamp; });
    std::vector<ManifestCheck> checks;
    for (const ManifestCheck& check : m_checks)
        if (check.stamp > version.stamp && (next == versions.end() || check.stamp < next->stamp) &&
            boats.contains(foldName(check.boat)))
            checks.push_back(check);
    return checks;
}

const ManifestVersion* versionOn(const std::vector<ManifestVersion>& versions, CalendarDay day) {
    const ManifestVersion* newest = nullptr;
    for (const ManifestVersion& version : versions)
        if (version.since().localDay() <= day) newest = &version;
    return newest;
}

} // namespace core
