#pragma once

#include <QLayout>
#include <QList>

class QHBoxLayout;

namespace app {

/// Widgets one after the other as words stand in a sentence: from the left, in as many lines as they need.
/// What expands shares the room that its line leaves over; what is wider than a line is made narrower.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(QWidget* parent = nullptr)
        : QLayout(parent) {}
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { m_items << item; }
    void addExpanding(QWidget* widget); ///< takes the room that its line leaves over
    void insertWidget(int index, QWidget* widget);
    void addStretch();                             ///< what follows stands at the right
    QHBoxLayout* addRow(bool isExpanding = false); ///< what is put into it stays in one line
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override; ///< all in one line
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    struct Placed {
        QLayoutItem* item;
        int width;
    };

    int arrange(const QRect& rect, bool doMove) const; ///< the height that it takes
    int placeLine(QList<Placed> line, const QRect& room, bool doMove) const;

    QList<QLayoutItem*> m_items;
    QList<const QLayoutItem*> m_expanding; ///< some of them
};

} // namespace app
