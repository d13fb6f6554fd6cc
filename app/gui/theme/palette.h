#pragma once

#include <QColor>
#include <QString>

#include <vector>

namespace app {

/// The tones of one theme, by what they mean. Text tones reach 7:1 on ground and panel, lines 3:1 (WCAG 2.1).
struct Palette {
    QString name; ///< "sun", "light" or "dark", as it is stored in the settings
    QColor ground;
    QColor panel;
    QColor ink;
    QColor quiet; ///< remarks, and marks that do not matter here
    QColor found;
    QColor look;
    QColor focus; ///< the ring around what the keyboard acts on
    QColor line;
};

/// Sun, light, dark; in the order in which the menu offers them.
const std::vector<Palette>& allPalettes();

/// The palette of that name; light when there is none.
const Palette& paletteOf(const QString& name);

} // namespace app
