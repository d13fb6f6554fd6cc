#include "app/gui/widgets/leave_by_escape.h"

#include <QKeyEvent>

#include <utility>

namespace app {
namespace {

/// A key that no part of the panel took comes to the panel itself.
class EscapeWatch : public QObject {
public:
    EscapeWatch(QWidget& panel, std::function<void()> leave)
        : QObject(&panel)
        , m_leave(std::move(leave)) {
        panel.installEventFilter(this);
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() != QEvent::KeyPress) return false;
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() != Qt::Key_Escape || key->modifiers() != Qt::NoModifier) return false;
        event->accept();
        m_leave();
        return true;
    }

private:
    std::function<void()> m_leave;
};

} // namespace

void leaveByEscape(QWidget& panel, std::function<void()> leave) {
    new EscapeWatch(panel, std::move(leave)); // goes with the panel
}

} // namespace app
