#include "core/club/club_register.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/one_slip.h"
#include "core/base/plain_text.h"
#include "core/club/club_state.h"
#include "core/exchange/import_checks.h"
#include "core/store/names_now.h"
#include "core/store/row_table.h"
#include "core/upkeep/same_name.h"

#include <algorithm>

namespace core {
namespace {

/// The name as it is spelled now, among those that there are.
std::optional<std::string> spelled(const ClubState& state, Named named, const std::string& name,
                                   const std::string& of) {
    if (named == Named::Size) {
        const auto row = state.registerStore.find(SheetId::Sizes, keyOf(sheet(SheetId::Sizes), {of, name}));
        return row ? std::optional(row->at(1)) : std::nullopt;
    }
    if (const auto id = sheetOf(named)) {
        const auto row = state.registerStore.find(*id, foldName(name));
        return row ? std::optional(row->front()) : std::nullopt;
    }
    for (const SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points}) {
        const auto column = static_cast<std::size_t>(sheet(id).indexOf("boat_class"));
        for (const Cells& row : state.registerStore.all(id))
            if (sameName(row[column], name)) return row[column];
    }
    return std::nullopt;
}

/// All boat classes, or kit types, as they are spelled; empty for what an import does not compare.
std::vector<std::string> namesAlike(const ClubState& state, Named named) {
    std::vector<std::string> names;
    const auto add = [&](SheetId id) {
        const auto column = static_cast<std::size_t>(sheet(id).indexOf(nameOf(named)));
        for (const Cells& row : state.registerStore.all(id))
            if (std::ranges::find(names, row[column]) == names.end()) names.push_back(row[column]);
    };
    if (named == Named::KitType) add(SheetId::KitTypes);
    if (named == Named::BoatClass)
        for (const SheetId id : {SheetId::ManifestLines, SheetId::Boats})
            add(id);
    return names;
}

/// Rows of sheets that lose rows, as they stand.
struct StandingRow {
    SheetId sheet;
    StoredRow row;
};

std::vector<StandingRow> rowsThatMayGo(const ClubState& state) {
    std::vector<StandingRow> rows;
    for (const Sheet& sheet : allSheets())
        if (ClubRegister::mayRemove(sheet.id))
            for (const Cells& cells : state.registerStore.all(sheet.id))
                rows.push_back({sheet.id, *rowTable::find(*state.database, sheet, keyOf(sheet, cells))});
    return rows;
}

/// A row that had the new name may have been taken away: its facts are about what is called so now, which is
/// to stand as it did before.
void writeAgainWhatChanged(ClubState& state, Ledger& ledger, const std::vector<StandingRow>& before,
                           const std::string& by) {
    for (const auto& [id, row] : before) {
        const Sheet& sheet = core::sheet(id);
        RowChange change{.sheet = id,
                         .keyCells = Cells(row.cells.begin(), row.cells.begin() + sheet.keyColumns)};
        for (int column = sheet.keyColumns; column < static_cast<int>(sheet.columns.size()); ++column)
            change.set.emplace_back(column, row.cells[static_cast<std::size_t>(column)]);
        if (sheet.keepsOrder) change.order = row.position;
        const RowWritten now = namesNow::row(*state.database, rowWritten(change));
        Cells cells = now.keyCells;
        for (const auto& [column, text] : now.set)
            cells.push_back(text);
        if (state.registerStore.find(id, now.key) != cells) ledger.append(now, by);
    }
}

} // namespace

std::vector<Error> ClubRegister::warningsOfName(Named named, const std::string& from,
                                                const std::string& to) const {
    std::vector<Error> warnings;
    const std::string name(withoutOuterBlanks(to));
    const ErrorCode alike =
        named == Named::KitType ? ErrorCode::KitTypeLikeAnother : ErrorCode::ClassLikeAnother;
    for (const std::string& other : namesAlike(*m_state, named))
        if (!sameName(other, from) && isLikelySlip(foldName(name), foldName(other)))
            warnings.push_back({alike, {name, other}});
    const auto kitType = named == Named::KitType ? m_state->registerStore.kitType(from) : std::nullopt;
    if (kitType && !kitType->worn && isCalledJacket(name) && !isCalledJacket(from))
        warnings.push_back({ErrorCode::JacketNotWorn, {name}});
    return warnings;
}

Outcome ClubRegister::rename(Named named, const std::string& from, const std::string& to,
                             const std::string& of, const std::string& by) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto old = spelled(*m_state, named, from, of);
        if (!old) return Error{ErrorCode::NothingSoNamed, {std::string(nameOf(named)), from}};
        const auto name = nameFrom(withoutOuterBlanks(to), nameOf(named));
        if (!name) return name.error();
        if (name->empty()) return Error{ErrorCode::NameMissing};
        if (*name == *old) return Done{};
        if (!sameName(*name, *old)) {
            if (const auto other = spelled(*m_state, named, *name, of))
                return Error{ErrorCode::NameTaken, {*other}};
            const std::string now = namesNow::of(*m_state->database, named, *name, of);
            if (now != *name && !sameName(now, *old)) return Error{ErrorCode::NameOfOld, {*name, now}};
        }
        const auto before = rowsThatMayGo(*m_state);
        ledger.append(Renamed{named, of, *old, *name}, by);
        writeAgainWhatChanged(*m_state, ledger, before, by);
        m_state->heldCheck.forget(); // it speaks in the names of before
        return Done{};
    });
}

Outcome ClubRegister::nameClub(const std::string& given, const std::string& by) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const auto name = nameFrom(withoutOuterBlanks(given), "club");
        if (!name) return name.error();
        if (name->empty()) return Error{ErrorCode::NameMissing};
        if (*name != rowTable::clubName(*m_state->database)) ledger.append(ClubNamed{*name}, by);
        return Done{};
    });
}

} // namespace core
