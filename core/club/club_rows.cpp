#include "core/club/club_register.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/act_effects.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_import.h"
#include "core/register/boat.h"
#include "core/store/fact_table.h"
#include "core/store/row_table.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/ranges.h>
#include <set>

namespace core {
namespace {

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
        if (std::all_of(m_edit.cells.begin(), m_edit.cells.end(),
                        [](const auto& cell) { return withoutOuterBlanks(cell.second).empty(); }))
            return Error{ErrorCode::RowEmpty, {std::string(m_sheet.name())}};
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

const std::string* cellOf(const RowChange& change, std::string_view column) {
    const int index = sheet(change.sheet).indexOf(column);
    if (index < 0) return nullptr;
    if (index < sheet(change.sheet).keyColumns) return &change.keyCells[static_cast<std::size_t>(index)];
    for (const auto& [each, text] : change.set)
        if (each == index) return &text;
    return nullptr;
}

/// What an import may tell of years ago or of a register as it stood, and a person who writes one row today
/// does not mean: a home or an owner that is no longer here, and days to come of what has happened.
class MeantToday {
public:
    MeantToday(const ClubState& state, CalendarDay today, const RegisterEdit& edit, EditPlan& plan)
        : m_state(state)
        , m_today(today)
        , m_edit(edit)
        , m_plan(plan) {}

    void look() {
        for (const RowChange& change : m_plan.changes) {
            m_row = rowOf(change);
            lookAt(change);
        }
        if (!m_plan.rejected.empty()) m_plan.changes.clear();
    }

private:
    /// Which of the edit's rows it came of, from 1.
    int rowOf(const RowChange& change) const {
        for (std::size_t i = 0; i < m_edit.rows.size(); ++i) {
            Cells key;
            for (const auto& [column, text] : m_edit.rows[i].key)
                key.push_back(text);
            const bool isIt = key.size() == change.keyCells.size() &&
                              keyOf(sheet(change.sheet), key) == keyOf(sheet(change.sheet), change.keyCells);
            if (isIt) return static_cast<int>(i) + 1;
        }
        return 1; // a new one
    }

    void lookAt(const RowChange& change) {
        if (change.sheet == SheetId::Items || change.sheet == SheetId::Boats)
            for (const auto& [column, id] :
                 {std::pair("boat", SheetId::Boats), {"place", SheetId::Places}, {"person", SheetId::People}})
                if (sheet(change.sheet).indexOf(column) >= sheet(change.sheet).keyColumns)
                    lookAtName(change, column, id);
        if (change.sheet == SheetId::Items) {
            lookAtDay(change, "made", ErrorCode::MadeInFuture, false);
            lookAtDay(change, "first_use", ErrorCode::FirstUseInFuture, false);
        }
        if (change.sheet == SheetId::Services) lookAtDay(change, "day", ErrorCode::ServiceInFuture, true);
        if (change.sheet == SheetId::Happenings || change.sheet == SheetId::Use ||
            change.sheet == SheetId::Log)
            lookAtDay(change, "day", ErrorCode::HappeningInFuture, true);
    }

    void lookAtName(const RowChange& change, const char* column, SheetId id) {
        const std::string* name = cellOf(change, column);
        const auto until = name && !name->empty() ? untilOf(m_state, id, *name) : std::nullopt;
        if (!until) return;
        if (const Outcome here = stillHere(*name, until, m_today); !here)
            reject(change, column, here.error());
    }

    void lookAtDay(const RowChange& change, const char* column, ErrorCode code, bool tellsToday) {
        const std::string* text = cellOf(change, column);
        const auto day = text ? PartialDay::parse(*text) : std::nullopt;
        if (!day || day->firstDay() <= m_today) return;
        std::vector<std::string> arguments{*text};
        if (tellsToday) arguments.push_back(m_today.iso());
        reject(change, column, {code, std::move(arguments)});
    }

    void reject(const RowChange& change, const char* column, Error reason) {
        m_plan.rejected.push_back({std::string(sheet(change.sheet).file), m_row, column, std::move(reason)});
    }

