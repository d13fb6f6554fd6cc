#pragma once

#include <QAbstractTableModel>

#include "core/exchange/club_sheet/club_sheet.h"

#include <memory>
#include <unordered_map>
#include <vector>

namespace app {

/// The rows of somebody's spreadsheet as they are, below its headings; before them the row's number, and why
/// it is refused or what of it may not be meant so. Reads the workbook itself, so that ten thousand rows cost
/// nothing until they are seen.
class SheetTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    /// Columns before those of the spreadsheet.
    static constexpr int ownColumns = 2;
    enum OwnColumn { NumberColumn, ReasonColumn };
    enum class Told { Refused, Warned }; ///< what the reasons are of

    using QAbstractTableModel::QAbstractTableModel;

    void setTable(std::shared_ptr<const core::Workbook> book, const core::TableLayout& layout);
    void clear();
    void setReasons(std::vector<core::RejectedRow> reasons, Told told, core::SheetId sheet);
    const core::TableLayout& layout() const { return m_layout; }
    QString reasonOf(int row) const;   ///< of that line of the table; empty: it has none
    int nextWithReason(int row) const; ///< behind that line, from the first again; -1: none

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const std::vector<std::size_t>* reasonsIn(int row) const;
    QString inWords(const core::RejectedRow& reason) const;
    bool isRefused(int row, int column) const; ///< that very cell

    std::shared_ptr<const core::Workbook> m_book;
    const core::SheetTable* m_table = nullptr;
    core::TableLayout m_layout;
    std::size_t m_first = 0; ///< row of the table below the headings
    std::vector<core::RejectedRow> m_reasons;
    Told m_told = Told::Refused;
    core::SheetId m_sheet = core::SheetId::Items;              ///< what they were to become
    std::unordered_map<int, std::vector<std::size_t>> m_byRow; ///< number of the row, places in m_reasons
};

} // namespace app
