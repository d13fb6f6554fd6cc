#pragma once

#include <QListView>

namespace app {

class CheckListModel;
class CheckRowDelegate;

/// The lists of a check. Up and down go from line to line and skip the headings; Space or Enter looks at a
/// point, opens a measure, starts and stops a clock.
class CheckListView : public QListView {
    Q_OBJECT

public:
    explicit CheckListView(CheckListModel& model, QWidget* parent = nullptr);

    /// Code of the item on the current line; empty when it is none.
    QString currentCode() const;
    bool isTyping() const; ///< a value is being typed

signals:
    void lookPressed(const QString& point, bool done); ///< `done`: what it shall be now
    void clockPressed(const QString& point);
    void kitPressed(const QString& code);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;

private:
    void press(const QModelIndex& index);
    QModelIndex nextLine(int from, int step) const;

    CheckListModel& m_model;
    CheckRowDelegate* m_delegate;
};

} // namespace app
