#pragma once

#include <QMenu>

namespace app {

class CameraPanel;

/// What is done with the camera of a check, and pictures instead of it.
class CameraMenu : public QMenu {
    Q_OBJECT

public:
    explicit CameraMenu(CameraPanel& camera, QWidget* parent = nullptr);

    void setInCheck(bool inCheck); ///< all of it is for a check

private:
    void addMirror(CameraPanel& camera);
};

} // namespace app
