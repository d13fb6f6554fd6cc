#pragma once

#include <QListView>

namespace app {

class RowListDelegate;
class RowListModel;

/// A list of lines with their marks (see list_row.h). Up and down go from line to line and skip the headings;
/// Space, Enter or a press of the mouse presses a line. The model is not the list's own: it must outlive it.
class RowList : public QListView {
    Q_OBJECT

public:
    explicit RowList(RowListModel& model, QWidget* parent = nullptr);

    QString currentKey() const; ///< of the line that the keyboard is on; empty when there is none
    bool isTyping() const;      ///< a number is being typed
    /// Lets a number be typed into the line of that key, which must have one.
    void typeNumber(const QString& key);

signals:
    void rowPressed(const QString& key); ///< a line that is pressable

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;

private:
    void press(const QModelIndex& index);
    QModelIndex nextLine(int from, int step) const;

    RowListModel& m_model;
    RowListDelegate* m_delegate;
};

} // namespace app
