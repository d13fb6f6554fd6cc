#include "app/gui/widgets/words_label.h"

#include "app/gui/theme/type_scale.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

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

void addWithWord(QHBoxLayout& row, const QString& word, QWidget* box) {
    auto* label = new QLabel(word, box->parentWidget());
    label->setProperty("role", "quiet");
    label->setBuddy(box);
    row.addWidget(label);
    row.addWidget(box);
    box->setAccessibleName(word);
}

} // namespace app
