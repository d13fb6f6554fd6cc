#pragma once

#include "tests/support/scratch_folder.h"

#include <QImage>
#include <QSize>

#include <string>

namespace support {

/// The webcams of this process and of those it starts: files, shown by the GStreamer plugin of
/// tests/support/fake_camera. It speaks through the environment, so make one object before the application
/// object.
class FakeCameras {
public:
    FakeCameras();

    /// Plugs a webcam in under a short name. Modes as the plugin's camera_card.h has them:
    /// "YUY2,1280,720,30;MJPG,1280,720,30".
    void plugIn(const std::string& camera, const std::string& shownName, const std::string& modes);

    void pullOut(const std::string& camera);
    void stall(const std::string& camera, bool stalled);

    /// What the camera has before it from now on, in every format; in place of what was there.
    void show(const std::string& camera, const QImage& picture);

private:
    std::filesystem::path picturesOf(const std::string& camera) const;

    ScratchFolder m_folder;
};

} // namespace support
