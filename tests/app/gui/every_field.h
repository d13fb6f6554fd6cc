#pragma once

#include "app/gui/camera/held_field.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QWidget>

#include <algorithm>

namespace support {

/// Everything on the page that keys are written into or that chooses by a letter, in view or not: lines,
/// texts, numbers, days, boxes. Not the line inside a box, which is one with it.
inline QList<QWidget*> everyFieldOf(const QWidget& page) {
    QList<QWidget*> fields;
    for (QWidget* each : page.findChildren<QWidget*>()) {
        if (!app::isTextField(*each) && !qobject_cast<QComboBox*>(each)) continue;
        if (qobject_cast<QComboBox*>(each->parentWidget()) ||
            qobject_cast<QAbstractSpinBox*>(each->parentWidget()))
            continue;
        fields << each;
    }
    return fields;
}

/// Brings a field of a hidden panel into view, and lets it be used.
inline void reveal(QWidget& field, const QWidget& page) {
    for (QWidget* each = &field; each && each != &page; each = each->parentWidget()) {
        if (auto* stack = qobject_cast<QStackedWidget*>(each->parentWidget()))
            stack->setCurrentWidget(each);
        else
            each->setVisible(true);
        each->setEnabled(true);
    }
}

inline QLineEdit* lineOf(QWidget& field) {
    auto* line = qobject_cast<QLineEdit*>(&field);
    if (!line) line = field.findChild<QLineEdit*>();
    return line;
}

/// Words in it, some of them selected; in a box a name that the first letter of a kit tag finds.
inline void fill(QWidget& field) {
    if (auto* box = qobject_cast<QComboBox*>(&field); box && !box->isEditable()) {
        const QSignalBlocker quiet(box);
        if (box->count() > 0) box->addItem("Kestrel");
        return;
    }
    QLineEdit* line = lineOf(field);
    if (line && !qobject_cast<QAbstractSpinBox*>(&field)) line->setText("12");
    if (line) line->setSelection(0, 1);
}

/// What it holds, as one text to compare.
inline QString heldBy(QWidget& field) {
    QStringList held;
    if (auto* box = qobject_cast<QComboBox*>(&field)) held << QString::number(box->currentIndex());
    if (const QLineEdit* line = lineOf(field))
        held << line->text() << QString::number(line->cursorPosition()) << line->selectedText();
    return held.join('|');
}

} // namespace support
