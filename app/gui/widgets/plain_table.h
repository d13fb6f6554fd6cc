#pragma once

#include "app/gui/widgets/plain_table_model.h"

#include <QTableView>

#include <map>
#include <set>
#include <vector>

namespace app {

/// A table in the house's type, as wide as its place: its first column takes the room that is left. Where
/// there is too little, headings and then cells take two lines, then all is in small type, then the widest
/// are cut. Up and down choose a row, Enter or a press opens it. The model is not the table's own: it must
/// outlive it.
class PlainTable : public QTableView {
    Q_OBJECT

public:
    explicit PlainTable(PlainTableModel& model, QWidget* parent = nullptr);

    void choose(const QString& key);
    QString chosen() const;      ///< key of the current row; empty when there is none
    void setSmall(bool isSmall); ///< in small type: many columns that are read at a desk
    bool isSmall() const { return m_isSmall || m_isTight; } ///< also where there is no room for larger words
    void setLeastRows(int rows);                            ///< its place is never lower than so many
    void leaveOut(int column, bool isOut);                  ///< where there is no room for it
    /// Where there is no room for all columns side by side: by column another that is left out, its cells
    /// beneath. Each cell may take two lines then. Empty: one line, every column.
    void fold(const std::map<int, int>& beneath);
    bool isFolded() const { return m_isFolded; }
    /// Cells may take two lines: folded, or the words of a row have no room side by side in one.
    bool hasTwoLines() const { return m_isFolded || m_isTwoLines; }
    /// A press on a heading asks for another order, see `sortWanted`; the mark stands at the column that
    /// orders the rows. -1: none.
    void showSorted(int column, bool isBackwards);

signals:
    void rowChosen(const QString& key);  ///< another row is the current one
    void rowPressed(const QString& key); ///< by Enter, Space or the mouse; Space ticks where rows are ticked
    void ticksChanged();                 ///< by Space, Ctrl+A, the mouse on a tick, or Shift with either
    void sortWanted(int column);         ///< its heading was pressed

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void tick(int row);
    void tickTo(int row); ///< from the row that was ticked last
    bool isOnTick(const QPoint& at, const QModelIndex& index) const;
    void fit();
    void fitOnce();
    std::vector<int> widthsOfWords(bool wrapped) const;
    int cutWidest(std::vector<int>& widths, int excess) const;
    bool fitColumns();
    void shareOut(std::vector<int>& widths, const std::vector<int>& inOneLine, int room) const;

    PlainTableModel& m_model;
    int m_leastRows = 0;
    bool m_isFitting = false;
    bool m_mustFit = false;
    bool m_isSmall = false;
    bool m_isFolded = false;
    bool m_isTwoLines = false;
    bool m_isTight = false;
    std::set<int> m_leftOut;
    QString m_tickedLast;
};

} // namespace app
