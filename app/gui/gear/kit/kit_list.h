#pragma once

#include "app/gui/gear/kit/kit_search.h"
#include "app/gui/widgets/plain_table_model.h"
#include "core/answers/due_list.h"
#include "core/base/calendar_day.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace core {
class Club;
}

namespace app {

/// One item of the list, with what of it is due next, or worst.
struct KitLine {
    core::Item item;
    std::optional<core::RuleDue> next;
    bool isDue = false; ///< something of it is to be looked at
};

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
    explicit KitList(std::vector<KitLine> lines);

    const KitSearch& search() const { return m_search; }
    const std::vector<TableRow>& rows() const { return m_rows; } ///< by id of the item
    /// Places in `rows`. A whole code finds its item alone, whatever else is chosen.
    std::vector<int> shown(const KitChoice& choice);
    const core::Item* item(const QString& id) const; ///< null: there is none
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
    std::vector<QString> m_days; ///< ISO, of what is due next
    std::vector<std::vector<int>> m_ranks;
};

/// All kit with what is due of it, by id; on the club's thread.
std::vector<KitLine> readKit(const core::Club& club, core::CalendarDay today);

} // namespace app
