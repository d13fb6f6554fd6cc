#include "app/gui/widgets/beside_or_over.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

namespace app {

BesideOrOver::BesideOrOver(const QByteArray& prefix, QWidget* list, QWidget* side, int widthForBoth,
                           QWidget* parent)
    : QWidget(parent)
    , m_list(list)
    , m_side(side)
    , m_sideAndBack(new QWidget(this))
    , m_back(wordsButton(m_sideAndBack, tr("Back to the list"), prefix + "BackButton"))
    , m_widthForBoth(widthForBoth) {
    auto* beside = new QVBoxLayout(m_sideAndBack);
    beside->setContentsMargins(0, 0, 0, 0);
    beside->setSpacing(spaceUnit);
    beside->addWidget(m_back, 0, Qt::AlignLeft);
    beside->addWidget(m_side, 1);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3 * spaceUnit);
    layout->setSizeConstraint(QLayout::SetNoConstraint);
    layout->addWidget(m_list, 11);
    layout->addWidget(m_sideAndBack, 10);
    m_sideAndBack->hide();
    connect(m_back, &QPushButton::clicked, this, &BesideOrOver::leave);
}

QSize BesideOrOver::minimumSizeHint() const {
    const QSize side = m_isOpen ? m_sideAndBack->minimumSizeHint() : QSize();
    return m_list->minimumSizeHint().expandedTo(side);
}

void BesideOrOver::open() {
    m_isOpen = true;
    arrange();
}

void BesideOrOver::close() {
    m_isOpen = false;
    arrange();
}

void BesideOrOver::leave() {
    close();
    emit left();
}

void BesideOrOver::arrange() {
    const bool isListShown = !isOver();
    if (m_list->isHidden() == !isListShown && m_sideAndBack->isHidden() == !m_isOpen) return;
    // First what comes into view: with nothing in view the keyboard would go to another page's part.
    if (m_isOpen) m_sideAndBack->show();
    m_list->setVisible(isListShown);
    m_sideAndBack->setVisible(m_isOpen);
    updateGeometry();
    emit arranged();
}

void BesideOrOver::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (m_isOpen) arrange();
}

void BesideOrOver::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_isOpen)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace app
