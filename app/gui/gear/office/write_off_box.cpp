#include "app/gui/gear/office/write_off_box.h"

namespace app {

WriteOffBox::WriteOffBox(QWidget* parent)
    : ChoiceBox(parent) {
    setAccessibleName(tr("why it is written off"));
    addItem(tr("why?"), QString());
    addItem(tr("lost"), "lost");
    addItem(tr("damaged"), "damaged");
    addItem(tr("worn"), "worn");
    addItem(tr("expired"), "expired");
}

} // namespace app
