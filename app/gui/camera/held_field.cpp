#include "app/gui/camera/held_field.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPersistentModelIndex>
#include <QPlainTextEdit>
#include <QTextCursor>
#include <QTextEdit>
#include <QVariant>

namespace app {
namespace {

constexpr const char* codeProperty = "asksForCode";

using PutBack = std::function<void()>;

PutBack memoryOf(QLineEdit& line) {
    const QString text = line.text();
    const int cursor = line.cursorPosition();
    const int start = line.selectionStart(); // -1: nothing is selected
    const auto length = static_cast<int>(line.selectedText().size());
    return [&line, text, cursor, start, length] {
        if (line.text() != text) line.setText(text);
        if (start < 0)
            line.setCursorPosition(cursor);
        else if (cursor == start) // selected from its end to its beginning
            line.setSelection(start + length, -length);
        else
            line.setSelection(start, length);
    };
}

template <class Text>
PutBack memoryOfText(Text& edit) {
    const QString text = edit.toPlainText();
    const int anchor = edit.textCursor().anchor();
    const int position = edit.textCursor().position();
    return [&edit, text, anchor, position] {
        if (edit.toPlainText() != text) edit.setPlainText(text);
        QTextCursor cursor = edit.textCursor();
        cursor.setPosition(anchor);
        cursor.setPosition(position, QTextCursor::KeepAnchor);
        edit.setTextCursor(cursor);
    };
}

/// Its value follows the text of its line.
PutBack memoryOf(QAbstractSpinBox& box) {
    auto* line = box.findChild<QLineEdit*>();
    return line ? memoryOf(*line) : PutBack();
}

PutBack memoryOf(QComboBox& box) {
    const int index = box.currentIndex();
    const PutBack line = box.lineEdit() ? memoryOf(*box.lineEdit()) : PutBack();
    return [&box, index, line] {
        if (box.currentIndex() != index) box.setCurrentIndex(index);
        if (line) line();
    };
}

PutBack memoryOf(QAbstractItemView& view) {
    const QPersistentModelIndex current = view.currentIndex();
    return [&view, current] {
        if (view.model() && view.currentIndex() != current) view.setCurrentIndex(current);
    };
}

PutBack memoryOf(QWidget& widget) {
    if (auto* line = qobject_cast<QLineEdit*>(&widget)) return memoryOf(*line);
    if (auto* plain = qobject_cast<QPlainTextEdit*>(&widget)) return memoryOfText(*plain);
    if (auto* text = qobject_cast<QTextEdit*>(&widget)) return memoryOfText(*text);
    if (auto* number = qobject_cast<QAbstractSpinBox*>(&widget)) return memoryOf(*number);
    if (auto* box = qobject_cast<QComboBox*>(&widget)) return memoryOf(*box);
    if (auto* view = qobject_cast<QAbstractItemView*>(&widget)) return memoryOf(*view);
    return {};
}

} // namespace

bool isTextField(const QWidget& widget) {
    const auto* box = qobject_cast<const QComboBox*>(&widget);
    return qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QPlainTextEdit*>(&widget) || qobject_cast<const QTextEdit*>(&widget) ||
           (box && box->isEditable());
}

void askForCode(QLineEdit& field) {
    field.setProperty(codeProperty, true);
}

bool asksForCode(const QWidget* widget) {
    return widget && widget->property(codeProperty).toBool();
}

HeldField::HeldField(QWidget& widget)
    : m_widget(&widget)
    , m_putBack(memoryOf(widget)) {}

void HeldField::putBack() const {
    if (m_widget && m_putBack) m_putBack();
}

} // namespace app
