#pragma once

#include <QAccessible>
#include <QStringList>
#include <QWidget>

#include <set>

namespace support {

inline bool isControl(QAccessible::Role role) {
    static const std::set<QAccessible::Role> controls{
        QAccessible::Button,      QAccessible::CheckBox, QAccessible::ComboBox, QAccessible::EditableText,
        QAccessible::MenuItem,    QAccessible::List,     QAccessible::ListItem, QAccessible::RadioButton,
        QAccessible::ProgressBar, QAccessible::Slider,   QAccessible::SpinBox,  QAccessible::ButtonMenu,
        QAccessible::Table};
    return controls.contains(role);
}

inline void collectNameless(QAccessibleInterface* at, QStringList& nameless) {
    if (!at || at->state().invisible) return;
    if (isControl(at->role()) && at->text(QAccessible::Name).trimmed().isEmpty())
        nameless << (at->object()
                         ? at->object()->metaObject()->className() + QString(" ") + at->object()->objectName()
                         : QString("item"));
    // A box's own list and arrows speak through the box.
    if (at->role() == QAccessible::ComboBox || at->role() == QAccessible::SpinBox) return;
    for (int i = 0; i < at->childCount(); ++i)
        collectNameless(at->child(i), nameless);
}

/// Controls in view that say no name to a screen reader, by their class and object name.
inline QStringList namelessIn(QWidget& widget) {
    QStringList nameless;
    collectNameless(QAccessible::queryAccessibleInterface(&widget), nameless);
    return nameless;
}

} // namespace support