    const ClubState& m_state;
    CalendarDay m_today;
    const RegisterEdit& m_edit;
    EditPlan& m_plan;
    int m_row = 0;
};

Result<EditPlan> planned(ClubState& state, const RegisterEdit& edit, CalendarDay today) {
    const Sheet& sheet = core::sheet(edit.sheet);
    std::vector<CellTexts> rows;
    for (const RowEdit& each : edit.rows) {
        auto cells = RowToWrite(state, sheet, each).cells();
        if (!cells) return cells.error();
        rows.push_back(std::move(*cells));
    }
    ImportPlan plan = planRows(sheet, rows, state.registerStore, today, mintingFor(*state.database));
    for (auto* told : {&plan.rejected, &plan.warnings})
        for (RejectedRow& each : *told)
            if (each.row > 0) --each.row; // the edit has no header
    EditPlan edited{std::move(plan.rejected), std::move(plan.warnings), std::move(plan.changes), {}};
    MeantToday(state, today, edit, edited).look();
    if (!edited.rejected.empty()) edited.warnings.clear();
    return edited;
}

/// Whether the row tells of something that is so from now on.
bool isOfNow(const RowChange& change, CalendarDay today) {
    const int day = sheet(change.sheet).indexOf("day");
    return day < 0 || day >= sheet(change.sheet).keyColumns ||
           change.keyCells[static_cast<std::size_t>(day)] == today.iso();
}

void append(ClubState& state, Ledger& ledger, const EditPlan& plan, const std::string& by, Moment moment) {
    for (const RowChange& change : plan.changes)
        if (change.sheet == SheetId::Services)
            writeRecord(state, ledger, change, by, moment);
        else
            appendRows(*state.database, ledger, {change}, by, moment);
    state.heldCheck.forget();
}

/// Every rule of the kit whose days these rows may move: of the items that they are about, and of the kit
/// types. All other kit stands as it did.
std::vector<DueRow> dueTouchedBy(const std::vector<RowChange>& changes, const RegisterStore& store,
                                 CalendarDay today) {
    std::set<std::string> ids, kitTypes; // kit types folded
    for (const RowChange& change : changes)
        if (change.sheet == SheetId::LifeRules || change.sheet == SheetId::KitTypes)
            kitTypes.insert(foldName(change.keyCells.front()));
        else if (const std::string* id = cellOf(change, "code"))
            ids.insert(*id);
    std::vector<ItemRecord> kit;
    if (!kitTypes.empty()) kit = store.allRecords();
    std::erase_if(kit, [&](const ItemRecord& record) {
        return !kitTypes.contains(foldName(record.item.kitType)) && !ids.contains(record.item.id);
    });
    if (kitTypes.empty())
        for (const std::string& id : ids)
            if (auto record = store.record(id)) kit.push_back(std::move(*record));
    return dueListOf(kit, store.allKitTypes(), today, howeverLate);
}

Outlook outlookOf(ClubState& state, const std::vector<RowChange>& changes, CalendarDay today) {
    const ClubAnswers answers(state);
    Outlook outlook{answers.boatConditions(today), {}, dueTouchedBy(changes, state.registerStore, today)};
    for (const Boat& boat : ClubRegister(state).boatsHere(today)) {
        const auto kit = kitAtHomeOf(boat.name, state.registerStore.manifestOf(boat),
                                     state.registerStore.itemsOfBoat(boat.name));
        outlook.kit.insert(outlook.kit.end(), kit.begin(), kit.end());
    }
    return outlook;
}

/// Where a row of that name was taken away, nothing of it is to come back with the new one.
void setAllCells(Database& database, RowChange& change) {
    const Sheet& sheet = core::sheet(change.sheet);
    if (!change.isNew || !sheet.staysWhileNamed ||
        factTable::ofRow(database, std::string(sheet.table), keyOf(sheet, change.keyCells)).empty())
        return;
    for (int column = sheet.keyColumns; column < static_cast<int>(sheet.columns.size()); ++column)
        if (std::ranges::none_of(change.set, [&](const auto& cell) { return cell.first == column; }))
            change.set.emplace_back(column, std::string());
}

} // namespace

void appendRows(Database& database, Ledger& ledger, const std::vector<RowChange>& changes,
                const std::string& by, const std::optional<Moment>& moment) {
    for (RowChange change : changes) {
        if (change.order) change.order = placeBehind(database, change);
        setAllCells(database, change);
        RowWritten row = rowWritten(change);
        if (moment && isOfNow(change, moment->today)) row.at = moment->at;
        ledger.append(row, by);
    }
}

Result<EditPlan> ClubRegister::plan(const RegisterEdit& edit, Moment moment) const {
    return m_state->tried([&](Ledger& ledger) -> Result<EditPlan> {
        auto plan = planned(*m_state, edit, moment.today);
        if (!plan || plan->changes.empty()) return plan;
        const Outlook before = outlookOf(*m_state, plan->changes, moment.today);
        append(*m_state, ledger, *plan, {}, moment);
        plan->effects = changesBetween(before, outlookOf(*m_state, plan->changes, moment.today));
        return plan;
    });
}

Result<EditPlan> ClubRegister::write(const RegisterEdit& edit, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<EditPlan> {
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
