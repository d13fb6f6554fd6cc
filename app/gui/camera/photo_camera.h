#pragma once

#include <QPointer>
#include <QWidget>

class QImage;
class QPushButton;

namespace app {

class CameraPanel;

/// The camera as large as the window, over all that it shows, to take one picture. That, its other button and
/// Escape put it away and give the keyboard back. It goes by itself.
class PhotoCamera : public QWidget {
    Q_OBJECT

public:
    explicit PhotoCamera(QWidget& window);

    CameraPanel& camera() { return *m_camera; }

signals:
    void taken(const QImage& picture);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; ///< the window becomes another size

private:
    void take();
    void putAway();

    CameraPanel* m_camera;
    QPushButton* m_take;
    QPushButton* m_back;
    QPointer<QWidget> m_before; ///< had the keyboard
};

} // namespace app
