#include "app/gui/theme/motion.h"

#include <QApplication>
#include <QSettings>

namespace app {

bool isMotionReduced() {
    return QSettings().value("look/reduce-motion", false).toBool();
}

void reduceMotion(bool reduced) {
    QSettings().setValue("look/reduce-motion", reduced);
    for (const Qt::UIEffect effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                      Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip})
        QApplication::setEffectEnabled(effect, !reduced);
}

} // namespace app
