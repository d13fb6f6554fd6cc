#include "core/exchange/name_spelling.h"

#include "core/base/error_code.h"
#include "core/exchange/csv_cell.h"
#include "core/register/cell_values.h"

#include <set>

namespace core {
namespace {

/// The key of a row whose key cells are these.
std::string joinedKey(std::initializer_list<std::string_view> names) {
    std::string key;
    for (std::string_view name : names)
        key += '\x1F' + foldName(name);
    key.erase(0, 1);
    return key;
}

Error noSuchRow(const Sheet& sheet, const std::string& name) {
    const std::string column(sheet.columns[0].name);
    const std::string file(sheet.file);
    if (column == "code") return {ErrorCode::ReferredItemMissing, {shown(name), file}};
    return {ErrorCode::ReferredRowMissing, {column, shown(name), file}};
}

} // namespace

NameSpelling::NameSpelling(ImportDraft& draft, Rejections& rejections)
    : m_draft(draft)
    , m_rejections(rejections) {
    learn();
}

void NameSpelling::learn() {
    const auto learnFrom = [&](SheetId id, std::string_view column, Spellings& spellings, auto scopeOf) {
        const auto index = static_cast<std::size_t>(sheet(id).indexOf(column));
        for (const DraftRow& row : m_draft.all(id))
            if (!row.isNew()) // as the register has it, not as the files write it
                spellings.emplace(std::pair(scopeOf(row), foldName(row.before[index])), row.before[index]);
    };
    const auto none = [](const DraftRow&) { return std::string(); };
    const auto ofRule = [](const DraftRow& row) { return foldName(row.cell("kit_type")); };
    const auto ofItem = [this](const DraftRow& row) { return kitTypeOf(row.cell("code")); };
    for (SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points})
        learnFrom(id, "boat_class", m_classes, none);
    learnFrom(SheetId::Points, "point", m_points, [this](const DraftRow& row) { return classOf(row); });
    learnFrom(SheetId::LifeRules, "part", m_parts, ofRule);
    learnFrom(SheetId::LifeRules, "event", m_events, ofRule);
    learnFrom(SheetId::Parts, "part", m_parts, ofItem);
    learnFrom(SheetId::Happenings, "event", m_events, ofItem);
}

void NameSpelling::spell(DraftRow& row) {
    spellReferences(row);
    switch (row.sheet) {
    case SheetId::Boats:
    case SheetId::ManifestLines:
        return spellLikeOthers(row, "boat_class", {}, m_classes);
    case SheetId::Points:
        spellLikeOthers(row, "boat_class", {}, m_classes);
        return spellLikeOthers(row, "point", classOf(row), m_points);
    case SheetId::LifeRules:
        spellLikeOthers(row, "part", foldName(row.cell("kit_type")), m_parts);
        return spellLikeOthers(row, "event", foldName(row.cell("kit_type")), m_events);
    case SheetId::Parts:
        return spellLikeOthers(row, "part", kitTypeOf(row.cell("code")), m_parts);
    case SheetId::Happenings:
        return spellLikeOthers(row, "event", kitTypeOf(row.cell("code")), m_events);
    case SheetId::Items:
        return spellSize(row);
    case SheetId::Services:
        return spellRule(row);
    default:
        return;
    }
}

void NameSpelling::spellReferences(DraftRow& row) {
    const Sheet& sheet = core::sheet(row.sheet);
    const int first = row.isNew() ? 0 : sheet.keyColumns;
    for (int column = first; column < static_cast<int>(sheet.columns.size()); ++column) {
        const Column& described = sheet.columns[static_cast<std::size_t>(column)];
        if (!described.refersTo || row.given->text(column).empty()) continue;
        if (described.type == CellType::Names)
            spellList(row, column);
        else
            spellOne(row, column);
    }
}

void NameSpelling::spellOne(DraftRow& row, int column) {
    std::string& cell = row.cells[static_cast<std::size_t>(column)];
    if (const DraftRow* found = referred(row, column, cell)) cell = found->cells[0];
}

