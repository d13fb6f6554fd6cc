#pragma once

#include <QWidget>

#include "core/answers/set_up.h"

class QLabel;
class QPushButton;

namespace app {

/// One step of setting up: its mark and words, and the button that leads there.
class SetUpRow : public QWidget {
    Q_OBJECT

public:
    explicit SetUpRow(core::SetUpStep step, QWidget* parent = nullptr);

    void setTick(const core::SetUpTick& tick);
    void setUsual(bool isUsual); ///< the one that most people do next

signals:
    void pressed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    core::SetUpTick m_tick;
    QLabel* m_title;
    QLabel* m_state;
    QPushButton* m_button;
};

} // namespace app
