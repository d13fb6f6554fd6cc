#pragma once

#include <QLabel>

class QGridLayout;
class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QTimer;

namespace app {

class FlowLayout;

// What is made here belongs to the parent that it is given, as everything of a page does.

/// A label of that role (see dress.h) that wraps its plain text. `name` is its object name.
QLabel* wordsLabel(QWidget* parent, const char* role, const char* name);
/// A button with its object name; `usual`: the usual way on.
QPushButton* wordsButton(QWidget* parent, const QString& text, const char* name, bool usual = false);
/// A field for words with its object name, read aloud as `aloud`; `hint` stands in it while it is empty.
QLineEdit* wordsEdit(QWidget* parent, const char* name, const QString& aloud = {}, const QString& hint = {});
/// Runs out 300 ms after it was started last, once: started at each letter, it tells when somebody has
/// stopped typing.
QTimer* typingWait(QWidget* parent);
/// A field at least so wide that its hint is read.
void roomForHint(QLineEdit& edit);
/// A box and the word before it, as one.
void addWithWord(QHBoxLayout& row, const QString& word, QWidget* box);
/// The same among others that may stand in several lines; the two stay together.
void addWithWord(FlowLayout& row, const QString& word, QWidget* box, bool isExpanding = false);
/// A field and the word before it, in the next row of a form.
void addField(QGridLayout& form, const QString& word, QWidget* field);
/// A label of that role that says the same for good.
QLabel* wordsIn(const char* role, const QString& text, QWidget* parent);

/// What became of what was done last, in a sentence that stands where it was done.
class SaidLabel : public QLabel {
    Q_OBJECT

public:
    SaidLabel(const char* name, QWidget* parent);

    void say(const QString& sentence, bool toLookAt = false);
    void forgetError(); ///< says nothing any more, if it was something to look at
};

} // namespace app
