#include "app/gui/widgets/labels.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStyle>
#include <QTimer>
#include <QVariant>

namespace app {

QLabel* wordsLabel(QWidget* parent, const char* role, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setProperty("role", role);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QPushButton* wordsButton(QWidget* parent, const QString& text, const char* name, bool usual) {
    auto* button = new QPushButton(text, parent);
    button->setObjectName(name);
    if (usual) button->setProperty("role", "usual");
    return button;
}

QLineEdit* wordsEdit(QWidget* parent, const char* name, const QString& aloud, const QString& hint) {
    auto* edit = new QLineEdit(parent);
    edit->setObjectName(name);
    edit->setAccessibleName(aloud);
    edit->setPlaceholderText(hint);
    return edit;
}

QTimer* typingWait(QWidget* parent) {
    auto* wait = new QTimer(parent);
    wait->setSingleShot(true);
    wait->setInterval(300);
    return wait;
}

void roomForHint(QLineEdit& edit) {
    constexpr int besides = 44; // padding and edge, as in the style sheet
    edit.ensurePolished();
    edit.setMinimumWidth(edit.fontMetrics().horizontalAdvance(edit.placeholderText()) + besides);
}

void addWithWord(QHBoxLayout& row, const QString& word, QWidget* box) {
    auto* label = new QLabel(word, box->parentWidget());
    label->setProperty("role", "quiet");
    label->setBuddy(box);
    row.addWidget(label);
    row.addWidget(box);
    box->setAccessibleName(word);
}

void addWithWord(FlowLayout& row, const QString& word, QWidget* box, bool isExpanding) {
    QHBoxLayout* together = row.addRow(isExpanding);
    addWithWord(*together, word, box);
    together->setStretch(1, isExpanding);
}

void addField(QGridLayout& form, const QString& word, QWidget* field) {
    auto* label = new QLabel(word, field->parentWidget());
    label->setProperty("role", "quiet");
    label->setBuddy(field);
    field->setAccessibleName(word);
    const int row = form.rowCount();
    form.addWidget(label, row, 0);
    form.addWidget(field, row, 1);
}

QLabel* wordsIn(const char* role, const QString& text, QWidget* parent) {
    auto* made = new QLabel(text, parent);
    made->setProperty("role", role);
    made->setWordWrap(true);
    return made;
}

SaidLabel::SaidLabel(const char* name, QWidget* parent)
    : QLabel(parent) {
    setObjectName(name);
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    say({});
}

void SaidLabel::forgetError() {
    if (property("role") == QLatin1String("look")) say({});
}

void SaidLabel::say(const QString& sentence, bool toLookAt) {
    setText(sentence);
    setProperty("role", toLookAt ? "look" : "remark");
    style()->unpolish(this);
    style()->polish(this);
    // Its place stays when it says nothing, so that nothing beneath it moves.
    setMinimumHeight(fontMetrics().height());
}

} // namespace app
