#include "app/gui/camera/hand_scanner.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScopedValueRollback>

#include <chrono>
#include <utility>

namespace app {
namespace {

constexpr QChar separatorKey(0x1d); // between the elements of a maker's label
constexpr int waitMs = 60;          ///< then a key was not a scanner's

qint64 steadyMs() {
    using namespace std::chrono;
    return duration_cast<milliseconds>(steady_clock::now().time_since_epoch()).count();
}

/// Who gets a key that is pressed now.
QWidget* receiverOfKeys() {
    QWidget* popup = QApplication::activePopupWidget();
    if (popup) return popup->focusWidget() ? popup->focusWidget() : popup;
    QWidget* focus = QApplication::focusWidget();
    return focus ? focus : QApplication::activeWindow();
}

bool isModifier(const QKeyEvent& event) {
    switch (event.key()) {
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_AltGr:
    case Qt::Key_Meta:
    case Qt::Key_CapsLock:
    case Qt::Key_NumLock:
        return true;
    default:
        return false;
    }
}

bool isPlain(const QKeyEvent& event) {
    return !(event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
}

bool isEnd(const QKeyEvent& event) {
    const int key = event.key();
    return (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab) && isPlain(event) &&
           !(event.modifiers() & Qt::ShiftModifier);
}

/// A key that is held down repeats as fast as a scanner types.
bool isOfText(const QKeyEvent& event) {
    const QString text = event.text();
    if (text.size() != 1 || event.isAutoRepeat()) return false;
    return text.at(0) == separatorKey || (text.at(0).isPrint() && isPlain(event));
}

} // namespace

HandScanner::HandScanner(QWidget& window)
    : QObject(&window)
    , m_window(window)
    , m_clock(steadyMs) {
    m_wait.setSingleShot(true);
    m_wait.setInterval(waitMs);
    connect(&m_wait, &QTimer::timeout, this, &HandScanner::giveBack);
    comeFirst();
}

HandScanner::~HandScanner() = default;

void HandScanner::comeFirst() {
    qApp->installEventFilter(this);
}

bool HandScanner::isOurs(const QWidget* widget) const {
    while (widget && widget != &m_window)
        widget = widget->parentWidget();
    return widget;
}

KeyTime HandScanner::timeOf(const QKeyEvent& event) const {
    return {event.timestamp(), m_clock()};
}

bool HandScanner::eventFilter(QObject* watched, QEvent* event) {
    if (m_isSending) return false;
    if (!watched->isWidgetType()) {
        // A key comes to the system's window first, then to a widget. An opened box filters all keys, too.
        if (event->type() == QEvent::KeyPress) comeFirst();
        return false;
    }
    if (event->type() == QEvent::MouseButtonPress) {
        giveBack();
        forget();
        return false;
    }
    // A key is offered to a widget and, if it leaves it, to each of its parents: take it at the first.
    if (watched != receiverOfKeys() || !isOurs(static_cast<QWidget*>(watched))) return false;
    if (event->type() == QEvent::KeyPress)
        return takeKey(static_cast<QKeyEvent&>(*event), static_cast<QWidget&>(*watched));
    // An opened box chooses at the announcement of the key already; the key itself is a second end then.
    return event->type() == QEvent::ShortcutOverride && QApplication::activePopupWidget() &&
           isEnd(static_cast<QKeyEvent&>(*event)) && takeEnd(timeOf(static_cast<QKeyEvent&>(*event)));
}

bool HandScanner::takeKey(QKeyEvent& event, QWidget& receiver) {
    if (isModifier(event)) return false;
    const KeyTime at = timeOf(event);
    if (isEnd(event)) return takeEnd(at);
    if (!isOfText(event)) {
        giveBack();
        forget();
        return false;
    }
    const bool follows = !m_burst.isEmpty() && isQuick(m_last, at);
    if (!follows) {
        giveBack();
        m_burst.clear();
        if (m_run.first() != &receiver) m_run.clear();
    }
    m_last = at;
    m_hasJustScanned = false;
    const bool isText = isTextField(receiver);
    if (m_burst.isEmpty() && event.text() == " " && !isText) { // it presses what has the keyboard
        m_run.clear();
        return false;
    }
    m_burst.add(event.text(), receiver);
    m_run.add(event.text(), receiver);
    if (isText) return false;
    m_waiting.emplace_back(event.clone());
    m_wait.start();
    return true;
}

bool HandScanner::takeEnd(KeyTime at) {
    const bool isSoon = isQuick(m_last, at);
    m_last = at;
    if (m_hasJustScanned && isSoon) return true; // some scanners end a code with two keys
    const bool isBurst = m_burst.isLongEnough() && isSoon;
    if (!isBurst && (!m_run.isTagCode() || asksForCode(m_run.first()))) {
        giveBack();
        forget();
        return false;
    }
    const KeyRun scan = isBurst ? m_burst : m_run;
    forget();
    m_hasJustScanned = true;
    scan.putBack();
    deliver(scan, isBurst ? core::SeenBy::Scanner : core::SeenBy::Typed);
    return true;
}

void HandScanner::deliver(const KeyRun& scan, core::SeenBy seenBy) {
    const QString text = scan.text().trimmed();
    auto* field = qobject_cast<QLineEdit*>(scan.first());
    if (!asksForCode(field)) {
        emit scanned(text, seenBy);
        return;
    }
    field->setText(text);
    const QScopedValueRollback<bool> sending(m_isSending, true);
    QKeyEvent enter(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, "\r");
    QApplication::sendEvent(field, &enter);
}

void HandScanner::giveBack() {
    m_wait.stop();
    const auto waiting = std::exchange(m_waiting, {});
    const QScopedValueRollback<bool> sending(m_isSending, true);
    for (const auto& press : waiting) {
        QKeyEvent release(QEvent::KeyRelease, press->key(), press->modifiers(), press->text());
        if (QWidget* receiver = receiverOfKeys()) QApplication::sendEvent(receiver, press.get());
        if (QWidget* receiver = receiverOfKeys()) QApplication::sendEvent(receiver, &release);
    }
}

/// What was typed until now; what is kept waiting is dropped.
void HandScanner::forget() {
    m_wait.stop();
    m_waiting.clear();
    m_run.clear();
    m_burst.clear();
    m_hasJustScanned = false;
}

} // namespace app
