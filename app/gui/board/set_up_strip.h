#pragma once

#include <QWidget>

#include <vector>

namespace core {
struct SetUpTick;
}

class QLabel;

namespace app {

/// On the board of a club that is still being set up: what is to do, the way there, and the way to see no
/// more of it. Not in view once everything is done, or where it was put away.
class SetUpStrip : public QWidget {
    Q_OBJECT

public:
    explicit SetUpStrip(QWidget* parent = nullptr);

    void setTicks(const std::vector<core::SetUpTick>& ticks); ///< none: nobody wants to know

signals:
    void goOnPressed();
    void putAwayPressed();

private:
    QLabel* m_words;
};

} // namespace app
