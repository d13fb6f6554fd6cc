#include "app/gui/widgets/picture_view.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QApplication>
#include <QEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>

#include <utility>

namespace app {

PictureView::PictureView(const QImage& picture, const QString& words, QWidget& window)
    : QWidget(&window)
    , m_picture(picture)
    , m_words(words)
    , m_before(QApplication::focusWidget()) {
    setObjectName("pictureView");
    setAccessibleName(words);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setGeometry(window.rect());
    window.installEventFilter(this);
    show();
    raise();
    setFocus(Qt::OtherFocusReason);
}

void PictureView::offer(const QString& words, const QString& sure, std::function<void()> act) {
    m_button = wordsButton(this, words, "pictureButton");
    m_button->setCursor(Qt::ArrowCursor);
    connect(m_button, &QPushButton::clicked, this, [this, sure, act = std::move(act)] {
        if (m_press.press()) {
            act();
            return putAway();
        }
        if (!m_press.isAsked()) return;
        m_button->setText(sure);
        placeButton();
    });
    placeButton();
    m_button->show();
}

void PictureView::placeButton() {
    if (!m_button) return;
    m_button->adjustSize();
    m_button->move(width() - m_button->width() - 2 * spaceUnit,
                   height() - (8 * spaceUnit + m_button->height()) / 2);
}

void PictureView::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.fillRect(rect(), currentPalette().panel);
    const int foot = 8 * spaceUnit;
    const QRect room = rect().adjusted(2 * spaceUnit, 2 * spaceUnit, -2 * spaceUnit, -foot);
    const QSize size = m_picture.size().scaled(room.size(), Qt::KeepAspectRatio);
    painter.drawImage(QRect(room.center() - QPoint(size.width() / 2, size.height() / 2), size), m_picture);
    painter.setFont(fontOf(TextRole::Remark));
    painter.setPen(currentPalette().ink);
    const int beside = m_button ? m_button->width() + 2 * spaceUnit : 0;
    painter.drawText(QRect(2 * spaceUnit, height() - foot, width() - 4 * spaceUnit - beside, foot),
                     Qt::AlignCenter, tr("%1 · press anywhere to go back").arg(m_words));
}

void PictureView::mousePressEvent(QMouseEvent* /*event*/) {
    putAway();
}

void PictureView::keyPressEvent(QKeyEvent* event) {
    event->accept();
    if (m_button && event->key() == Qt::Key_Tab) return m_button->setFocus(Qt::TabFocusReason);
    putAway();
}

bool PictureView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) {
        setGeometry(parentWidget()->rect());
        placeButton();
    }
    return QWidget::eventFilter(watched, event);
}

void PictureView::putAway() {
    hide();
    if (m_before) m_before->setFocus(Qt::OtherFocusReason);
    deleteLater();
}

} // namespace app
