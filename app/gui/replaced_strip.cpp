#include "app/gui/replaced_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace app {

ReplacedStrip::ReplacedStrip(QWidget* parent)
    : QFrame(parent) {
    setObjectName("replacedStrip");
    setProperty("role", "panel");
    setVisible(false);
    auto* row = new QHBoxLayout(this);
    auto* label =
        new QLabel(tr("▲ The club file was moved, deleted or replaced by another program. Nothing is "
                      "recorded any more: open the file that is to be used."),
                   this);
    label->setObjectName("replacedLabel");
    label->setProperty("role", "look");
    label->setWordWrap(true);
    auto* open = new QPushButton(tr("Open a club file…"), this);
    open->setObjectName("replacedOpenButton");
    connect(open, &QPushButton::clicked, this, &ReplacedStrip::openPressed);
    row->addWidget(label, 1);
    row->addWidget(open);
}

} // namespace app
