#pragma once

#include "app/gui/widgets/choice_box.h"

namespace app {

/// Why something is written off; nothing is chosen at first. Data: the reason as the register has it.
class WriteOffBox : public ChoiceBox {
    Q_OBJECT

public:
    explicit WriteOffBox(QWidget* parent = nullptr);
};

} // namespace app
