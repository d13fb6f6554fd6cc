#include "core/club/club_register.h"

#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_import.h"
#include "core/store/row_table.h"
#include "core/upkeep/same_name.h"

#include <fmt/ranges.h>

namespace core {
namespace {

/// Later than any day that a rule reckons.
constexpr int manyDays = 200 * 366;

/// All cells of the row to be written by name, its key first. An error: the edit cannot be understood.
class RowToWrite {
public:
    RowToWrite(ClubState& state, const Sheet& sheet, const RowEdit& edit)
        : m_state(state)
        , m_sheet(sheet)
        , m_edit(edit) {}

    Result<CellTexts> cells() const {
        for (const auto& [column, text] : m_edit.cells)
            if (m_sheet.indexOf(column) < 0) return unknown(column);
        if (m_edit.key.empty()) return newRow();
        for (const auto& [column, text] : m_edit.key)
            if (m_sheet.indexOf(column) < 0) return unknown(column);
        const auto row = ClubRegister(m_state).row(m_sheet.id, keyCells());
        const std::string name = ClubRegister(m_state).nameOfRow(m_sheet.id, keyCells());
        if (!row) return Error{ErrorCode::NoSuchRow, {std::string(m_sheet.name()), name}};
        if (m_edit.seen && *m_edit.seen != *row) return Error{ErrorCode::RowChanged, {name}};
        for (const auto& [column, text] : m_edit.cells)
            if (isKey(column) && text != (*row)[index(column)])
                return Error{ErrorCode::KeyCellFixed, {column, name}};
        CellTexts key;
        for (int i = 0; i < m_sheet.keyColumns; ++i)
            key.emplace_back(m_sheet.columns[static_cast<std::size_t>(i)].name,
                             (*row)[static_cast<std::size_t>(i)]);
        return whole(key, m_edit.cells);
    }

private:
    Result<CellTexts> newRow() const {
        Cells key(static_cast<std::size_t>(m_sheet.keyColumns));
        for (const auto& [column, text] : m_edit.cells)
            if (isKey(column))
                key[index(column)] = readCell(m_sheet.columns[index(column)], text).text.value_or("");
        if (const auto row = ClubRegister(m_state).row(m_sheet.id, key))
            return Error{ErrorCode::RowThere, {ClubRegister(m_state).nameOfRow(m_sheet.id, *row)}};
        return whole({}, m_edit.cells);
    }

    std::size_t index(const std::string& column) const {
        return static_cast<std::size_t>(m_sheet.indexOf(column));
    }
    bool isKey(const std::string& column) const { return m_sheet.indexOf(column) < m_sheet.keyColumns; }

    Error unknown(const std::string& column) const {
        std::vector<std::string_view> names;
        for (const Column& each : m_sheet.columns)
            names.push_back(each.name);
        return {ErrorCode::ColumnUnknown,
                {column, std::string(m_sheet.file), fmt::format("{}", fmt::join(names, ", "))}};
    }

    Cells keyCells() const {
        Cells cells(static_cast<std::size_t>(m_sheet.keyColumns));
        for (const auto& [column, text] : m_edit.key)
            if (isKey(column)) cells[index(column)] = text;
        return cells;
    }

    /// Key cells that are empty are left out: of a row they cannot be cleared.
    CellTexts whole(const CellTexts& key, const CellTexts& cells) const {
        CellTexts row;
        for (const auto& each : key)
            if (!each.second.empty()) row.push_back(each);
        for (const auto& each : cells)
            if (key.empty() ? !(isKey(each.first) && each.second.empty()) : !isKey(each.first))
                row.push_back(each);
        return row;
    }

    ClubState& m_state;
    const Sheet& m_sheet;
    const RowEdit& m_edit;
};

Result<EditPlan> planned(ClubState& state, const RegisterEdit& edit, CalendarDay today) {
    const Sheet& sheet = core::sheet(edit.sheet);
    std::vector<CellTexts> rows;
    for (const RowEdit& each : edit.rows) {
        auto cells = RowToWrite(state, sheet, each).cells();
        if (!cells) return cells.error();
        rows.push_back(std::move(*cells));
    }
    ImportPlan plan =
        planSheet(sheet, sheetOfRows(sheet, rows), state.registerStore, today, mintingFor(*state.database));
    for (RejectedRow& each : plan.rejected)
        if (each.row > 0) --each.row; // the edit has no header
    return EditPlan{std::move(plan.rejected), std::move(plan.changes), {}};
}

/// Appends what the plan says. Records that count from their instant are told it; rows of an ordered sheet go
/// behind the others.
void append(ClubState& state, Ledger& ledger, const EditPlan& plan, const std::string& by, Moment moment) {
    for (RowChange change : plan.changes) {
        if (change.order) change.order = placeBehind(*state.database, change);
        RowWritten row = rowWritten(change);
        row.at = moment.at;
        ledger.append(row, by);
    }
    state.heldCheck.forget();
}

Outlook outlookOf(ClubState& state, CalendarDay today) {
    const ClubAnswers answers(state);
    Outlook outlook{answers.boatConditions(today), {}, answers.dueList(today, manyDays)};
    for (const Boat& boat : ClubRegister(state).boatsHere(today)) {
        const auto kit = kitAtHomeOf(boat.name, state.registerStore.manifestOf(boat),
                                     state.registerStore.itemsOfBoat(boat.name));
        outlook.kit.insert(outlook.kit.end(), kit.begin(), kit.end());
    }
    return outlook;
}

} // namespace

Result<EditPlan> ClubRegister::plan(const RegisterEdit& edit, Moment moment) const {
    return m_state->tried([&](Ledger& ledger) -> Result<EditPlan> {
        auto plan = planned(*m_state, edit, moment.today);
        if (!plan || plan->changes.empty()) return plan;
        const Outlook before = outlookOf(*m_state, moment.today);
        append(*m_state, ledger, *plan, {}, moment);
        plan->effects = changesBetween(before, outlookOf(*m_state, moment.today));
        return plan;
    });
}

Result<EditPlan> ClubRegister::write(const RegisterEdit& edit, const std::string& by, Moment moment) {
    return m_state->write([&](Ledger& ledger) -> Result<EditPlan> {
        auto plan = planned(*m_state, edit, moment.today);
        if (!plan || plan->changes.empty()) return plan;
        append(*m_state, ledger, *plan, by, moment);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return plan;
    });
}

std::vector<Cells> ClubRegister::rows(SheetId sheet) const {
    return m_state->registerStore.all(sheet);
}

std::optional<Cells> ClubRegister::row(SheetId id, const Cells& key) const {
    return m_state->registerStore.find(id, keyOf(sheet(id), key));
}

} // namespace core
