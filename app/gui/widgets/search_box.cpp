#include "app/gui/widgets/search_box.h"

#include <QCompleter>
#include <QSignalBlocker>

namespace app {

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
}

void SearchBox::setNames(const QStringList& names) {
    const QSignalBlocker quiet(this);
    const QString before = currentText();
    clear();
    addItems(names);
    setEditText(before);
}

} // namespace app
