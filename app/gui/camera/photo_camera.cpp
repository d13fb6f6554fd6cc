#include "app/gui/camera/photo_camera.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/camera_view.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QImage>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

PhotoCamera::PhotoCamera(QWidget& window)
    : QWidget(&window)
    , m_camera(new CameraPanel(this, CameraPanel::Use::Pictures))
    , m_take(wordsButton(this, tr("Take the picture"), "takePictureButton", true))
    , m_back(wordsButton(this, tr("No picture"), "noPictureButton"))
    , m_before(QApplication::focusWidget()) {
    setObjectName("photoCamera");
    setProperty("role", "panel");
    setAttribute(Qt::WA_StyledBackground);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_back);
    buttons->addStretch(1);
    buttons->addWidget(m_take);
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_camera, 1);
    layout->addLayout(buttons);
    connect(m_take, &QPushButton::clicked, this, &PhotoCamera::take);
    connect(m_back, &QPushButton::clicked, this, &PhotoCamera::putAway);
    setGeometry(window.rect());
    window.installEventFilter(this);
    show();
    raise();
    m_take->setFocus(Qt::OtherFocusReason);
    m_camera->startCamera();
}

void PhotoCamera::take() {
    const QImage picture = m_camera->view().picture();
    if (picture.isNull()) return m_camera->say(tr("The camera shows no picture yet."), true);
    emit taken(picture);
    putAway();
}

void PhotoCamera::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) putAway();
    event->accept();
}

bool PhotoCamera::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) setGeometry(parentWidget()->rect());
    return QWidget::eventFilter(watched, event);
}

void PhotoCamera::putAway() {
    m_camera->stop();
    hide();
    if (m_before) m_before->setFocus(Qt::OtherFocusReason);
    deleteLater();
}

} // namespace app
