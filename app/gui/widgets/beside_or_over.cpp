#include "app/gui/widgets/beside_or_over.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/part_stack.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QResizeEvent>

#include <algorithm>

namespace app {

BesideOrOver::BesideOrOver(const QByteArray& prefix, QWidget* list, QWidget* side, int widthForBoth,
                           QWidget* parent)
    : QWidget(parent)
    , m_list(list)
    , m_side(side)
    , m_back(wordsButton(this, tr("Back to the list"), prefix + "BackButton"))
    , m_widthForBoth(widthForBoth) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3 * spaceUnit);
    layout->setSizeConstraint(QLayout::SetNoConstraint);
    layout->addWidget(m_list, 11);
    layout->addWidget(m_side, 10);
    m_side->hide();
    m_back->hide();
    connect(m_back, &QPushButton::clicked, this, &BesideOrOver::leave);
}

QSize BesideOrOver::minimumSizeHint() const {
    const auto leastOf = [](const QWidget& part) {
        const QSize least = part.minimumSizeHint();
        return QSize(least.width(), leastHeightOf(part, std::max(least.width(), part.width())));
    };
    const QSize side = m_isOpen ? leastOf(*m_side) : QSize();
    const QSize list = isOver() ? QSize() : leastOf(*m_list);
    return list.expandedTo(side);
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
    if (m_list->isHidden() == !isListShown && m_side->isHidden() == !m_isOpen) return;
    // First what comes into view: with nothing in view the keyboard would go to another page's part.
    if (m_isOpen) m_side->show();
    m_list->setVisible(isListShown);
    m_side->setVisible(m_isOpen);
    m_back->setVisible(m_isOpen);
    updateGeometry();
    emit arranged();
}

void BesideOrOver::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool hadRoom = event->oldSize().width() >= m_widthForBoth;
    if (m_isOpen)
        arrange();
    else if (hadRoom != hasRoomForBoth())
        emit arranged();
    if (event->size().width() != event->oldSize().width()) updateGeometry();
}

void BesideOrOver::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_isOpen)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace app
