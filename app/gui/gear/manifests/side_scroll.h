#pragma once

#include <QScrollArea>

namespace app {

/// As tall as what it holds, where there is room; with less room it scrolls, and nothing is pressed together.
class SideScroll : public QScrollArea {
    Q_OBJECT

public:
    explicit SideScroll(QWidget* held, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int heightOfHeld() const;
};

} // namespace app
