#include "core/exchange/import_draft.h"

#include "core/base/error_code.h"

#include <algorithm>
#include <cassert>

namespace core {
namespace {

/// Sheets that grow with the years and that no other sheet refers to are looked up row by row instead of
/// being loaded.
bool isLoaded(SheetId id) {
    return id != SheetId::Services && id != SheetId::Use && id != SheetId::Log;
}

Cells keyCellsOf(const Sheet& sheet, const GivenRow& given) {
    Cells cells;
    for (int key = 0; key < sheet.keyColumns; ++key)
        cells.push_back(given.text(key));
    return cells;
}

/// The columns of which exactly one must be given, if the sheet has such: its first two.
bool hasAlternatives(const Sheet& sheet) {
    return mayBeEmpty(sheet, 0) && mayBeEmpty(sheet, 1);
}

bool checkAlternatives(const Sheet& sheet, GivenRow& given, Rejections& rejections) {
    if (!hasAlternatives(sheet) || given.isFaulty(0) || given.isFaulty(1)) return true;
    const bool first = !given.text(0).empty();
    const bool second = !given.text(1).empty();
    if (first != second) return true;
    rejections.add(sheet, given, first ? 1 : 0,
                   {first ? ErrorCode::BothGiven : ErrorCode::NeitherGiven,
                    {std::string(sheet.columns[0].name), std::string(sheet.columns[1].name)}});
    return false;
}

bool checkKey(const Sheet& sheet, GivenRow& given, Rejections& rejections) {
    bool good = true;
    for (int key = 0; key < sheet.keyColumns; ++key) {
        good = good && !given.isFaulty(key);
        if (!given.text(key).empty() || given.isFaulty(key) || mayBeEmpty(sheet, key)) continue;
        const std::string_view name = sheet.columns[static_cast<std::size_t>(key)].name;
        rejections.add(sheet, given, key, {ErrorCode::KeyCellMissing, {std::string(name)}});
        good = false;
    }
    return checkAlternatives(sheet, given, rejections) && good;
}

/// The day and the reason of a state are not those of another that is given without.
void endStateBefore(DraftRow& row, const GivenRow& given) {
    const Sheet& items = core::sheet(SheetId::Items);
    const auto at = [&](const char* column) { return static_cast<std::size_t>(items.indexOf(column)); };
    if (row.cells[at("state")] == row.before[at("state")]) return;
    for (const char* column : {"since", "why"})
        if (!given.cells[at(column)]) row.cells[at(column)].clear();
}

/// A row that is there keeps the spelling of its key: other rows use it.
void fill(DraftRow& row, const GivenRow& given) {
    const auto first = row.isNew() ? 0 : static_cast<std::size_t>(core::sheet(row.sheet).keyColumns);
    for (std::size_t i = first; i < given.cells.size(); ++i)
        if (given.cells[i]) row.cells[i] = *given.cells[i];
    if (row.sheet == SheetId::Items && !row.isNew()) endStateBefore(row, given);
}

} // namespace

const std::string& DraftRow::cell(std::string_view column) const {
    const int index = core::sheet(sheet).indexOf(column);
    assert(index >= 0);
    return cells[static_cast<std::size_t>(index)];
}

ImportDraft::ImportDraft(const RegisterRows& current)
    : m_current(current) {
    for (const Sheet& sheet : allSheets())
        if (isLoaded(sheet.id))
            for (Cells& cells : current.all(sheet.id)) {
                const std::string key = keyOf(sheet, cells);
                add(sheet.id, key, {sheet.id, cells, cells, nullptr});
            }
}

DraftRow& ImportDraft::add(SheetId id, const std::string& key, DraftRow row) {
    SheetDraft& draft = of(id);
    draft.rows.push_back(std::move(row));
    draft.byKey.emplace(key, &draft.rows.back());
    return draft.rows.back();
}

DraftRow* ImportDraft::find(SheetId id, const std::string& key) {
    const auto& byKey = of(id).byKey;
    if (const auto found = byKey.find(key); found != byKey.end()) return found->second;
    if (isLoaded(id)) return nullptr;
    const auto cells = m_current.find(id, key);
    return cells ? &add(id, key, {id, *cells, *cells, nullptr}) : nullptr;
}

void ImportDraft::lay(SheetFile& file, const MintTag& mintTag, Rejections& rejections) {
    const Sheet& sheet = *file.sheet;
    of(sheet.id).isWhole = file.isWhole;
    std::vector<GivenRow*> unnamed;
    for (GivenRow& given : file.rows) {
        const bool takesCode =
            sheet.id == SheetId::Items && given.text(0).empty() && !given.isFaulty(0) && !given.isRagged;
        if (takesCode)
            unnamed.push_back(&given);
        else
            layRow(sheet, given, rejections);
    }
    // Only now are all codes known that a fresh one must not collide with.
    for (GivenRow* given : unnamed)
        if (mintCode(*given, mintTag))
            layRow(sheet, *given, rejections);
        else
            rejections.add(sheet, *given, 0, {ErrorCode::NoFreeTagCode});
    auto& touched = of(sheet.id).touched;
    std::stable_sort(touched.begin(), touched.end(),
                     [](const DraftRow* a, const DraftRow* b) { return a->given->row < b->given->row; });
}

/// What was renamed goes on under its new name: a row of the old one would be about the same thing.
bool ImportDraft::rejectOldName(const Sheet& sheet, GivenRow& given, Rejections& rejections) const {
    const int column = sheet.keyColumns - 1; // the last of a key is a row's own name, where it has one
    const auto named = namedIn(sheet, column);
    if (!named || sheetOf(*named) != sheet.id) return false;
    const std::string& name = given.text(column);
    const std::string now = m_current.nameNow(*named, name, column > 0 ? given.text(0) : std::string());
    if (foldName(now) == foldName(name)) return false;
    rejections.add(sheet, given, column, {ErrorCode::NameOfOld, {name, now}});
    return true;
}

/// An item is named by the code of its first tag: a later one would begin a second item of that tag.
bool ImportDraft::rejectTagOfAnother(const Sheet& sheet, GivenRow& given, Rejections& rejections) const {
    if (sheet.id != SheetId::Items) return false;
    const std::string code = m_current.codeOfTag(given.text(0));
    if (code == given.text(0)) return false;
    rejections.add(sheet, given, 0, {ErrorCode::TagTaken, {code, given.text(0)}});
    return true;
}

void ImportDraft::layRow(const Sheet& sheet, GivenRow& given, Rejections& rejections) {
    const std::string key = keyOf(sheet, keyCellsOf(sheet, given));
    if (given.isRagged) { // there for rows that refer to it, and for nothing else
        if (!find(sheet.id, key))
            fill(add(sheet.id, key, {sheet.id, {}, Cells(sheet.columns.size()), nullptr}), given);
        return;
    }
    if (!checkKey(sheet, given, rejections)) return;
    DraftRow* row = find(sheet.id, key);
    if (row && row->given) {
        rejections.add(sheet, given, sheet.keyColumns - 1,
                       {ErrorCode::KeyTwice, {std::to_string(row->given->row)}});
        return;
    }
    if (!row) {
        if (rejectOldName(sheet, given, rejections) || rejectTagOfAnother(sheet, given, rejections)) return;
        row = &add(sheet.id, key, {sheet.id, {}, Cells(sheet.columns.size()), nullptr});
    }
    row->given = &given;
    fill(*row, given);
    of(sheet.id).touched.push_back(row);
}

bool ImportDraft::mintCode(GivenRow& given, const MintTag& mintTag) {
    for (int tries = 0; tries < 1000; ++tries) {
        std::string code = mintTag(TagClass::Kit);
        if (find(SheetId::Items, foldName(code))) continue;
        given.cells[0] = std::move(code);
        return true;
    }
    return false;
}

} // namespace core
