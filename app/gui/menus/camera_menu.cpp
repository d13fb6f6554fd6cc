#include "app/gui/menus/camera_menu.h"

#include "app/gui/camera/camera_panel.h"

#include <QSettings>

namespace app {

CameraMenu::CameraMenu(CameraPanel& camera, QWidget* parent)
    : QMenu(tr("Ca&mera"), parent) {
    addAction(tr("&Start the camera"), QKeySequence("F5"), &camera, &CameraPanel::startCamera);
    addAction(tr("S&top the camera"), QKeySequence("F6"), &camera, &CameraPanel::stop);
    addMirror(camera);
    addSeparator();
    addAction(tr("Read a &video or pictures…"), QKeySequence("F8"), &camera, &CameraPanel::picturesPressed);
    addAction(tr("Read a &folder of pictures…"), QKeySequence("F9"), &camera,
              &CameraPanel::pictureFolderPressed);
}

void CameraMenu::addMirror(CameraPanel& camera) {
    QAction* mirror = addAction(tr("&Mirror the picture"));
    mirror->setShortcut(QKeySequence("F7"));
    mirror->setCheckable(true);
    mirror->setChecked(QSettings().value("camera/mirrored", false).toBool());
    connect(mirror, &QAction::toggled, &camera, &CameraPanel::setMirrored);
    connect(&camera, &CameraPanel::mirroredChanged, mirror, &QAction::setChecked);
}

void CameraMenu::setInCheck(bool inCheck) {
    for (QAction* action : actions())
        action->setEnabled(inCheck);
}

} // namespace app
