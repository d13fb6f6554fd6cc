#pragma once

#include <QStackedWidget>

namespace app {

/// One of several parts of a page; it asks for as much room as the part that is shown, not as the largest.
class PartStack : public QStackedWidget {
    Q_OBJECT

public:
    explicit PartStack(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override;
    int heightForWidth(int width) const override; ///< the least: it stands where room is left over

protected:
    bool event(QEvent* event) override;
};

} // namespace app
