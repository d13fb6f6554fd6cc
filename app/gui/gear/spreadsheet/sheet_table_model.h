#pragma once

#include <QAbstractTableModel>

#include "core/exchange/club_sheet/club_sheet.h"

#include <memory>
#include <unordered_map>
#include <vector>

namespace app {

/// The rows of somebody's spreadsheet as they are, below its headings; before them the row's number, and why
/// it is refused. Reads the workbook itself, so that ten thousand rows cost nothing until they are seen.
class SheetTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    /// Columns before those of the spreadsheet.
    static constexpr int ownColumns = 2;
    enum OwnColumn { NumberColumn, ReasonColumn };

    using QAbstractTableModel::QAbstractTableModel;

    void setTable(std::shared_ptr<const core::Workbook> book, const core::TableLayout& layout);
    void clear();
    void setRejected(std::vector<core::RejectedRow> rejected, core::SheetId sheet);
    const core::TableLayout& layout() const { return m_layout; }
    QString reasonOf(int row) const; ///< of that line of the table; empty: it is not refused
    int nextRefused(int row) const;  ///< behind that line, from the first again; -1: none

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const std::vector<std::size_t>* rejectedIn(int row) const;
    bool isRefused(int row, int column) const; ///< that very cell

    std::shared_ptr<const core::Workbook> m_book;
    const core::SheetTable* m_table = nullptr;
    core::TableLayout m_layout;
    std::size_t m_first = 0; ///< row of the table below the headings
    std::vector<core::RejectedRow> m_rejected;
    core::SheetId m_sheet = core::SheetId::Items;              ///< what they were to become
    std::unordered_map<int, std::vector<std::size_t>> m_byRow; ///< number of the row, places in m_rejected
};

} // namespace app
