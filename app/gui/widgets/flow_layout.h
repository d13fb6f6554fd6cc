#pragma once

#include <QLayout>
#include <QList>

namespace app {

/// Widgets one after the other as words stand in a sentence: from the left, in as many lines as they need.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(QWidget* parent = nullptr)
        : QLayout(parent) {}
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { m_items << item; }
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return arrange(QRect(0, 0, width, 0), false); }
    QSize sizeHint() const override { return minimumSize(); }
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    int arrange(const QRect& rect, bool doMove) const; ///< the height that it takes
    int placeLine(const QList<QLayoutItem*>& line, QPoint at, bool doMove) const;

    QList<QLayoutItem*> m_items;
};

} // namespace app
