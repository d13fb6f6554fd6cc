#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QStringList>
#include <QWidget>

namespace support {

inline void collectItems(const QAbstractItemModel& model, QStringList& texts) {
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 0; column < model.columnCount(); ++column)
            for (const int role : {Qt::DisplayRole, Qt::ToolTipRole, Qt::AccessibleTextRole})
                texts << model.index(row, column).data(role).toString();
}

/// What the widgets in view show or say: labels, buttons, boxes, lists, tables, fields, tool tips, and what a
/// screen reader reads.
inline QStringList textsIn(QWidget& root) {
    QStringList texts{root.windowTitle()};
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        texts << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
        if (const auto* label = qobject_cast<QLabel*>(widget)) texts << label->text();
        if (const auto* button = qobject_cast<QAbstractButton*>(widget)) texts << button->text();
        if (const auto* field = qobject_cast<QLineEdit*>(widget))
            texts << field->text() << field->placeholderText();
        if (const auto* box = qobject_cast<QComboBox*>(widget)) collectItems(*box->model(), texts);
        if (const auto* view = qobject_cast<QAbstractItemView*>(widget))
            if (view->model()) collectItems(*view->model(), texts);
    }
    texts.removeAll(QString());
    return texts;
}

/// Labels in view that would take what looks like HTML for HTML.
inline QStringList richLabelsIn(QWidget& root) {
    QStringList rich;
    for (const QLabel* label : root.findChildren<QLabel*>())
        if (label->isVisible() && label->textFormat() != Qt::PlainText)
            rich << label->objectName() + QStringLiteral(": ") + label->text();
    return rich;
}

} // namespace support
