#include "app/gui/theme/labels.h"

#include <QLabel>
#include <QVariant>

namespace app {

QLabel* wordsIn(const char* role, const QString& text, QWidget* parent) {
    auto* made = new QLabel(text, parent);
    made->setProperty("role", role);
    made->setWordWrap(true);
    return made;
}

} // namespace app
