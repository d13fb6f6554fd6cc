#pragma once

#include <QAction>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QStringList>

namespace support {

/// Every line of the menus.
inline QList<QAction*> linesOf(const QMenuBar& bar) {
    QList<QAction*> lines;
    for (const QAction* menu : bar.actions())
        for (QAction* line : menu->menu()->actions())
            if (!line->isSeparator()) lines << line;
    return lines;
}

/// Buttons in view that no line of a menu stands for, with the same words, keys of its own, and enabled as
/// the button is. By their object names.
inline QStringList keylessIn(const QWidget& page, const QMenuBar& bar) {
    QStringList keyless;
    for (const auto* button : page.findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        bool hasKeys = false;
        for (const QAction* line : linesOf(bar))
            hasKeys |= line->text() == button->text() && !line->shortcut().isEmpty() &&
                       line->isEnabled() == button->isEnabled();
        if (!hasKeys) keyless << button->objectName();
    }
    return keyless;
}

/// Keys that more than one line of the menus has.
inline QStringList keysTwice(const QMenuBar& bar) {
    QStringList keys, twice;
    for (const QAction* line : linesOf(bar)) {
        const QString own = line->shortcut().toString();
        if (!own.isEmpty() && keys.contains(own)) twice << own;
        keys << own;
    }
    return twice;
}

} // namespace support
