#include "app/gui/widgets/search_box.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QCoreApplication>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPointer>
#include <QSignalBlocker>
#include <QTimer>

#include <utility>

namespace app {
namespace {

/// As if the list had not been there. The release goes with it: that of the mouse comes to nobody, for it
/// was the list that was pressed.
void clickAt(QWidget& window, const QMouseEvent& press) {
    QPointer<QWidget> under = window.childAt(window.mapFromGlobal(press.globalPosition().toPoint()));
    if (!under) return;
    if (under->focusPolicy() & Qt::ClickFocus) under->setFocus(Qt::MouseFocusReason);
    for (const auto& [type, buttons] : {std::pair(QEvent::MouseButtonPress, press.buttons()),
                                        std::pair(QEvent::MouseButtonRelease, Qt::MouseButtons())}) {
        if (!under) return; // it went with the press
        QMouseEvent event(type, under->mapFromGlobal(press.globalPosition()), press.globalPosition(),
                          press.button(), buttons, press.modifiers());
        QCoreApplication::sendEvent(under, &event);
    }
}

} // namespace

SearchBox::SearchBox(QWidget* parent)
    : ChoiceBox(parent) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    takeRoom(4);
    auto* completer = new QCompleter(model(), this);
    completer->setFilterMode(Qt::MatchContains);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setCompletionMode(QCompleter::PopupCompletion);
    setCompleter(completer);
    completer->popup()->setObjectName("offeredNames");
    completer->popup()->installEventFilter(this);
    // It opens unasked: where what is typed is one of the names already, it says nothing.
    connect(lineEdit(), &QLineEdit::textEdited, completer, [this, completer] {
        QTimer::singleShot(0, completer, [this, completer] {
            if (isOneOf(currentText())) completer->popup()->hide();
        });
    });
}

/// A press beside the list of names is meant for what stands there.
bool SearchBox::eventFilter(QObject* watched, QEvent* event) {
    auto* list = completer() == nullptr ? nullptr : completer()->popup();
    if (watched != list) return ChoiceBox::eventFilter(watched, event);
    if (event->type() != QEvent::MouseButtonPress) return false;
    const auto* press = static_cast<QMouseEvent*>(event);
    if (list->rect().contains(press->pos())) return false;
    list->hide();
    clickAt(*window(), *press);
    return true;
}

bool SearchBox::isOneOf(const QString& typed) const {
    return findText(typed.trimmed(), Qt::MatchFixedString) >= 0;
}

void SearchBox::setNames(const QStringList& names) {
    const QSignalBlocker quiet(this);
    const QString before = currentText();
    clear();
    addItems(names);
    setEditText(before);
}

} // namespace app
