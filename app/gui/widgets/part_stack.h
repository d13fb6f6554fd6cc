#pragma once

#include <QStackedWidget>

namespace app {

/// How high a part of a page must be at that width, for its words wrap.
int leastHeightOf(const QWidget& part, int width);

/// One of several parts of a page; it asks for as much room as the part that is shown, not as the largest.
class PartStack : public QStackedWidget {
    Q_OBJECT

public:
    explicit PartStack(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    // A layout would ask the stack's own layout, which knows the largest.
    bool hasHeightForWidth() const override { return false; }

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
};

} // namespace app
