#pragma once

#include <QPointer>
#include <QWidget>

#include <functional>

class QLineEdit;

namespace app {

/// Whether keys are text in it: a line, a text, a number, a box that can be written into.
bool isTextField(const QWidget& widget);

/// A field that asks for a code takes what is scanned while it has the keyboard, in place of what it held.
void askForCode(QLineEdit& field);
bool asksForCode(const QWidget* widget);

/// What a widget held when it was remembered: text, cursor and selection of a field, the choice of a box, the
/// current line of a list. GUI thread.
class HeldField {
public:
    explicit HeldField(QWidget& widget);

    bool isOf(const QWidget& widget) const { return m_widget == &widget; }
    void putBack() const; ///< nothing when the widget is gone

private:
    QPointer<QWidget> m_widget;
    std::function<void()> m_putBack;
};

} // namespace app
