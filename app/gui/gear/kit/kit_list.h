#pragma once

#include "app/gui/gear/kit/kit_search.h"
#include "app/gui/widgets/plain_table_model.h"
#include "core/answers/due_list.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace app {

/// What of the list is shown, and in which order.
struct KitChoice {
    enum class State { InUse, All, ToLookAt, Serviceable, Unserviceable, Missing, WrittenOff };
    QString typed;
    State state = State::InUse; ///< InUse: all but what is written off
    QString boat, place;        ///< home; both empty: any
    bool withoutHome = false;   ///< neither boat, place nor owner
    QString kitType;            ///< empty: any
    int sortedBy = 0;           ///< column of kitColumns()
    bool isBackwards = false;
};

/// The kit of a club as the rows of a table: made once, then found and ordered again and again. A plain
/// value.
class KitList {
public:
    KitList() = default;
    explicit KitList(std::vector<core::ItemDue> kit);

    const KitSearch& search() const { return m_search; }
    const std::vector<TableRow>& rows() const { return m_rows; } ///< by id of the item
    /// Places in `rows`. A whole code finds its item alone, whatever else is chosen.
    std::vector<int> shown(const KitChoice& choice);
    const core::Item* item(const QString& id) const; ///< null: there is none
    /// Those of `rows` in the order given, for paper and file.
    std::vector<core::ItemDue> kitOf(const std::vector<int>& rows) const;
    std::vector<QString> kitTypes() const;
    std::vector<QString> boats() const;  ///< that kit has its home on
    std::vector<QString> places() const; ///< that kit has its home at

private:
    bool isChosen(std::size_t at, const KitChoice& choice) const;
    /// Of each row its place when the column orders them; made when it is first asked for.
    const std::vector<int>& ranks(int column);
    QString sortKey(std::size_t row, int column) const;

    KitSearch m_search;
    std::vector<TableRow> m_rows;
    std::vector<std::optional<core::RuleDue>> m_next;
    std::vector<std::vector<int>> m_ranks;
};

} // namespace app
