#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/register/manifest_record.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace core {

/// The row of an owner's manifest as an import would have it (`key`: kit type; phase and point).
CellTexts manifestRow(const ManifestOwner& owner, const CellTexts& key, const CellTexts& cells);

/// Writes rows of one owner's manifest, lines or points. Facts are appended within the caller's transaction;
/// all functions may throw StoreFailure.
class ManifestWriter {
public:
    ManifestWriter(ClubState& state, Ledger& ledger, SheetId sheet, ManifestOwner owner, std::string by,
                   Moment moment);

    /// Only a class that some boat is of has a manifest; boats are looked up by the import's checks.
    Outcome checkOwner() const;
    Manifest now() const; ///< what is asked of the owner
    /// The owner's own row of that key (`key`: kit type; phase and point), as it is stored.
    std::optional<Cells> find(const CellTexts& key) const;
    int placeOf(const CellTexts& key) const; ///< in the owner's order; of a row that is there

    /// Writes the cells given, as an import of them would. A new row goes to `place`, or behind the others.
    Outcome write(const CellTexts& key, const CellTexts& cells, std::optional<int> place = {});
    /// Takes the owner's own row away, with a fact that says so.
    void drop(const CellTexts& key);
    /// The last call of a change: where less is asked now a boat may be whole, which ends its urgent launch.
    Done done();

private:
    Cells keyCells(const CellTexts& key) const;
    void append(RowWritten row);

    ClubState& m_state;
    Ledger& m_ledger;
    const Sheet& m_sheet;
    ManifestOwner m_owner;
    std::string m_by;
    Moment m_moment;
};

} // namespace core