void NameSpelling::spellList(DraftRow& row, int column) {
    std::string& cell = row.cells[static_cast<std::size_t>(column)];
    std::string list;
    std::set<std::string> known{foldName(row.cell("kit_type"))}; // a kit type need not stand in for itself
    for (const std::string& name : namesFrom(cell)) {
        const DraftRow* found = referred(row, column, name);
        if (known.insert(foldName(name)).second)
            list += (list.empty() ? "" : ";") + (found ? found->cells[0] : name);
    }
    cell = list;
}

const DraftRow* NameSpelling::referred(DraftRow& row, int column, const std::string& name) {
    const Sheet& sheet = core::sheet(row.sheet);
    const Sheet& other = core::sheet(*sheet.columns[static_cast<std::size_t>(column)].refersTo);
    const DraftRow* found = m_draft.find(other.id, foldName(name));
    if (!found && m_draft.isWhole(other.id))
        m_rejections.add(sheet, *row.given, column, noSuchRow(other, name));
    return found;
}

void NameSpelling::spellLikeOthers(DraftRow& row, std::string_view column, const std::string& scope,
                                   Spellings& spellings) {
    const int index = core::sheet(row.sheet).indexOf(column);
    const bool isKept = !row.isNew() && index < core::sheet(row.sheet).keyColumns;
    std::string& cell = row.cells[static_cast<std::size_t>(index)];
    if (!cell.empty() && !isKept)
        cell = spellings.emplace(std::pair(scope, foldName(cell)), cell).first->second;
}

void NameSpelling::spellSize(DraftRow& row) {
    const int column = sheet(SheetId::Items).indexOf("size");
    const std::string& kitType = row.cell("kit_type");
    std::string& size = row.cells[static_cast<std::size_t>(column)];
    if (size.empty() || kitType.empty() || !m_draft.find(SheetId::KitTypes, foldName(kitType))) return;
    if (const DraftRow* found = m_draft.find(SheetId::Sizes, joinedKey({kitType, size})))
        size = found->cell("size");
    else if (m_draft.isWhole(SheetId::Sizes))
        m_rejections.add(sheet(SheetId::Items), *row.given, column,
                         {ErrorCode::ReferredSizeMissing, {shown(size), shown(kitType)}});
}

void NameSpelling::spellRule(DraftRow& row) {
    const Sheet& services = sheet(SheetId::Services);
    const std::string kitType = kitTypeOf(row.cell("code"));
    std::string& part = row.cells[static_cast<std::size_t>(services.indexOf("part"))];
    std::string& rule = row.cells[static_cast<std::size_t>(services.indexOf("rule"))];
    const DraftRow* found = m_draft.find(SheetId::LifeRules, joinedKey({kitType, part, rule}));
    if (found && row.isNew()) {
        part = found->cell("part");
        rule = found->cell("rule");
    }
    if (found || !row.isNew() || kitType.empty() || !m_draft.isWhole(SheetId::LifeRules)) return;
    m_rejections.add(
        services, *row.given, services.indexOf("rule"),
        part.empty() ? Error{ErrorCode::ReferredRuleMissing, {shown(rule), shown(kitType)}}
                     : Error{ErrorCode::ReferredPartRuleMissing, {shown(rule), shown(part), shown(kitType)}});
}

std::string NameSpelling::classOf(const DraftRow& point) {
    const DraftRow* boat = m_draft.find(SheetId::Boats, foldName(point.cell("boat")));
    return foldName((boat ? *boat : point).cell("boat_class")) + '\x1F' + point.cell("phase");
}

std::string NameSpelling::kitTypeOf(const std::string& code) {
    const DraftRow* item = m_draft.find(SheetId::Items, foldName(code));
    const std::string kitType = item ? foldName(item->cell("kit_type")) : std::string();
    return m_draft.find(SheetId::KitTypes, kitType) ? kitType : std::string();
}

} // namespace core
