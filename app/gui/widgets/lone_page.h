#pragma once

#include <QSizePolicy>
#include <QStackedWidget>

namespace app {

/// Shows that page of a stack; the others ask for no room meanwhile, so that the widest of them does not make
/// all of them wide.
inline void showAlone(QStackedWidget& stack, QWidget* page) {
    for (int i = 0; i < stack.count(); ++i) {
        const auto room = stack.widget(i) == page ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        stack.widget(i)->setSizePolicy(room, room);
    }
    stack.setCurrentWidget(page);
}

} // namespace app
