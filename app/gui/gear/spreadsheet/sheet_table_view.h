#pragma once

#include <QTableView>

namespace app {

class SheetTableModel;

/// The rows of a spreadsheet in the house's type. Up and down go from row to row, left and right move it
/// sideways. The model is not the view's own: it must outlive it.
class SheetTableView : public QTableView {
    Q_OBJECT

public:
    explicit SheetTableView(SheetTableModel& model, QWidget* parent = nullptr);

    void setReasonShown(bool isShown); ///< the column that says why rows are refused or warned of
    void goTo(int row);

signals:
    void rowChanged();

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace app
