#include "core/club/manifest_writer.h"

#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/exchange/csv_import.h"
#include "core/store/row_table.h"

namespace core {
namespace {

const char* ownerColumn(const ManifestOwner& owner) {
    return owner.kind == ManifestOwner::Kind::Boat ? "boat" : "boat_class";
}

} // namespace

CellTexts manifestRow(const ManifestOwner& owner, const CellTexts& key, const CellTexts& cells) {
    CellTexts row{{ownerColumn(owner), owner.name}};
    row.insert(row.end(), key.begin(), key.end());
    row.insert(row.end(), cells.begin(), cells.end());
    return row;
}

ManifestWriter::ManifestWriter(ClubState& state, Ledger& ledger, SheetId sheet, ManifestOwner owner,
                               std::string by, Moment moment)
    : m_state(state)
    , m_ledger(ledger)
    , m_sheet(core::sheet(sheet))
    , m_owner(std::move(owner))
    , m_by(std::move(by))
    , m_moment(moment) {}

Outcome ManifestWriter::checkOwner() const {
    if (m_owner.kind == ManifestOwner::Kind::BoatClass &&
        m_state.registerStore.where(SheetId::Boats, "boat_class", m_owner.name).empty())
        return Error{ErrorCode::NoSuchBoatClass, {m_owner.name}};
    return Done{};
}

Manifest ManifestWriter::now() const {
    return m_state.registerStore.manifestRecord().now(m_owner);
}

Cells ManifestWriter::keyCells(const CellTexts& key) const {
    Cells cells(static_cast<std::size_t>(m_sheet.keyColumns));
    cells[static_cast<std::size_t>(m_sheet.indexOf(ownerColumn(m_owner)))] = m_owner.name;
    for (const auto& [column, text] : key)
        cells[static_cast<std::size_t>(m_sheet.indexOf(column))] = text;
    return cells;
}

std::optional<Cells> ManifestWriter::find(const CellTexts& key) const {
    return m_state.registerStore.find(m_sheet.id, keyOf(m_sheet, keyCells(key)));
}

int ManifestWriter::placeOf(const CellTexts& key) const {
    return rowTable::find(*m_state.database, m_sheet, keyOf(m_sheet, keyCells(key))).value().position;
}

Outcome ManifestWriter::write(const CellTexts& key, const CellTexts& cells, std::optional<int> place) {
    const auto plan =
        planRows(m_sheet, {manifestRow(m_owner, key, cells)}, m_state.registerStore, m_moment.today);
    if (!plan.rejected.empty())
        return Error{ErrorCode::ManifestRowRejected, {}, {}, {plan.rejected.front().reason}};
    for (const RowChange& change : plan.changes) {
        RowWritten row = rowWritten(change);
        if (change.isNew) row.order = place ? *place : placeBehind(*m_state.database, change);
        append(std::move(row));
    }
    return Done{};
}

void ManifestWriter::drop(const CellTexts& key) {
    // With the spelling of the row that is there.
    const Cells stored = find(key).value();
    RowChange change{.sheet = m_sheet.id,
                     .keyCells = Cells(stored.begin(), stored.begin() + m_sheet.keyColumns)};
    RowWritten row = rowWritten(change);
    row.isGone = true;
    append(std::move(row));
}

Done ManifestWriter::done() {
    m_state.endUrgentOfWhole(m_ledger, m_moment.today);
    return Done{};
}

void ManifestWriter::append(RowWritten row) {
    row.at = m_moment.at;
    m_ledger.append(row, m_by);
}

} // namespace core
