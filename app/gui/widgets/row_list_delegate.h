#pragma once

#include <QStyledItemDelegate>

namespace app {

struct ListRow;

/// Paints a line of a list: the mark in a column of its own, the thing, what is counted or its code at the
/// right, the remark beneath. Its editor takes a number, and says beside itself what is allowed and whether
/// what is typed is; it belongs to the view that asked for it.
class RowListDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit RowListDelegate(QObject* parent = nullptr);

    /// Lines that a finger presses are at least so high (pixels).
    void setFingerHeight(int height) { m_fingerHeight = height; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

private:
    struct Layout;
    Layout layOut(const ListRow& row, const QRect& rect) const;

    int m_fingerHeight = 57;
};

} // namespace app
