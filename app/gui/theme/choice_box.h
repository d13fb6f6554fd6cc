#pragma once

#include <QComboBox>

namespace app {

/// A box to choose from, with its arrow drawn in the theme's ink: a style sheet takes the style's own away.
class ChoiceBox : public QComboBox {
    Q_OBJECT

public:
    using QComboBox::QComboBox;

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace app
