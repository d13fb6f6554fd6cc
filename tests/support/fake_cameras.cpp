#include "tests/support/fake_cameras.h"

#include <QString>

#include <fstream>
#include <stdexcept>

#include <stdlib.h>

namespace support {

namespace fs = std::filesystem;

namespace {

/// A file must be there whole or not at all while a camera looks at its folder.
void saveAtOnce(const QImage& picture, const fs::path& path, const char* format, int quality) {
    const fs::path aside = path.parent_path() / "aside";
    if (!picture.save(QString::fromStdString(aside.string()), format, quality))
        throw std::runtime_error("cannot write " + aside.string());
    fs::rename(aside, path);
}

} // namespace

FakeCameras::FakeCameras() {
    setenv("THOLEPIN_FAKE_CAMERAS", m_folder.path().c_str(), 1);
    setenv("GST_PLUGIN_PATH", FAKE_CAMERA_PLUGIN_FOLDER, 1);
    // A list of plugins of our own: the user's must not learn of this one.
    setenv("GST_REGISTRY", FAKE_CAMERA_PLUGIN_FOLDER "-registry.bin", 1);
    // A real webcam of the machine is not to be seen.
    setenv("GST_PLUGIN_FEATURE_RANK", "v4l2deviceprovider:NONE,pipewiredeviceprovider:NONE", 1);
}

fs::path FakeCameras::picturesOf(const std::string& camera) const {
    return m_folder / camera;
}

void FakeCameras::plugIn(const std::string& camera, const std::string& shownName, const std::string& modes) {
    fs::create_directories(picturesOf(camera));
    std::ofstream(m_folder / "aside") << "[camera]\nname=" << shownName << "\nmodes=" << modes
                                      << "\npictures=" << picturesOf(camera).string() << "\nhold=1\n";
    fs::rename(m_folder / "aside", m_folder / (camera + ".camera"));
}

void FakeCameras::pullOut(const std::string& camera) {
    fs::remove(m_folder / (camera + ".camera"));
}

void FakeCameras::stall(const std::string& camera, bool stalled) {
    const fs::path mark = m_folder / (camera + ".stall");
    if (stalled)
        std::ofstream(mark) << "stalled\n";
    else
        fs::remove(mark);
}

void FakeCameras::show(const std::string& camera, const QImage& picture) {
    fs::create_directories(picturesOf(camera));
    saveAtOnce(picture.convertToFormat(QImage::Format_RGB888), picturesOf(camera) / "shown.ppm", "ppm", -1);
    saveAtOnce(picture, picturesOf(camera) / "shown.jpg", "jpg", 90);
}

} // namespace support
