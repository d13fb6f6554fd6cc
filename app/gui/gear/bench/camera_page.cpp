#include "app/gui/gear/bench/camera_page.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/code_capture.h"
#include "app/gui/theme/type_scale.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace app {

CameraPage::CameraPage(GearTools tools, const QString& name, QWidget* parent)
    : GearPage(std::move(tools), name, parent)
    , m_camera(new CameraPanel(this)) {
    auto* capture = new CodeCapture(*this, m_camera->codeEdit());
    connect(capture, &CodeCapture::codeTyped, this, [this](const QString& text) {
        scan(core::ScannedText::typed(text.toStdString()), core::SeenBy::Typed);
    });
    connect(m_camera, &CameraPanel::codeSeen, this, &CameraPage::scan);
}

void CameraPage::layOut(QLayout* aboveCamera, QLayout* right, const char* cautionName,
                        const QString& caution) {
    auto* left = new QVBoxLayout;
    left->setSpacing(spaceUnit);
    left->addLayout(aboveCamera);
    left->addWidget(m_camera, 1);
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addLayout(left, 9); // the two buttons at the right stand in one line
    body->addLayout(right, 12);
    QVBoxLayout& layout = column(2 * spaceUnit);
    layout.addLayout(body, 1);
    addCaution(layout, cautionName, caution);
}

bool CameraPage::takeScan(const QString& text, core::SeenBy how) {
    scan(core::ScannedText::typed(text.toStdString()), how);
    return true;
}

void CameraPage::say(const QString& sentence, bool toLookAt) {
    m_camera->say(sentence, toLookAt);
}

void CameraPage::forgetError() {
    m_camera->forgetError();
}

void CameraPage::showEvent(QShowEvent* event) {
    GearPage::showEvent(event);
    if (tools().isCameraWanted()) m_camera->startCamera();
}

void CameraPage::hideEvent(QHideEvent* event) {
    m_camera->stop();
    GearPage::hideEvent(event);
}

} // namespace app
