#pragma once

class QHBoxLayout;
class QLabel;
class QPushButton;
class QString;
class QWidget;

namespace app {

/// A label of that role (see dress.h) that wraps its plain text. `name` is its object name.
QLabel* wordsLabel(QWidget* parent, const char* role, const char* name);
/// A button with its object name; `usual`: the usual way on.
QPushButton* wordsButton(QWidget* parent, const QString& text, const char* name, bool usual = false);
/// A box and the word before it, as one.
void addWithWord(QHBoxLayout& row, const QString& word, QWidget* box);

} // namespace app
