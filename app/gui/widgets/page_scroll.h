#pragma once

#include <QScrollArea>

namespace app {

/// A page that is as large as its place; where that is smaller than what the page needs, it scrolls. The
/// window can be made small whatever page is in it.
class PageScroll : public QScrollArea {
    Q_OBJECT

public:
    explicit PageScroll(QWidget* page, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
};

} // namespace app
