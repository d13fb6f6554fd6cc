#include "app/gui/camera/code_capture.h"

#include "app/gui/camera/held_field.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QWidget>

namespace app {
namespace {

constexpr QChar groupSeparator(0x1d); // between the elements of a maker's label

bool isOfCode(const QString& typed) {
    if (typed.isEmpty()) return false;
    const QChar first = typed.at(0);
    return first == groupSeparator || (first.unicode() > 0x20 && first.unicode() < 0x7f);
}

} // namespace

CodeCapture::CodeCapture(QWidget& page, QLineEdit& codeEdit)
    : QObject(&page)
    , m_page(page)
    , m_codeEdit(codeEdit) {
    askForCode(codeEdit);
    qApp->installEventFilter(this);
    connect(&codeEdit, &QLineEdit::returnPressed, this, &CodeCapture::send);
}

bool CodeCapture::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    // A key is offered to a widget and, if it leaves it, to each of its parents: take it at the first.
    if (watched != QApplication::focusWidget() || QApplication::activePopupWidget()) return false;
    if (!m_page.isVisible() || !m_page.window()->isAncestorOf(static_cast<QWidget*>(watched))) return false;
    return takeKey(static_cast<QKeyEvent&>(*event));
}

bool CodeCapture::takeKey(QKeyEvent& event) {
    if (isTextField(*QApplication::focusWidget())) return false;
    const QString typed = event.text();
    const bool plain = !(event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) ||
                       typed == groupSeparator;
    if (!plain) return false;
    if (!m_codeEdit.text().isEmpty() && takeEdit(event)) return true;
    if (!isOfCode(typed)) return false;
    m_codeEdit.setText(m_codeEdit.text() + typed);
    return true;
}

/// Keys that end or mend a code which was begun.
bool CodeCapture::takeEdit(QKeyEvent& event) {
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        send();
        return true;
    case Qt::Key_Backspace:
        m_codeEdit.backspace();
        return true;
    case Qt::Key_Escape:
        m_codeEdit.clear();
        return true;
    case Qt::Key_Space: // between the groups of a code
        return true;
    default:
        if (!isOfCode(event.text())) return false;
        m_codeEdit.setText(m_codeEdit.text() + event.text());
        return true;
    }
}

void CodeCapture::send() {
    const QString text = m_codeEdit.text().trimmed();
    m_codeEdit.clear();
    if (!text.isEmpty()) emit codeTyped(text);
}

} // namespace app
