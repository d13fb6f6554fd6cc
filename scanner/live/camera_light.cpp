#include "scanner/live/camera_light.h"

#include "scanner/reader/picture_faults.h"

#include <QCamera>

#include <algorithm>

namespace scanner {
namespace {

using namespace std::chrono_literals;

constexpr auto betweenLooks = 200ms;
constexpr auto darkFor = 600ms; ///< before each step; a camera needs some frames to follow the last one
constexpr auto lightFor = 1000ms;
constexpr double stillHeld = 1.0 / 25; // seconds: a longer exposure blurs what a hand holds

class QtLight : public LightControls {
public:
    explicit QtLight(QCamera& camera)
        : m_camera(camera) {}

    bool takesNightMode() const override { return m_camera.isExposureModeSupported(QCamera::ExposureNight); }
    bool takesCompensation() const override { return takes(QCamera::Feature::ExposureCompensation); }
    std::optional<double> longestExposure() const override {
        const double longest = m_camera.maximumExposureTime();
        return takes(QCamera::Feature::ManualExposureTime) && longest > 0 ? std::optional(longest)
                                                                          : std::nullopt;
    }
    std::optional<int> highestIso() const override {
        const int highest = m_camera.maximumIsoSensitivity();
        return takes(QCamera::Feature::IsoSensitivity) && highest > 0 ? std::optional(highest) : std::nullopt;
    }

    void setNightMode(bool isNight) override {
        m_camera.setExposureMode(isNight ? QCamera::ExposureNight : QCamera::ExposureAuto);
    }
    void setCompensation(double stops) override {
        m_camera.setExposureCompensation(static_cast<float>(stops));
    }
    void setExposure(std::optional<double> s) override {
        if (s)
            m_camera.setManualExposureTime(static_cast<float>(*s));
        else
            m_camera.setAutoExposureTime();
    }
    void setIso(std::optional<int> iso) override {
        if (iso)
            m_camera.setManualIsoSensitivity(*iso);
        else
            m_camera.setAutoIsoSensitivity();
    }

private:
    bool takes(QCamera::Feature feature) const { return m_camera.supportedFeatures().testFlag(feature); }

    QCamera& m_camera;
};

/// Half of its pixels are nearly white.
bool isVeryLight(GreyView frame) {
    constexpr int apart = 8, white = 225;
    int all = 0, light = 0;
    for (int y = apart / 2; y < frame.height; y += apart)
        for (int x = apart / 2; x < frame.width; x += apart, ++all)
            light += frame.at(x, y) >= white;
    return 2 * light > all;
}

} // namespace

std::unique_ptr<LightControls> lightControlsOf(QCamera& camera) {
    return std::make_unique<QtLight>(camera);
}

void CameraLight::look(GreyView frame, std::chrono::milliseconds at) {
    if (frame.isEmpty() || (m_looked && at - *m_looked < betweenLooks)) return;
    m_looked = at;
    const auto follow = [at](auto& since, bool holds) {
        if (!holds)
            since.reset();
        else if (!since)
            since = at;
        return since ? at - *since : 0ms;
    };
    if (follow(m_darkSince, reader::isTooDark(frame)) >= darkFor) {
        askForMore();
        m_darkSince = at;
    }
    if (follow(m_lightSince, m_asked > 0 && isVeryLight(frame)) >= lightFor) takeBack();
}

/// The next step that the camera takes.
void CameraLight::askForMore() {
    while (m_asked < static_cast<int>(Step::End))
        if (take(static_cast<Step>(m_asked++))) return;
}

bool CameraLight::take(Step step) {
    switch (step) {
    case Step::NightMode:
        if (!m_controls->takesNightMode()) return false;
        m_controls->setNightMode(true);
        return true;
    case Step::OneStop:
    case Step::TwoStops:
        if (!m_controls->takesCompensation()) return false;
        m_controls->setCompensation(step == Step::OneStop ? 1 : 2);
        return true;
    case Step::Gain: {
        const auto exposure = m_controls->longestExposure();
        const auto iso = m_controls->highestIso();
        if (exposure) m_controls->setExposure(std::min(*exposure, stillHeld));
        if (iso) m_controls->setIso(*iso);
        return exposure || iso;
    }
    case Step::End:
        break;
    }
    return false;
}

void CameraLight::takeBack() {
    if (m_controls->takesNightMode()) m_controls->setNightMode(false);
    if (m_controls->takesCompensation()) m_controls->setCompensation(0);
    if (m_controls->longestExposure()) m_controls->setExposure(std::nullopt);
    if (m_controls->highestIso()) m_controls->setIso(std::nullopt);
    m_asked = 0;
    m_lightSince.reset();
    m_darkSince.reset();
}

} // namespace scanner
